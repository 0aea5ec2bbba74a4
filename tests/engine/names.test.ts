import { describe, expect, test } from 'vitest';
import { Names } from '../../src/engine/names';

function named(...names: string[]): Names {
  const table = new Names();
  names.forEach((name, row) => table.add(name, row));
  return table;
}

test('a name finds its row whatever its case and however its accents are put together', () => {
  expect(named('bust', 'Ärmel').find('BUST')).toBe(0);
  expect(named('bust', 'Ärmel').find('ärmel')).toBe(1);
});

test('what a swatch has not been told yet is asked of the swatch', () => {
  const table = named('wool', 'wool_sts', 'wool_sts_counted');
  expect(table.find('wool_swatch_area')).toEqual({
    problem: 'Open the swatch wool and add the whole swatch on the scales.',
  });
  expect(table.find('wool_stretch')).toEqual({
    problem: 'Open the swatch wool and add how far it stretches.',
  });
  expect(table.find('silk_stretch')).toEqual({
    problem: expect.stringContaining('no cell called silk_stretch'),
  });
});

describe('a name that is not there suggests the nearest', () => {
  test.each([
    ['bst', 'bust'],
    ['bsut', 'bust'],
    ['busst', 'bust'],
    ['finished_bist', 'finished_bust'],
    ['back_sts_', 'back_sts'],
    ['slevee', 'sleeve'],
  ])('%s, %s', (typed, meant) => {
    expect(named('hips', 'finished_bust', 'sleeve', 'bust', 'back_sts').find(typed)).toEqual({
      problem: `There is no cell called ${typed}; did you mean ${meant}?`,
    });
  });

  test('and none where nothing is near', () => {
    expect(named('bust', 'hips').find('neck_to_wrist')).toEqual({
      problem: 'There is no cell called neck_to_wrist.',
    });
    expect(named('ab').find('xy')).toEqual({ problem: 'There is no cell called xy.' });
  });

  test('the same one whatever the order of the cells', () => {
    const problem = { problem: 'There is no cell called hat; did you mean bat?' };
    expect(named('cat', 'bat', 'rat').find('hat')).toEqual(problem);
    expect(named('rat', 'bat', 'cat').find('hat')).toEqual(problem);
  });
});

test('a name is free again when all but one have given it up', () => {
  const table = named('bust', 'bust');
  expect(table.find('bust')).toHaveProperty('problem');
  table.remove('bust', 0);
  expect(table.find('bust')).toBe(1);
  table.remove('bust', 1);
  expect(table.find('bust')).toEqual({ problem: 'There is no cell called bust.' });
});
