import { expect, it } from 'vitest';
import { length, mass, plain, rowGauge, rows, stitches, stitchGauge } from '../../src/formulas';
import { usualSettings, type Input } from '../../src/notebook';
import { showNumber, typedNumber } from '../../src/workspace/display';

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

it('rows are no stitches, and stitches no rows: who types them is asked', () => {
  const input = (constraint?: Input['constraint']) =>
    ({ key: 'value', label: 'Count', entry: { value: null }, constraint }) as Input;
  const typed = (text: string, unit = stitches, constraint?: Input['constraint']) =>
    typedNumber(text, input(constraint), unit, usualSettings);
  const rowsTyped = 'Stitches are counted here: type how many.';
  expect(typed('14 rows')).toEqual({ problem: rowsTyped });
  expect(typed('14 rows', stitches, { whole: true })).toEqual({ problem: rowsTyped });
  expect(typed('14 rnds.', stitchGauge)).toEqual({ problem: rowsTyped });
  expect(typed('14 sts', rows, { whole: true })).toEqual({
    problem: 'Rows are counted here: type how many.',
  });
  expect(typed('14½ stitches', rowGauge)).toHaveProperty('problem');
  expect(typed('rows')).toEqual({ problem: expect.stringContaining('Type a number') });
  expect(typed('3½rows')).toHaveProperty('problem');
  expect(typed('14 Rounds', rows, { whole: true })).toEqual({ value: 14 });
  expect(typed('14 sts', stitchGauge)).toEqual({ value: 1.4 });
});

it('yarn is typed by the measure of the notebook: yards are no metres', () => {
  const ball = { key: 'ball', label: 'Ball', entry: { value: null }, written: 'metres' } as Input;
  const cm = (text: string, unit: 'cm' | 'in') =>
    typedNumber(text, ball, length, { ...usualSettings, length: unit });
  for (const text of ['100', '100 m', '100 metres.']) expect(cm(text, 'cm')).toEqual({ value: 10000 });
  for (const text of ['100', '100 yd', '100 Yards']) expect(cm(text, 'in')).toEqual({ value: 9144 });
  for (const text of ['100 yd', '100 yards', '100 mm', 'm']) expect(cm(text, 'cm')).toHaveProperty('problem');
  for (const text of ['100 m', '100 metres']) expect(cm(text, 'in')).toHaveProperty('problem');
});
