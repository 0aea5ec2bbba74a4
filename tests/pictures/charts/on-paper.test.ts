import { expect, test } from 'vitest';
import { layoutWidth, legendPositions } from '../../../src/pictures/charts/on-paper';
import { wrapped } from '../../../src/pictures/charts/wrapped';

const byLetters = (text: string): number => text.length;

test('a title is broken between words, and a word wider than the paper anywhere, so that nothing is cut off', () => {
  expect(wrapped('a bb ccc', 4, byLetters)).toEqual(['a bb', 'ccc']);
  expect(wrapped('Sleeve', 4, byLetters)).toEqual(['Slee', 've']);
  expect(wrapped('a Sleeve b', 4, byLetters)).toEqual(['a', 'Slee', 've b']);
  expect(wrapped('  ', 3, byLetters)).toEqual([]);
});

test('a legend that is too long for one row goes on in the next, and stays on the paper', () => {
  const entry = (label: string) => ({ label, colour: '#000', dash: [] });
  const entries = legendPositions(
    Array.from({ length: 12 }, (_, i) => entry(`Size ${i}`)),
    (text) => text.length * 6,
  );
  expect(new Set(entries.map(({ y }) => y)).size).toBe(2);
  for (const { x, entry } of entries)
    expect(x + 34 + 6 + entry.label.length * 6).toBeLessThanOrEqual(layoutWidth - 16);
});
