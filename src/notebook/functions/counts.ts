import { length, plain, rowGauge, rows, stitchGauge, stitches } from '../units';
import { given, optional, type Listed } from './function-entry';

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
export const counts: Listed[] = [
  {
    name: 'STS',
    arguments: [given('number', plain)],
    gives: stitches,
    about: 'A number of stitches.',
    example: 'STS(2)',
  },
  {
    name: 'ROWS',
    arguments: [given('number', plain)],
    gives: rows,
    about: 'A number of rows or rounds.',
    example: 'ROWS(6)',
  },
  {
    name: 'GAUGE',
    arguments: [given('count', 'any'), given('over', length)],
    repeats: true,
    gives: 'any',
    about:
      'Stitches or rows to the length, from one reading of a swatch or several: all counts over all lengths.',
    example: 'GAUGE(STS(14); CM(10))',
  },
  {
    name: 'GUESSGAUGE',
    arguments: [given('gauge', 'any'), given('hook', length), given('other hook', length)],
    gives: 'any',
    about: 'A guess at the gauge with another hook or other needles, until a swatch takes its place.',
    example: 'GUESSGAUGE(body_sts; MM(6.5); MM(5.5))',
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
    about:
      'A fabric, as the stretches of a piece need it; where rows differ in height, with the height of each row of a repeat.',
    example: 'FABRIC(body_sts; body_rows)',
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
    about:
      'The count nearest to the wanted one that is a multiple of the repeat plus the edge; or the next up, or down.',
    example: 'FITREPEAT(finished_back * body_sts; 8; 3)',
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
    about:
      'A count that fits several repeats at once, such as lace over rib, and is odd or even where that is wanted.',
    example: 'FITREPEATS(finished_bust / 2 * body_sts; "nearest"; "odd"; 8; 3; 6; 1)',
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
    about: 'The stitches of the first row where the multiple is given for the foundation chain.',
    example: 'FITCHAIN(finished_bust / 2 * body_sts; 8; 4; "nearest"; STS(1); "does not count")',
  },
  {
    name: 'FOUNDATIONCHAIN',
    arguments: [
      given('stitches', stitches),
      given('turning chain', stitches),
      given('"counts" or "does not count"', 'text'),
    ],
    gives: stitches,
    about: 'The chains to make for a first row, with its turning chain, which may count as a stitch.',
    example: 'FOUNDATIONCHAIN(back_sts; STS(3); "counts")',
  },
  {
    name: 'ROUNDCOUNT',
    arguments: [given('wanted', 'any'), optional('"nearest", "up", "down", "even" or "odd"', 'text')],
    gives: 'any',
    about:
      'A whole count from a wanted one: the nearest, the next up or down, or the nearest even or odd one.',
    example: 'ROUNDCOUNT(sleeve_length * cuff_rows; "even")',
  },
  {
    name: 'FITMOTIFS',
    arguments: motifs,
    gives: stitches,
    about:
      'The stitches of motifs set in plain fabric that come near a count: of the five nearest ways, the first or the one told.',
    example: 'FITMOTIFS(finished_bust / 2 * body_sts; STS(10); STS(2); STS(4); STS(1); "flat")',
  },
  {
    name: 'MOTIFS',
    arguments: motifs,
    gives: plain,
    about: 'How many motifs FITMOTIFS sets.',
    example: 'MOTIFS(finished_bust / 2 * body_sts; STS(10); STS(2); STS(4); STS(1); "flat")',
  },
  {
    name: 'MOTIFGAP',
    arguments: motifs,
    gives: stitches,
    about: 'The plain stitches FITMOTIFS leaves between two motifs.',
    example: 'MOTIFGAP(finished_bust / 2 * body_sts; STS(10); STS(2); STS(4); STS(1); "flat"; 2)',
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
    about:
      'The count once every gap between motifs has lost a stitch; the gap must not become less than its least.',
    example: 'NARROWMOTIFS(6; STS(10); STS(4); STS(2); STS(1); "flat")',
  },
];
