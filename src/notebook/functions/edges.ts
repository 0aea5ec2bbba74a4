import { length, plain, rowGauge, rows, stitchGauge, stitches } from '../units';
import { given, optional, type Listed } from './function-entry';

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
export const edges: Listed[] = [
  {
    name: 'PICKUPSTITCHES',
    arguments: gauges,
    gives: stitches,
    about: 'How many stitches to pick up along every PICKUPROWS row ends, so that neither fabric puckers.',
    example: 'PICKUPSTITCHES(body_rows; sleeve_fabric_sts)',
  },
  {
    name: 'PICKUPROWS',
    arguments: gauges,
    gives: rows,
    about: 'The row ends along which PICKUPSTITCHES stitches are picked up.',
    example: 'PICKUPROWS(body_rows; sleeve_fabric_sts)',
  },
  {
    name: 'PICKUPOFF',
    arguments: gauges,
    gives: plain,
    about:
      'How far the ratio of PICKUPSTITCHES and PICKUPROWS is from the exact one, as a share: 0.02 is 2% too many stitches.',
    example: 'PICKUPOFF(body_rows; sleeve_fabric_sts)',
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
    about:
      'How far the ratio in common use for a fabric (US terms) is from the one its gauges ask for: 0.05 is 5% too many, which flares.',
    example: 'PICKUPCONVENTION("single crochet"; body_rows; sleeve_fabric_sts)',
  },
  {
    name: 'PICKUP',
    arguments: [given('row ends', rows), given('stitches', stitches)],
    gives: 'text',
    about:
      'How to pick up an exact number of stitches along so many row ends: "3 of 4 × 2, 4 of 5" skips the last row end of each 4, and of 5.',
    example: 'PICKUP(ROWS(13); STS(10))',
  },
  {
    name: 'EDGEROWS',
    arguments: [given('row ends', rows), given('pick up', stitches), given('along every', rows)],
    gives: 'edge',
    about: 'A stretch of an edge made of row ends.',
    example: 'EDGEROWS(back_rows; STS(3); ROWS(4))',
  },
  {
    name: 'EDGESTITCHES',
    arguments: [given('stitches', stitches)],
    gives: 'edge',
    about: 'A stretch of an edge made of the tops of stitches, picked up one for one.',
    example: 'EDGESTITCHES(STS(25))',
  },
  {
    name: 'EDGEMOTIFS',
    arguments: [given('motifs or chains', plain), given('stitches from each', stitches)],
    gives: 'edge',
    about: 'A stretch of an edge made of motifs, or of chains, that take so many stitches each.',
    example: 'EDGEMOTIFS(6; STS(9))',
  },
  {
    name: 'EDGECURVE',
    arguments: [given('length', length), given('stitch gauge', stitchGauge)],
    gives: 'edge',
    about: 'A stretch of an edge that curves, picked up by its length.',
    example: 'EDGECURVE(CM(18); body_sts)',
  },
  {
    name: 'PICKUPEDGE',
    arguments: fit,
    repeats: true,
    gives: stitches,
    about: 'The stitches picked up along an edge of several stretches, fitted to the repeat of its band.',
    example: 'PICKUPEDGE(4; 2; "nearest"; EDGEROWS(ROWS(30); STS(3); ROWS(4)); EDGESTITCHES(STS(25)))',
  },
  {
    name: 'PICKUPUNFITTED',
    arguments: [given('stretch of the edge', 'edge')],
    repeats: true,
    gives: stitches,
    about: 'The exact stitches that an edge of several stretches takes, before they are fitted to a repeat.',
    example: 'PICKUPUNFITTED(EDGEROWS(ROWS(30); STS(3); ROWS(4)); EDGESTITCHES(STS(25)))',
  },
  {
    name: 'PICKUPSHARE',
    arguments: [given('which stretch', plain), ...fit],
    repeats: true,
    gives: stitches,
    about: 'The stitches that one stretch of the edge has in PICKUPEDGE, the first being 1.',
    example: 'PICKUPSHARE(1; 4; 2; "nearest"; EDGEROWS(ROWS(30); STS(3); ROWS(4)); EDGESTITCHES(STS(25)))',
  },
  {
    name: 'SIDEWAYSRIB',
    arguments: [
      given('length of the edge', length),
      given('row gauge of the rib', rowGauge),
      optional('"nearest", "up" or "down"', 'text'),
    ],
    gives: rows,
    about: 'The rows of a rib worked sideways along an edge, an even number of them.',
    example: 'SIDEWAYSRIB(finished_bust; body_rows)',
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
    about: 'The stitch, or the row, at which each buttonhole of a band begins, spaced evenly.',
    example: 'BUTTONHOLES(STS(80); STS(3); 5; STS(3))',
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
    about:
      'Stitches picked up round an armhole: both sides at the ratio, the underarm, and what a seam will take.',
    example: 'JOINARMHOLE(ROWS(48); STS(2); ROWS(3); STS(10); STS(2))',
  },
  {
    name: 'ARMHOLEFIT',
    arguments: [
      given('stitches of the sleeve', stitches),
      given('its stitch gauge', stitchGauge),
      given('length round the armhole', length),
    ],
    gives: plain,
    about:
      'How much wider a sleeve is than the armhole it joins, as a share: beyond 8% it flares, below −8% it puckers.',
    example: 'ARMHOLEFIT(sleeve_sts; sleeve_fabric_sts; 2 * armhole)',
  },
  {
    name: 'JOINS',
    arguments: [given('one side', 'any'), given('another side', 'any')],
    repeats: true,
    gives: 'truth',
    about: 'Whether sides that are joined match stitch for stitch, or row for row.',
    example: 'JOINS(back_sts; STS(20) + STS(27) + STS(20))',
  },
];
