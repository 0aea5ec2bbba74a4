import { expect, test } from 'vitest';
import { message } from '../../src/craft';
import { packedMessage } from '../../src/engine/pack-message';
import type { Answer } from '../../src/engine/answers';
import { Results, type Move } from '../../src/engine/results';

const first: Answer = {
  firstSlot: 0,
  slots: [
    { cell: 'a', key: 'value' },
    { cell: 'b', key: 'value' },
  ],
  gone: [],
  sizes: ['s', 'm'],
  numbers: new Float64Array([0, 0, 90, 1, 0, 96, 0, 1, 45]),
  texts: [],
  truths: [],
  errors: [
    [
      1,
      1,
      {
        message: packedMessage(message('waits', 'Needs {label}.', { label: 'a' })),
        from: { cell: 'a', key: 'value' },
      },
    ],
  ],
  units: [
    [0, { length: 1 }],
    [1, null],
  ],
};
const nothing: Answer = {
  ...first,
  firstSlot: 2,
  slots: [],
  numbers: new Float64Array(),
  errors: [],
  units: [],
};

test('a place has in each size a number, a text, a truth or a trouble', () => {
  const results = new Results();
  expect(results.apply(first)).toEqual(first.slots);
  expect(results.number('s', 'a', 'value')).toBe(90);
  expect(results.number('m', 'a', 'value')).toBe(96);
  expect(results.number('m', 'b', 'value')).toBeUndefined();
  expect(results.error('m', 'b', 'value')?.message).toBe('Needs a.');
  expect(results.unit('a', 'value')).toEqual({ length: 1 });
  expect(results.isNumber('a', 'value')).toBe(true);
  expect(results.unit('b', 'value')).toBeUndefined();
});

test('what an answer does not mention stays; what it mentions takes the place of what was there', () => {
  const results = new Results();
  results.apply(first);
  const changed = results.apply({ ...nothing, texts: [[0, 1, 'a piece']], truths: [[1, 1, false]] });
  expect(changed).toEqual([first.slots[1]]);
  expect(results.number('s', 'b', 'value')).toBeUndefined();
  expect(results.text('s', 'b', 'value')).toBe('a piece');
  expect(results.truth('m', 'b', 'value')).toBe(false);
  expect(results.error('m', 'b', 'value')).toBeUndefined();
  expect(results.number('m', 'a', 'value')).toBe(96);
});

test('numbers that moved are told with what they were', () => {
  const results = new Results();
  const moves: Move[] = [];
  results.apply(first, (move) => void moves.push(move));
  expect(moves).toEqual([]);
  results.apply(
    { ...nothing, numbers: new Float64Array([0, 0, 91, 1, 0, 96, 1, 1, 48]) },
    (move) => void moves.push(move),
  );
  // The second size of a is as it was, and b had no number there before.
  expect(moves).toEqual([{ cell: 'a', key: 'value', size: 's', before: 90, after: 91 }]);
});

test('results keep to their size when sizes are put in another order or taken out', () => {
  const results = new Results();
  results.apply(first);
  results.apply({ ...nothing, sizes: ['m', 's'] });
  expect(results.number('m', 'a', 'value')).toBe(96);
  results.apply({ ...nothing, sizes: ['s'] });
  expect(results.sizes).toEqual(['s']);
  expect(results.number('m', 'a', 'value')).toBeUndefined();
});

test('a cell that comes back on another slot is not taken away with the old one', () => {
  const results = new Results();
  results.apply(first);
  const back: Answer = {
    ...nothing,
    slots: [{ cell: 'a', key: 'value' }],
    gone: [0],
    numbers: new Float64Array([0, 2, 7]),
  };
  results.apply(back);
  expect(results.number('s', 'a', 'value')).toBe(7);
  expect(results.number('m', 'a', 'value')).toBeUndefined();
});

test('an answer that begins with the first slot begins again', () => {
  const results = new Results();
  results.apply(first);
  const again: Answer = { ...nothing, firstSlot: 0, slots: [{ cell: 'c', key: 'value' }] };
  expect(results.apply(again)).toEqual(first.slots);
  expect(results.number('s', 'a', 'value')).toBeUndefined();
});
