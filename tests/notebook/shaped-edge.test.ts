import { expect, test } from 'vitest';
import { shapedEdge } from '../../src/notebook/shaped-edge';
import type { PieceCell, TaperStretch } from '../../src/notebook/document';
import { f, piece, value } from '../../src/notebook/cell-builders';

const taper = (label: string): TaperStretch => ({
  kind: 'taper',
  name: 'taper',
  label,
  fabric: 'wool',
  to: f('STS(10)'),
  over: f('ROWS(10)'),
  perRow: value(1),
  every: 1,
  before: value(0),
  after: value(0),
  order: 'spread',
});
const inWords = (label: string, stretch: string, worked: PieceCell['worked'] = 'flat') =>
  shapedEdge(piece(label, worked, 'STS(20)', [taper(stretch)]), taper(stretch));

test.each([
  // Common practice: the left front is the wearer's left, and lies with its front edge to the left, seen from outside.
  ['Left front', 'Neck to shoulder', 'left'],
  ['Right front', 'Neck to shoulder', 'right'],
  ['Left front', 'Armhole', 'right'],
  ['Right front', 'Armhole', 'left'],
  ['Right back', 'Neck', 'left'],
  ['Front', 'Neck to shoulder', undefined],
  ['Left front', 'Shoulder', undefined],
  ['Left and right front', 'Neck', undefined],
  ['Left sleeve', 'Armhole to wrist', undefined],
])('%s, %s: %s', (label, stretch, edge) => {
  expect(inWords(label, stretch)).toBe(edge);
});

test('work in the round has no edge to tell', () => {
  expect(inWords('Left front', 'Neck', 'round')).toBeUndefined();
});
