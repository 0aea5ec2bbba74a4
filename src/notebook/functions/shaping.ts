import { plain, rows, stitches } from '../units';
import { given, optional, type Listed } from './function-entry';

const spaced = [
  given('from', stitches),
  given('to', stitches),
  given('"flat" or "round"', 'text'),
  optional('"half" or "whole"', 'text'),
];
const gathered = [given('from', stitches), given('to', stitches), given('rounds', rows)];

/** Where shaping falls, across a row and over rows. */
export const shaping: Listed[] = [
  {
    name: 'SPACING',
    arguments: spaced,
    gives: 'text',
    about:
      'Shaping spread evenly across one row: the plain stitches before each increase or decrease, and after the last.',
    example: 'SPACING(STS(75); STS(83); "flat")',
  },
  {
    name: 'SHAPINGS',
    arguments: spaced,
    gives: plain,
    about: 'How many increases or decreases SPACING spreads across the row.',
    example: 'SHAPINGS(STS(75); STS(83); "flat"; "whole")',
  },
  {
    name: 'TAPEREVERY',
    arguments: [
      given('from', stitches),
      given('to', stitches),
      given('over', rows),
      given('stitches per shaping row', stitches),
      given('on every row (1) or right-side rows (2)', plain),
      given('plain rows before', rows),
      given('plain rows after', rows),
      given('"longFirst", "shortFirst" or "spread"', 'text'),
    ],
    gives: 'text',
    about: 'How often a taper is shaped: "every 6 rows × 8, every 4 rows × 5".',
    example: 'TAPEREVERY(STS(58); STS(40); ROWS(60); STS(2); 1; ROWS(0); ROWS(2); "longFirst")',
  },
  {
    name: 'GATHER',
    arguments: gathered,
    gives: 'text',
    about:
      'Rounds of "so many plain, 2 together" that draw a count in: the plain stitches of each round and its count.',
    example: 'GATHER(STS(100); STS(40); ROWS(3))',
  },
  {
    name: 'GATHERED',
    arguments: gathered,
    gives: stitches,
    about: 'The count that the rounds of GATHER end on, which may be off the wanted one.',
    example: 'GATHERED(STS(100); STS(40); ROWS(3))',
  },
  {
    name: 'SHAPEREPEATS',
    arguments: [given('count', stitches), given('repeats', plain), given('by', stitches)],
    gives: stitches,
    about:
      'The count after every repeat of a row has gained so many stitches, or lost them where it is negative.',
    example: 'SHAPEREPEATS(STS(83); 10; STS(-1))',
  },
];
