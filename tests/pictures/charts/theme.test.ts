import { describe, expect, test } from 'vitest';
import { themes } from '../../../src/pictures/charts/theme';
import { contrast } from './colour-vision';

describe.each(['light', 'dark'] as const)('the %s theme', (name) => {
  const theme = themes[name];

  test.each(['paper', 'leaf', 'wash'] as const)('ink can be read on %s (WCAG 2.2 AA: 4.5)', (ground) => {
    expect(contrast(theme.ink, theme[ground])).toBeGreaterThanOrEqual(4.5);
  });

  test.each(['soft', 'accent', 'trouble'] as const)('%s can be read on paper, leaf and wash', (colour) => {
    for (const ground of [theme.paper, theme.leaf, theme.wash]) {
      expect(contrast(theme[colour], ground)).toBeGreaterThanOrEqual(4.5);
    }
  });

  test('the border of a control stands out from paper and grid (WCAG 2.2, 1.4.11: 3)', () => {
    expect(contrast(theme.edge, theme.paper)).toBeGreaterThanOrEqual(3);
    expect(contrast(theme.edge, theme.leaf)).toBeGreaterThanOrEqual(3);
  });

  test('the ruling of the paper is fainter than any line drawn on it, its tenth lines less so', () => {
    expect(contrast(theme.rule, theme.paper)).toBeLessThan(contrast(theme.tenth, theme.paper));
    expect(contrast(theme.tenth, theme.paper)).toBeLessThan(3);
  });
});
