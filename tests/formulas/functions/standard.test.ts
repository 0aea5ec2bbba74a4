import { describe, expect, test } from 'vitest';
import { valueOf } from '../../engine/worked';
import { refuses } from './cases';

describe('rounding keeps the trade’s float edge', () => {
  test.each([
    // 45 × 1.4 is 62.99999999999999 in binary; 750 × 1.1 ÷ 25 is 33.00000000000001.
    ['INT(45 * 1.4)', 63],
    ['ROUNDDOWN(45 * 1.4)', 63],
    ['ROUNDUP(750 * 1.1 / 25)', 33],
    ['ROUND(1.005; 2)', 1.01],
    ['MOD(45 * 1.4; 7)', 0],
    ['INT(62.9)', 62],
    ['ROUNDUP(33.1)', 34],
  ])('%s is %d', async (text, result) => {
    expect(await valueOf(text)).toBe(result);
  });
});

describe('rounding is OpenFormula’s (OASIS OpenDocument 1.3, part 4)', () => {
  test.each([
    ['INT(-3.1)', -4],
    ['ROUND(2.5)', 3],
    ['ROUND(-2.5)', -3],
    ['ROUND(1250; -2)', 1300],
    ['ROUNDUP(-1.1)', -2],
    ['ROUNDDOWN(-1.9)', -1],
    ['ROUNDDOWN(3.14159; 3)', 3.141],
    ['MOD(10; 3)', 1],
    ['MOD(-10; 3)', 2],
    ['MOD(10; -3)', -2],
    ['SQRT(16)', 4],
    ['-2 ^ 2', 4],
    ['2 ^ 3 ^ 2', 64],
    ['50%', 0.5],
    ['2 + 3 * 4', 14],
    ['(2 + 3) * 4', 20],
    ['10 - 4 - 3', 3],
    ['AVERAGE(1; 2; 6)', 3],
    ['ABS(-3)', 3],
    ['PI()', Math.PI],
  ])('%s is %d', async (text, result) => {
    expect(await valueOf(text)).toBeCloseTo(result, 12);
  });
});

test('IF asks no more of the branch it does not take than that it can be written', async () => {
  expect(await valueOf('IF(1 < 2; 5; 1 / 0)')).toBe(5);
  expect(await valueOf('IF(AND(1 < 2; NOT(2 < 1)); 5; 6)')).toBe(5);
  expect(await valueOf('OR(FALSE(); 1 = 1)')).toBe(true);
});

describe('text', () => {
  test.each([
    ['"a" & "b"', 'ab'],
    ['"say ""held"""', 'say "held"'],
    ['"back\\"', 'back\\'],
    ['"\\" & "(" & "x"', '\\(x'],
    ['"é ✂ 😀 \\"', 'é ✂ 😀 \\'],
    ['"=1+1"', '=1+1'],
    ['3 & " rows"', '3 rows'],
  ])('%s', async (text, result) => {
    expect(await valueOf(text)).toBe(result);
  });
});

describe('what the standard has no result for', () => {
  refuses([
    ['SQRT(-4)', 'no square root of a number below zero'],
    ['MOD(4; 0)', 'division by zero'],
    ['ROUND(1; 400)', 'decimal places'],
  ]);
});
