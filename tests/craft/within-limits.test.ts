import { expect, test } from 'vitest';
import { withinLimits } from '../../src/craft/within-limits';

test('a tape read to within half a centimetre either way has a standard uncertainty of 0.289 cm', () => {
  expect(withinLimits(0.5)).toBeCloseTo(0.288675134595, 12);
  expect(withinLimits(0)).toBe(0);
});

test('it cannot be off by less than nothing', () => {
  expect(() => withinLimits(-1)).toThrow('How far it may be off');
  expect(() => withinLimits(NaN)).toThrow('has to be a number');
});
