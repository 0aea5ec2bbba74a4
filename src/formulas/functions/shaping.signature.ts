import { plain, rows, stitches } from '../units';
import { given, optional, type FunctionSignature } from './function-entry';

const spaced = [
  given('from', stitches),
  given('to', stitches),
  given('"flat" or "round"', 'text'),
  optional('"half" or "whole"', 'text'),
];
const gathered = [given('from', stitches), given('to', stitches), given('rounds', rows)];

/** Where shaping falls, across a row and over rows. */
export const shaping = [
  {
    name: 'SPACING',
    arguments: spaced,
    gives: 'text',
  },
  {
    name: 'SHAPINGS',
    arguments: spaced,
    gives: plain,
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
  },
  {
    name: 'GATHER',
    arguments: gathered,
    gives: 'text',
  },
  {
    name: 'GATHERED',
    arguments: gathered,
    gives: stitches,
  },
  {
    name: 'SHAPEREPEATS',
    arguments: [given('count', stitches), given('repeats', plain), given('by', stitches)],
    gives: stitches,
  },
] as const satisfies readonly FunctionSignature[];
