import { expect, it } from 'vitest';
import { linesOf } from '../../src/workspace/lines';
import { asMade } from '../../src/notebook/cell-builders';

const parts = [
  ['back_start_width', 1],
  ['front_start_width', 2],
] as const;

it('a measurement as made shows all that it is added up from, so that its lines add up', () => {
  const cell = asMade('Finished bust', 'finished_bust', parts, 'CM(1)', {
    closes: 'overlapped',
    less: 'CM(4)',
  });
  expect(linesOf(cell, false).map(({ key }) => key)).toEqual([
    'made',
    'of.0.width',
    'of.1.width',
    'of.1.times',
    'less',
    'wish',
    'difference',
    'words',
  ]);
});

it('edge to edge nothing is taken of it, and no line says so', () => {
  const keys = linesOf(asMade('Finished bust', 'finished_bust', parts, 'CM(1)'), false).map(({ key }) => key);
  expect(keys).not.toContain('less');
  expect(
    linesOf(asMade('Finished bust', 'finished_bust', parts, 'CM(1)'), true).map(({ key }) => key),
  ).toContain('within');
});
