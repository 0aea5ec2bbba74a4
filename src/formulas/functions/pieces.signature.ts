import { area, length, plain, rows, stitches } from '../units';
import { given, optional, type FunctionSignature } from './function-entry';

const fabric = given('fabric', 'fabric');
const piece = given('piece', 'piece');
const which = given('which stretch', plain);
const ends = [given('at the start', stitches), given('at the end', stitches), fabric];

/** Stretches, pieces made of them, and what is measured on a piece. */
export const pieces = [
  {
    name: 'EVENROWS',
    arguments: [given('rows', rows), fabric],
    gives: 'stretch',
  },
  {
    name: 'TAPERROWS',
    arguments: [
      given('to', stitches),
      given('over', rows),
      given('stitches per shaping row', stitches),
      given('on every row (1) or right-side rows (2)', plain),
      given('plain rows before', rows),
      given('plain rows after', rows),
      given('"longFirst", "shortFirst" or "spread"', 'text'),
      fabric,
      optional('"left" or "right", for an odd stitch', 'text'),
    ],
    gives: 'stretch',
  },
  {
    name: 'EVENLYROW',
    arguments: [given('to', stitches), given('"half" or "whole"', 'text'), fabric],
    gives: 'stretch',
  },
  {
    name: 'REPEATSROW',
    arguments: [given('repeats', plain), given('by', stitches), fabric],
    gives: 'stretch',
  },
  {
    name: 'GATHERROUNDS',
    arguments: [given('to', stitches), given('rounds', rows), fabric],
    gives: 'stretch',
  },
  {
    name: 'LEAVESTITCHES',
    arguments: ends,
    gives: 'stretch',
  },
  {
    name: 'ADDSTITCHES',
    arguments: ends,
    gives: 'stretch',
  },
  {
    name: 'COUNTEDROWS',
    arguments: [fabric, given('count after the row', stitches)],
    repeats: true,
    gives: 'stretch',
  },
  {
    name: 'PIECE',
    arguments: [
      given('"flat", "flat from WS" or "round"', 'text'),
      given('stitches to start', stitches),
      given('"bound off" or "held"', 'text'),
      given('stretch', 'stretch'),
    ],
    repeats: true,
    lacks: 'It has no stretch yet: add one, such as rows worked even.',
    gives: 'piece',
  },
  {
    name: 'PIECELENGTH',
    arguments: [piece],
    gives: length,
  },
  {
    name: 'PIECEROWS',
    arguments: [piece],
    gives: rows,
  },
  {
    name: 'PIECECOUNT',
    arguments: [piece, given('row', rows)],
    gives: stitches,
  },
  {
    name: 'PIECEEND',
    arguments: [piece],
    gives: stitches,
  },
  {
    name: 'PIECEWIDTH',
    arguments: [piece, given('at', length)],
    gives: length,
  },
  {
    name: 'PIECEAREA',
    arguments: [piece],
    gives: area,
  },
  {
    name: 'PIECESTITCHES',
    arguments: [piece],
    gives: stitches,
  },
  {
    name: 'STRETCHEND',
    arguments: [piece, which],
    gives: stitches,
  },
  {
    name: 'STRETCHROWS',
    arguments: [piece, which],
    gives: rows,
  },
  {
    name: 'STRETCHLENGTH',
    arguments: [piece, which],
    gives: length,
  },
  {
    name: 'EDGELENGTH',
    arguments: [
      piece,
      given('"left", "right" or "shaped"', 'text'),
      optional('first stretch', plain),
      optional('last stretch', plain),
    ],
    gives: length,
  },
] as const satisfies readonly FunctionSignature[];
