import { describe, expect, test } from 'vitest';
import { allCells } from '../../../src/notebook';
import { allDecisions, decisionsOf, outermost, wholeCall } from '../../../src/analysis/uncertainty/decisions';
import { formula, measure } from '../../engine/notebook-of';
import { vNeck } from '../../notebooks/v-neck';

const keys = (id: string): string[] =>
  decisionsOf(allCells(vNeck()).find((cell) => cell.id === id)!).map(({ key }) => key);

describe('what is a decision', () => {
  test('the count of a repeat fit, and not what was wanted or how far off it is', () => {
    expect(keys('back-sts')).toEqual(['count']);
  });

  test('a pick-up’s total, its shares and its ratios; not the stitches before they are fitted', () => {
    expect(keys('band')).toEqual(
      expect.arrayContaining([
        'total',
        'back_neck.share',
        'right_front.share',
        'right_front.pick',
        'right_front.of',
      ]),
    );
    expect(keys('band')).not.toContain('unfitted');
    expect(keys('band')).not.toContain('right_neck.length');
  });

  test('the rows and counts a piece is told by a formula; not its widths and lengths', () => {
    expect(keys('back')).toEqual(expect.arrayContaining(['start', 'lower.rows', 'upper.rows']));
    expect(keys('back')).not.toContain('start_width');
    expect(keys('back')).not.toContain('length');
    expect(keys('front')).toEqual(expect.arrayContaining(['neck.to', 'neck.over']));
  });

  test('a count that is rounded, and whole balls; not grams', () => {
    expect(keys('lower-rows')).toEqual(['value']);
    expect(keys('yarn')).toEqual(['balls']);
  });

  test('a count that was typed is no formula, so there is nothing to hold', () => {
    expect(decisionsOf(measure('underarm', 'stitches', 8))).toEqual([]);
  });

  test('a rounding within a longer formula is none: only its edge is kept off', () => {
    expect(decisionsOf(formula('a', 'ROUNDCOUNT(b) / body_sts'))).toEqual([]);
    expect(decisionsOf(formula('a', 'ROUNDCOUNT(b / body_sts)'))).toHaveLength(1);
  });

  test('every place that is held is one of the notebook’s', () => {
    expect(allDecisions(vNeck()).length).toBeGreaterThan(20);
  });
});

test.each([
  ['ROUNDCOUNT(a * (b + 1); "even")', 'ROUNDCOUNT'],
  ['ROUND(a) + ROUND(b)', undefined],
  ['a', undefined],
  ['(ROUND(a))', undefined],
  ['ROUND(', undefined],
])('the outermost function of %s is %s', (text, found) => {
  expect(outermost(text)).toBe(found);
});

test('the arguments of a call that is the whole of a formula are formulas themselves', () => {
  expect(wholeCall('ROUNDCOUNT(MAX(a; b) * body_sts; "even")')).toEqual({
    called: 'ROUNDCOUNT',
    arguments: ['MAX(a; b) * body_sts', '"even"'],
  });
});
