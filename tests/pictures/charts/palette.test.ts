import { describe, expect, test } from 'vitest';
import { distinctSizes, sizeStyle } from '../../../src/pictures/charts/palette';
import { themes } from '../../../src/pictures/charts/theme';
import { contrast, dichromats, difference, linear, seenBy } from './colour-vision';

const visions = [['full colour vision', null] as const, ...Object.entries(dichromats)];
const indices = Array.from({ length: distinctSizes }, (_, sizeIndex) => sizeIndex);

describe('the measure itself', () => {
  test('black on white has a contrast of 21, and #767676 on white the 4.54 that WCAG gives for it (from memory)', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
    expect(contrast('#ffffff', '#767676')).toBeCloseTo(4.54, 2);
  });

  test.each(Object.entries(dichromats))('%s sees white and grey as they are', (_name, matrix) => {
    for (const hex of ['#ffffff', '#808080', '#000000']) {
      expect(difference(seenBy(matrix, linear(hex)), linear(hex))).toBeLessThan(0.01);
    }
  });

  test('red and green of one lightness are far apart in full vision and close together in deuteranopia', () => {
    const [red, green] = [linear('#c05a30'), linear('#708a30')];
    const seen = (colour: typeof red) => seenBy(dichromats.deuteranopia!, colour);
    expect(difference(red, green)).toBeGreaterThan(50);
    expect(difference(seen(red), seen(green))).toBeLessThan(15);
  });
});

describe.each(['light', 'dark'] as const)('the size colours on %s paper', (theme) => {
  const colours = indices.map((sizeIndex) => sizeStyle(sizeIndex, theme).colour);

  test('there are twelve', () => expect(new Set(colours).size).toBe(12));

  test.each(colours)('%s has a contrast of 3 or more against paper and leaf (WCAG 2.2, 1.4.11)', (colour) => {
    expect(contrast(colour, themes[theme].paper)).toBeGreaterThanOrEqual(3);
    expect(contrast(colour, themes[theme].leaf)).toBeGreaterThanOrEqual(3);
  });

  // A difference of about 2.3 can just be noticed (Mahy, Van Eycken and Oosterlinck 1994, from memory).
  test.each(visions)(
    'any two differ by 15 or more in %s, any two of the first six by 25',
    (_name, matrix) => {
      const seen = colours.map((colour) => seenBy(matrix, linear(colour)));
      const least = (count: number) => {
        const differences = seen
          .slice(0, count)
          .flatMap((a, i) => seen.slice(0, i).map((b) => difference(a, b)));
        return Math.min(...differences);
      };
      expect(least(12)).toBeGreaterThanOrEqual(15);
      expect(least(6)).toBeGreaterThanOrEqual(25);
    },
  );
});

test('a size is told apart without colour too: no two share a line style, and no two a mark', () => {
  const styles = indices.map((sizeIndex) => sizeStyle(sizeIndex, 'light'));
  expect(new Set(styles.map(({ dash }) => dash.join(' '))).size).toBe(12);
  expect(new Set(styles.map(({ mark, filled }) => `${mark} ${filled}`)).size).toBe(12);
});

test('line and mark of a size are the same in light and dark', () => {
  for (const sizeIndex of indices) {
    const [light, dark] = [sizeStyle(sizeIndex, 'light'), sizeStyle(sizeIndex, 'dark')];
    expect({ ...dark, colour: light.colour }).toEqual(light);
  }
});

test('a thirteenth size looks like the first', () => {
  expect(sizeStyle(12, 'light')).toEqual(sizeStyle(0, 'light'));
});
