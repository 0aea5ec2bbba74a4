import { describe, expect, it } from 'vitest';
import { ordinal } from '../../../src/formulas/ordinal';
import { counted, moreTimes, ordinals, sizeList, times } from '../../../src/pattern/write/size-list';

describe('numbers by size', () => {
  it.each([
    [[34, 36, 40], '34 (36, 40)'],
    [[34, 34, 34], '34'],
    [[34, null, 40], '34 (–, 40)'],
    [[null, null], '–'],
    [[34], '34'],
  ])('%j are written %s', (values, written) => {
    expect(sizeList(values)).toBe(written);
  });

  it('one row is a row, and a list with a single one in it is of rows', () => {
    expect(counted([1, 1], 'row')).toBe('1 row');
    expect(counted([1, 2], 'row')).toBe('1 (2) rows');
    expect(counted([null, 1], 'st')).toBe('– (1) st');
    expect(counted([2, 2], 'st')).toBe('2 sts');
    expect(counted([null, null], 'st')).toBe('– sts');
  });

  it('once and twice are words where they are so in every size', () => {
    expect(times([1, 1])).toBe('once');
    expect(times([2])).toBe('twice');
    expect(times([3])).toBe('3 times');
    expect(times([1, 2])).toBe('1 (2) times');
    expect(moreTimes([1])).toBe('once more');
    expect(moreTimes([2, 2])).toBe('twice more');
    expect(moreTimes([4, null])).toBe('4 (–) more times');
  });

  it.each([
    [1, '1st'],
    [2, '2nd'],
    [3, '3rd'],
    [4, '4th'],
    [11, '11th'],
    [12, '12th'],
    [13, '13th'],
    [21, '21st'],
    [112, '112th'],
  ])('%i is %s', (number, written) => {
    expect(ordinal(number)).toBe(written);
    expect(ordinals([number, null])).toBe(`${written} (–)`);
  });
});
