import { expect, test } from 'vitest';
import { workPiece, type Piece, type Stretch } from '../../../src/craft';
import { workedOn } from '../../../src/pictures/charts/worked-on';
import { moss, rowsOf } from './pieces';

const piece = (worked: Piece['worked'], start: number, ...stretches: Stretch[]): Piece => ({
  name: '',
  worked,
  start,
  stretches,
});
const taper = (to: number, over: number, perRow: number): Stretch => ({
  kind: 'taper',
  fabric: moss,
  to,
  over,
  perRow,
  every: 1,
  before: 0,
  after: 0,
});
const textOf = (plan: Piece): string[] => {
  const rows = workPiece(plan);
  return rows.map((_, i) => workedOn({ rows, plan }, i));
};

test('a taper takes half of its stitches at each end, all of them in the round', () => {
  expect(textOf(piece('flat', 20, taper(16, 4, 2)))).toEqual([
    'plain',
    'decrease 1 at each end',
    'plain',
    'decrease 1 at each end',
  ]);
  expect(textOf(piece('round', 16, taper(20, 2, 4)))).toEqual(['plain', 'increase 4 in the round']);
  expect(textOf(piece('flat', 20, taper(19, 2, 1)))).toEqual(['plain', 'decrease 1 at one end']);
  expect(textOf(piece('flat', 20, taper(17, 2, 3)))).toEqual(['plain', 'decrease 3']);
});

test('stitches left and added belong to the row after them, beside what is worked on that row', () => {
  expect(
    textOf(
      piece(
        'flat',
        40,
        { kind: 'even', fabric: moss, rows: 1 },
        { kind: 'leave', fabric: moss, atStart: 8, atEnd: 8 },
        { kind: 'eachRepeat', fabric: moss, repeats: 3, by: -1 },
        { kind: 'add', fabric: moss, atStart: 0, atEnd: 5 },
        { kind: 'even', fabric: moss, rows: 2 },
      ),
    ),
  ).toEqual([
    'plain',
    'leave 8 at the start and 8 at the end; decrease 1 in each of 3 repeats',
    'add 5 at the end',
    'plain',
  ]);
});

test('a leave that a taper follows does not hide the first shaping row', () => {
  expect(
    textOf(piece('flat', 40, { kind: 'leave', fabric: moss, atStart: 5, atEnd: 5 }, taper(26, 2, 2))),
  ).toEqual(['leave 5 at the start and 5 at the end; decrease 1 at each end', 'decrease 1 at each end']);
});

test('a gathering of 100 to 40 in three rounds is 3, 2 and 1 plain between', () => {
  expect(
    textOf(
      piece(
        'round',
        90,
        { kind: 'add', fabric: moss, atStart: 10, atEnd: 0 },
        { kind: 'gather', fabric: moss, to: 40, rounds: 3 },
      ),
    ),
  ).toEqual([
    'add 10 at the start; (3 plain, 2 together) around',
    '(2 plain, 2 together) around',
    '(1 plain, 2 together) around',
  ]);
});

test('a row shaped evenly, and rows counted one by one', () => {
  expect(
    textOf(
      piece(
        'flat',
        40,
        { kind: 'evenly', fabric: moss, to: 34 },
        { kind: 'rows', fabric: moss, counts: [34, 36, 35] },
      ),
    ),
  ).toEqual(['decrease 6, spread evenly', 'plain', '2 more', '1 fewer']);
});

test('without a plan only what the counts tell', () => {
  const rows = rowsOf([20, 18, 18]);
  expect(rows.map((_, i) => workedOn({ rows }, i))).toEqual(['plain', '2 fewer', 'plain']);
});
