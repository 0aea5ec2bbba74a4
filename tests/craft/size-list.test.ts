import { describe, expect, test } from 'vitest';
import { nearestSize, ofSize } from '../../src/craft';

describe('a number of a printed size list', () => {
  test('is that of the size, the first size being 1', () => {
    expect([1, 2, 3].map((size) => ofSize([98, 106, 114], size))).toEqual([98, 106, 114]);
  });
  test('may be 0: a size that shapes 0 times', () => expect(ofSize([2, 0], 2)).toBe(0));
  test('is not there for a size the list does not have', () => {
    expect(() => ofSize([98, 106], 3)).toThrow(
      'There are 2 sizes, so there is no number 3: choose one from 1 to 2.',
    );
    expect(() => ofSize([98, 106], 0)).toThrow('1');
    expect(() => ofSize([98, 106], 1.5)).toThrow('whole');
  });
  test('is not there where a dash is printed', () => {
    expect(() => ofSize([98, -1], 2)).toThrow('prints a dash here');
  });
});

describe('the size of a list that is nearest to a wish', () => {
  test('is the one whose number is least far from it', () => {
    expect([80, 93.9, 97, 200].map((wish) => nearestSize(wish, [90, 98, 106]))).toEqual([1, 1, 2, 3]);
  });
  test('of two as near is the larger number', () => expect(nearestSize(94, [90, 98])).toBe(2));
  test('of equal numbers is the first size', () => expect(nearestSize(44, [44, 44, 44])).toBe(1));
  test('leaves out sizes with a dash', () => expect(nearestSize(1, [-1, 90])).toBe(2));
  test('is none where every size has a dash', () => {
    expect(() => nearestSize(90, [-1, -1])).toThrow('No size has a number here: type one.');
  });
});
