import { expect, it } from 'vitest';
import { mass, plain, usualSettings } from '../../src/notebook';
import { showNumber } from '../../src/page/showing';

it('a mass is shown to a tenth of a gram, and a whole one without', () => {
  expect(showNumber(1080.05, mass, usualSettings)).toBe('1080.1');
  expect(showNumber(1080, mass, usualSettings)).toBe('1080');
  expect(showNumber(0.125, plain, usualSettings)).toBe('0.13');
});
