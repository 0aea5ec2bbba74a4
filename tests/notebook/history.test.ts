import { expect, it } from 'vitest';
import { advance, begin, redo, undo } from '../../src/notebook/history';
import { cardigan } from '../../src/starters';

it('a history goes back over the last 500 changes, as the README says, and forward over them again', () => {
  const titled = (number: number) => ({ ...cardigan(), title: `${number}` });
  let history = begin(titled(0));
  for (let change = 1; change <= 510; change++) history = advance(history, titled(change), 'a change');
  for (let step = 0; step < 600; step++) history = undo(history);
  expect(history.now.title).toBe('10');
  expect(history.future).toHaveLength(500);
  for (let step = 0; step < 600; step++) history = redo(history);
  expect(history.now.title).toBe('510');
});
