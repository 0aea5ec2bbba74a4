import { expect, test } from 'vitest';
import { bracketed, bySize } from '../../src/format/bracketed';

test('the sizes of a pattern are written with those after the first in brackets', () => {
  expect(bracketed(['S', 'M', 'L'])).toBe('S (M, L)');
  expect(bracketed(['S'])).toBe('S');
  expect(bracketed([])).toBe('');
  expect(bracketed(['S', 'S'])).toBe('S (S)');
});

test('a list by size puts the sizes after the first in brackets, and says a number common to all once', () => {
  expect(bySize(['34', '36', '40'])).toBe('34 (36, 40)');
  expect(bySize(['34', '34'])).toBe('34');
  expect(bySize(['34', '–', '40'])).toBe('34 (–, 40)');
  expect(bySize([])).toBe('');
});
