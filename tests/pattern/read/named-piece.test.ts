import { expect, it } from 'vitest';
import { namedPiece } from '../../../src/pattern/read/named-piece';

it.each([
  ['BACK', 'Back', 1],
  ['Sleeves', 'Sleeves', 2],
  ['SLEEVES (make both alike)', 'Sleeves', 2],
  ['Pocket, make 3', 'Pocket', 3],
  ['Front (make two)', 'Front', 2],
  ['Left Front', 'Left Front', 1],
])('the heading “%s” is of the piece %s, made %i times', (heading, label, make) => {
  expect(namedPiece(heading)).toEqual({ label, make });
});
