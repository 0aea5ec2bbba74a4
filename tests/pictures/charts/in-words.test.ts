import { expect, test } from 'vitest';
import {
  figure,
  fromUnit,
  inUnit,
  lengthInWords,
  stitchesInWords,
} from '../../../src/pictures/charts/in-words';

test('an inch is 2.54 cm exactly, both ways', () => {
  expect(inUnit(25.4, 'in')).toBeCloseTo(10, 12);
  expect(fromUnit(10, 'in')).toBeCloseTo(25.4, 12);
  expect(inUnit(25.4, 'cm')).toBe(25.4);
});

test('a length is said to a tenth, in the unit and with the decimal sign asked for', () => {
  expect(lengthInWords(41.286, { unit: 'cm', decimal: '.' })).toBe('41.3 cm');
  expect(lengthInWords(41.286, { unit: 'in', decimal: ',' })).toBe('16,3 in');
});

test('less than nothing has a true minus, and nothing has none', () => {
  expect(figure(-1.26, 1, '.')).toBe('−1.3');
  expect(figure(-0.04, 1, '.')).toBe('0.0');
});

test('one is a stitch, others are stitches', () => {
  expect([0, 1, 62].map(stitchesInWords)).toEqual(['0 sts', '1 st', '62 sts']);
});
