import { expect, test } from 'vitest';
import type { Cell } from '../../src/notebook';
import { memoizePerCell } from '../../src/notebook/memoize-per-cell';

const note = (text: string, id = 'n'): Cell => ({ kind: 'note', id, label: 'Note', name: id, text });

test('is worked out once for each state of a cell, and again for a state long past', () => {
  let times = 0;
  const textOf = memoizePerCell((cell) => {
    times++;
    return cell.kind === 'note' ? cell.text : '';
  });
  const first = note('first');
  expect([textOf(first), textOf(first)]).toEqual(['first', 'first']);
  expect(times).toBe(1);
  // The same words in another state of the cell, and another cell with the same words.
  expect([textOf(note('first')), textOf(note('first', 'm'))]).toEqual(['first', 'first']);
  expect(times).toBe(3);
  for (let i = 0; i < 20; i++) expect(textOf(note(String(i)))).toBe(String(i));
  expect(textOf(first)).toBe('first');
  expect(times).toBe(24);
});
