import { expect, test } from 'vitest';
import { plainMessage } from '../../src/craft';
import type { Checked } from '../../src/engine';
import { formula, measure, swatch } from './notebook-of';
import { worked } from './worked';

const refTo = (cell: string, key = 'value') => ({ cell, key });
const sheet = await worked(
  measure('bust', 'length', 90),
  swatch('body', 14, 16),
  formula('half', 'bust / 2'),
  formula('wrong', 'bust + 1'),
);

/** What a check tells, a problem in its words. */
async function checked(...given: Parameters<typeof sheet.sheet.check>): Promise<Checked<string>> {
  const found = await sheet.sheet.check(...given);
  return 'problem' in found ? { ...found, problem: plainMessage(found.problem) } : found;
}

test('a formula that is right is told its unit, and nothing of it is kept', async () => {
  expect(await checked('bust * body_sts', refTo('wrong'))).toEqual({ unit: { stitch: 1 } });
  expect(await checked('half + CM(2)', refTo('bust'))).toHaveProperty('problem');
  expect(sheet.number('half')).toBe(45);
});

test('a place with a unit of its own keeps it', async () => {
  expect(await checked('14', refTo('body', 'sts.0.count'))).toEqual({ unit: { stitch: 1 } });
  expect(await checked('bust', refTo('body', 'sts.0.count'))).toEqual({
    problem:
      'This should be a number of stitches, but the formula gives a length: multiply it by a stitch gauge.',
  });
});

test('what cannot be read is told with its place in the text', async () => {
  expect(await checked('bust + * 2', refTo('half'))).toEqual({
    problem: 'A value is missing before *.',
    start: 7,
    end: 8,
  });
  expect(await checked('2 * bst', refTo('half'))).toEqual({
    problem: 'There is no cell called bst; did you mean bust?',
    start: 4,
    end: 7,
  });
});

test('a circle the formula would make is told before it is made', async () => {
  expect(await checked('half * 2', refTo('bust'))).toEqual({
    problem: 'These use each other: bust → half → bust.',
  });
  expect(await checked('half * 2', refTo('half'))).toEqual({
    problem: 'half uses itself.',
  });
});

test('a formula that uses a cell without a unit waits for it', async () => {
  expect(await checked('wrong * 2', refTo('half'))).toEqual({ problem: 'Needs wrong.' });
});

test('a formula for a place that is not there yet is checked for itself', async () => {
  expect(await checked('bust * 2', refTo('nowhere'))).toEqual({ unit: { length: 1 } });
});
