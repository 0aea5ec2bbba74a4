import { expect, it } from 'vitest';
import { length, mass, plain, rows, stitches, usualSettings, type Input } from '../../src/notebook';
import { showNumber, typedNumber } from '../../src/page/showing';

it('a mass is shown to a tenth of a gram, and a whole one without', () => {
  expect(showNumber(1080.05, mass, usualSettings)).toBe('1080.1');
  expect(showNumber(1080, mass, usualSettings)).toBe('1080');
  expect(showNumber(0.125, plain, usualSettings)).toBe('0.13');
});

it('the stitches or rows of a swatch are taken with their word behind them, half a stitch too', () => {
  const counted = { key: 'sts.0.count', label: 'Stitches counted', entry: { value: null } } as Input;
  const typed = (text: string, unit = stitches) => typedNumber(text, counted, unit, usualSettings);
  expect(typed('18 sts')).toEqual({ value: 18 });
  expect(typed('17,5 stitches')).toEqual({ value: 17.5 });
  expect(typed('24 rounds', rows)).toEqual({ value: 24 });
  expect(typed('18 sts', plain)).toHaveProperty('problem');
  expect(typed('18 sts', length)).toHaveProperty('problem');
  expect(typed('sts')).toHaveProperty('problem');
});
