import { expect, test } from 'vitest';
import { capital } from '../../src/format/capital';
import { uncapital } from '../../src/format/uncapital';

test('a label begins a sentence with a capital, and goes on within one with a small letter', () => {
  expect(capital('back width')).toBe('Back width');
  expect(capital('')).toBe('');
  expect(uncapital('Back width')).toBe('back width');
  expect(uncapital('Ärmel')).toBe('ärmel');
});

test('an abbreviation keeps its capitals within a sentence', () => {
  expect(uncapital('RS facing')).toBe('RS facing');
  expect(uncapital('M')).toBe('M');
});
