import { area, length, plain, rows, stitches } from '../units';
import { given, type Listed } from './function-entry';

const fabric = given('fabric', 'fabric');
const piece = given('piece', 'piece');
const which = given('which stretch', plain);
const ends = [given('at the start', stitches), given('at the end', stitches), fabric];

/** Stretches, pieces made of them, and what is measured on a piece. */
export const pieces: Listed[] = [
  {
    name: 'EVENROWS',
    arguments: [given('rows', rows), fabric],
    gives: 'stretch',
    about: 'A stretch of a piece worked without shaping.',
    example: 'EVENROWS(ROWS(24); body)',
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
    ],
    gives: 'stretch',
    about: 'A stretch of a piece that comes to another count by shaping rows spread over its length.',
    example: 'TAPERROWS(STS(38); ROWS(60); STS(2); 1; ROWS(0); ROWS(2); "longFirst"; sleeve_fabric)',
  },
  {
    name: 'EVENLYROW',
    arguments: [given('to', stitches), given('"half" or "whole"', 'text'), fabric],
    gives: 'stretch',
    about:
      'One row that comes to another count by shaping spread evenly across it, with half or whole gaps at the ends.',
    example: 'EVENLYROW(STS(83); "half"; body)',
  },
  {
    name: 'REPEATSROW',
    arguments: [given('repeats', plain), given('by', stitches), fabric],
    gives: 'stretch',
    about: 'One row in which every repeat gains so many stitches, or loses them where it is negative.',
    example: 'REPEATSROW(9; STS(-1); body)',
  },
  {
    name: 'GATHERROUNDS',
    arguments: [given('to', stitches), given('rounds', rows), fabric],
    gives: 'stretch',
    about: 'Rounds of "so many plain, 2 together" that draw the count in, as GATHER tells them.',
    example: 'GATHERROUNDS(STS(40); ROWS(3); body)',
  },
  {
    name: 'LEAVESTITCHES',
    arguments: ends,
    gives: 'stretch',
    about: 'Stitches left, or bound off, at the start and the end of the row that follows.',
    example: 'LEAVESTITCHES(STS(4); STS(4); body)',
  },
  {
    name: 'ADDSTITCHES',
    arguments: ends,
    gives: 'stretch',
    about: 'Stitches cast on, or chained, at the start and the end of the row that follows.',
    example: 'ADDSTITCHES(STS(4); STS(4); body)',
  },
  {
    name: 'COUNTEDROWS',
    arguments: [fabric, given('count after the row', stitches)],
    repeats: true,
    gives: 'stretch',
    about: 'Rows whose counts are told one by one.',
    example: 'COUNTEDROWS(body; STS(75); STS(73); STS(70))',
  },
  {
    name: 'PIECE',
    arguments: [
      given('"flat" or "round"', 'text'),
      given('stitches to start', stitches),
      given('"bound off" or "held"', 'text'),
      given('stretch', 'stretch'),
    ],
    repeats: true,
    gives: 'piece',
    about: 'A piece: worked flat or in the round from a first count through its stretches, row by row.',
    example: 'PIECE("flat"; back_sts; "bound off"; EVENROWS(back_rows; body))',
  },
  {
    name: 'PIECELENGTH',
    arguments: [piece],
    gives: length,
    about: 'The length of a piece: the heights of its rows.',
    example: 'PIECELENGTH(sleeve)',
  },
  {
    name: 'PIECEROWS',
    arguments: [piece],
    gives: rows,
    about: 'The rows, or rounds, of a piece.',
    example: 'PIECEROWS(sleeve)',
  },
  {
    name: 'PIECECOUNT',
    arguments: [piece, given('row', rows)],
    gives: stitches,
    about: 'The stitches after a row of a piece, the first row being 1.',
    example: 'PIECECOUNT(sleeve; ROWS(10))',
  },
  {
    name: 'PIECEEND',
    arguments: [piece],
    gives: stitches,
    about: 'The stitches of the last row of a piece.',
    example: 'PIECEEND(sleeve)',
  },
  {
    name: 'PIECEWIDTH',
    arguments: [piece, given('at', length)],
    gives: length,
    about: 'The width of a piece at a length from its start; in the round, the circumference.',
    example: 'PIECEWIDTH(sleeve; CM(0))',
  },
  {
    name: 'PIECEAREA',
    arguments: [piece],
    gives: area,
    about: 'The area of a piece: width times height, row by row.',
    example: 'PIECEAREA(back)',
  },
  {
    name: 'PIECESTITCHES',
    arguments: [piece],
    gives: stitches,
    about: 'All the stitches worked in a piece.',
    example: 'PIECESTITCHES(back)',
  },
  {
    name: 'STRETCHEND',
    arguments: [piece, which],
    gives: stitches,
    about: 'The stitches of the last row of one stretch of a piece.',
    example: 'STRETCHEND(sleeve; 1)',
  },
  {
    name: 'STRETCHROWS',
    arguments: [piece, which],
    gives: rows,
    about:
      'The rows, or rounds, of one stretch of a piece; a stretch that only leaves or adds stitches has none.',
    example: 'STRETCHROWS(sleeve; 1)',
  },
  {
    name: 'STRETCHLENGTH',
    arguments: [piece, which],
    gives: length,
    about: 'The length of one stretch of a piece: the heights of its rows.',
    example: 'STRETCHLENGTH(sleeve; 1)',
  },
];
