import { length, plain, rowGauge, rows, stitchGauge, stitches } from '../units';
import { given, optional, type FunctionSignature } from './function-entry';

const gauges = [
  given('row gauge of the edge', rowGauge),
  given('stitch gauge of what is picked up', stitchGauge),
];
const fit = [
  given('multiple', plain),
  given('plus', plain),
  given('"nearest", "up" or "down"', 'text'),
  given('stretch of the edge', 'edge'),
];

/** Stitches picked up along edges, and edges that have to meet. */
export const edges = [
  {
    name: 'PICKUPSTITCHES',
    arguments: gauges,
    gives: stitches,
  },
  {
    name: 'PICKUPROWS',
    arguments: gauges,
    gives: rows,
  },
  {
    name: 'PICKUPOFF',
    arguments: gauges,
    gives: plain,
  },
  {
    name: 'PICKUPCONVENTION',
    arguments: [
      given(
        '"single crochet", "half double crochet", "double crochet", "treble", "stockinette" or "garter"',
        'text',
      ),
      ...gauges,
    ],
    gives: plain,
  },
  {
    name: 'PICKUP',
    arguments: [given('row ends', rows), given('stitches', stitches)],
    gives: 'text',
  },
  {
    name: 'EDGEROWS',
    arguments: [given('row ends', rows), given('pick up', stitches), given('along every', rows)],
    gives: 'edge',
  },
  {
    name: 'EDGESTITCHES',
    arguments: [given('stitches', stitches)],
    gives: 'edge',
  },
  {
    name: 'EDGEMOTIFS',
    arguments: [given('motifs or chains', plain), given('stitches from each', stitches)],
    gives: 'edge',
  },
  {
    name: 'EDGECURVE',
    arguments: [given('length', length), given('stitch gauge', stitchGauge)],
    gives: 'edge',
  },
  {
    name: 'PICKUPEDGE',
    arguments: fit,
    repeats: true,
    lacks: 'It has no stretch of an edge yet: add one to pick up along.',
    gives: stitches,
  },
  {
    name: 'PICKUPUNFITTED',
    arguments: [given('stretch of the edge', 'edge')],
    repeats: true,
    gives: stitches,
  },
  {
    name: 'PICKUPSHARE',
    arguments: [given('which stretch', plain), ...fit],
    repeats: true,
    gives: stitches,
  },
  {
    name: 'SIDEWAYSRIB',
    arguments: [
      given('length of the edge', length),
      given('row gauge of the rib', rowGauge),
      optional('"nearest", "up" or "down"', 'text'),
    ],
    gives: rows,
  },
  {
    name: 'BUTTONHOLES',
    arguments: [
      given('length of the band', 'any'),
      given('plain at each end', 'any'),
      given('buttonholes', plain),
      given('width of each', 'any'),
    ],
    gives: 'text',
  },
  {
    name: 'JOINARMHOLE',
    arguments: [
      given('rows of one side', rows),
      given('pick up', stitches),
      given('along every', rows),
      given('underarm', stitches),
      given('taken by the seam', stitches),
    ],
    gives: stitches,
  },
  {
    name: 'ARMHOLEFIT',
    arguments: [
      given('stitches of the sleeve', stitches),
      given('its stitch gauge', stitchGauge),
      given('length round the armhole', length),
    ],
    gives: plain,
  },
  {
    name: 'JOINS',
    arguments: [given('one side', 'any'), given('another side', 'any')],
    repeats: true,
    gives: 'truth',
  },
] as const satisfies readonly FunctionSignature[];
