import { length, plain, rowGauge, rows, stitchGauge, stitches } from '../units';
import { given, optional, type FunctionSignature } from './function-entry';

const rule = given('"nearest", "up" or "down"', 'text');
const motifs = [
  given('wanted', stitches),
  given('stitches of a motif', stitches),
  given('least gap', stitches),
  given('widest gap', stitches),
  given('stitches at each edge', stitches),
  given('"flat" or "round"', 'text'),
  optional('which fit, 1 the nearest', plain),
];

/** Counts and gauges, and the counts that repeats and motifs allow. */
export const counts = [
  {
    name: 'STS',
    arguments: [given('number', plain)],
    gives: stitches,
  },
  {
    name: 'ROWS',
    arguments: [given('number', plain)],
    gives: rows,
  },
  {
    name: 'GAUGE',
    arguments: [given('count', 'any'), given('over', length)],
    repeats: true,
    gives: 'any',
  },
  {
    name: 'GUESSGAUGE',
    arguments: [given('gauge', 'any'), given('hook', length), given('other hook', length)],
    gives: 'any',
  },
  {
    name: 'FABRIC',
    arguments: [
      given('stitch gauge', stitchGauge),
      given('row gauge', rowGauge),
      optional('heights of the rows of a repeat', length),
    ],
    repeats: true,
    gives: 'fabric',
  },
  {
    name: 'FITREPEAT',
    arguments: [
      given('wanted', 'any'),
      given('multiple', plain),
      given('plus', plain),
      optional('"nearest", "up" or "down"', 'text'),
    ],
    gives: 'any',
  },
  {
    name: 'FITREPEATS',
    arguments: [
      given('wanted', 'any'),
      rule,
      given('"any", "odd" or "even"', 'text'),
      given('multiple', plain),
      given('plus', plain),
    ],
    repeats: true,
    gives: 'any',
  },
  {
    name: 'FITTOGETHER',
    arguments: [
      given('which half, 1 or 2', plain),
      given('wanted all round', stitches),
      given('fixed, such as bands', stitches),
      given('pieces of half 1', plain),
      given('multiple', plain),
      given('plus', plain),
      given('pieces of half 2', plain),
      given('multiple', plain),
      given('plus', plain),
      optional('"nearest" or "growing"', 'text'),
      optional('edge stitches that may be added', stitches),
    ],
    gives: stitches,
  },
  {
    name: 'FITCHAIN',
    arguments: [
      given('wanted', stitches),
      given('multiple of the chain', plain),
      given('plus', plain),
      rule,
      given('turning chain', stitches),
      given('"counts" or "does not count"', 'text'),
    ],
    gives: stitches,
  },
  {
    name: 'FOUNDATIONCHAIN',
    arguments: [
      given('stitches', stitches),
      given('turning chain', stitches),
      given('"counts" or "does not count"', 'text'),
    ],
    gives: stitches,
  },
  {
    name: 'ROUNDCOUNT',
    arguments: [given('wanted', 'any'), optional('"nearest", "up", "down", "even" or "odd"', 'text')],
    gives: 'any',
  },
  {
    name: 'FITMOTIFS',
    arguments: motifs,
    gives: stitches,
  },
  {
    name: 'MOTIFS',
    arguments: motifs,
    gives: plain,
  },
  {
    name: 'MOTIFGAP',
    arguments: motifs,
    gives: stitches,
  },
  {
    name: 'NARROWMOTIFS',
    arguments: [
      given('motifs', plain),
      given('stitches of a motif', stitches),
      given('gap', stitches),
      given('least gap', stitches),
      given('stitches at each edge', stitches),
      given('"flat" or "round"', 'text'),
    ],
    gives: stitches,
  },
  {
    name: 'STATED',
    arguments: [given('which size, 1 the first', plain), given('number of each size', plain)],
    repeats: true,
    gives: plain,
  },
  {
    name: 'NEARESTSIZE',
    arguments: [given('wanted', plain), given('number of each size', plain)],
    repeats: true,
    gives: plain,
  },
  {
    name: 'SIZENAMED',
    arguments: [given('which size, 1 the first', plain), given('name of each size', 'text')],
    repeats: true,
    gives: 'text',
  },
] as const satisfies readonly FunctionSignature[];
