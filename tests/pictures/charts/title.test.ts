import { describe, expect, test } from 'vitest';
import { workPiece } from '../../../src/craft';
import { headingFor, overlaidInWords, titleFor } from '../../../src/pictures/charts/title';
import { moss, rib, rowsOf, sizeOf, sleeve, specOf } from './pieces';

const plan = sleeve(70, 40, 90);
const m = sizeOf('m', workPiece(plan));
const l = sizeOf('l', workPiece(sleeve(76, 42, 93)));
const broken = sizeOf('s', null, 'The cuff is missing.');

describe('the sentence of a plot', () => {
  test('says from what to what over how many rounds, for the highlighted size', () => {
    expect(titleFor(specOf([m, l], { highlighted: 'm' }))).toBe(
      'Sleeve: from 70 sts (50.0 cm) down to 34 sts (17.0 cm) over 101 rounds, size M.',
    );
  });

  test('speaks of widths first where widths are drawn', () => {
    const front = workPiece({
      name: 'Front',
      worked: 'flat',
      start: 60,
      stretches: [
        { kind: 'even', fabric: rib, rows: 8 },
        { kind: 'even', fabric: moss, rows: 50 },
        { kind: 'evenly', fabric: moss, to: 56 },
      ],
    });
    expect(titleFor(specOf([sizeOf('m', front)], { which: 'width', name: 'Front' }))).toBe(
      'Front: from 30.0 cm (60 sts) up to 40.0 cm (56 sts) over 59 rows, at most 42.9 cm (60 sts) in row 9, size M.',
    );
  });

  test('of a taper says how many shaping rounds it has and how far it gets from the straight line', () => {
    expect(titleFor(specOf([m], { which: 'taper', highlighted: 'm', stretches: plan.stretches }))).toBe(
      'Sleeve: from 70 sts (50.0 cm) down to 34 sts (17.0 cm) over 101 rounds, 15 shaping rounds, at most 1.7 sts (1.2 cm) off the straight line, size M.',
    );
  });

  test('of all sizes is written the way patterns are, with a dash for a size that cannot be worked', () => {
    expect(titleFor(specOf([broken, m, l]))).toBe(
      'Sleeve: from – (70, 76) down to – (34, 36) sts over – (101, 104) rounds, sizes S (M, L).',
    );
  });

  test('of the widths of all sizes gives them in the unit shown', () => {
    expect(titleFor(specOf([m, l], { which: 'width', unit: 'in' }))).toBe(
      'Sleeve: from 19.7 (21.4) down to 6.7 (7.1) inches over 101 (104) rounds, sizes M (L).',
    );
  });

  test('of even work says so', () => {
    const band = sizeOf('m', rowsOf([28, 28, 28]));
    expect(titleFor(specOf([band], { name: 'Band' }))).toBe(
      'Band: 28 sts (20.0 cm) throughout, over 3 rows, size M.',
    );
    expect(titleFor(specOf([band, sizeOf('l', rowsOf([30, 30, 30]))], { name: 'Band' }))).toBe(
      'Band: 28 (30) sts throughout, over 3 rows, sizes M (L).',
    );
  });

  test('of work that comes back to its count says how far it went', () => {
    expect(titleFor(specOf([sizeOf('m', rowsOf([28, 30, 26, 28]))], { name: 'Wave' }))).toBe(
      'Wave: from 28 sts (20.0 cm) and back to 28 sts (20.0 cm) over 4 rows, at most 30 sts (21.4 cm) in row 2, at least 26 sts (18.6 cm) in row 3, size M.',
    );
  });

  test('of a highlighted size that cannot be worked shows the others and says why', () => {
    expect(titleFor(specOf([broken, m], { highlighted: 's' }))).toBe(
      'Sleeve: from 70 sts (50.0 cm) down to 34 sts (17.0 cm) over 101 rounds, size M. Size S cannot be drawn: The cuff is missing.',
    );
  });

  test('of nothing says so, and why', () => {
    expect(titleFor(specOf([broken]))).toBe('Sleeve: no rows to draw yet. The cuff is missing.');
    expect(titleFor(specOf([]))).toBe('Sleeve: no rows to draw yet.');
  });

  test('one row is a row', () => {
    expect(titleFor(specOf([sizeOf('m', rowsOf([28]))]))).toContain('over 1 row, size M');
  });
});

test('the heading says what is drawn, and of which size where it is one', () => {
  expect(headingFor(specOf([m, l], { which: 'taper', highlighted: 'm' }))).toBe('Sleeve: taper, size M');
  expect(headingFor(specOf([m, l], { which: 'taper', highlighted: 'm', all: true }))).toBe('Sleeve: taper');
  expect(headingFor(specOf([m, l], { which: 'width', highlighted: 'm' }))).toBe('Sleeve: width by round');
  expect(headingFor(specOf([sizeOf('m', rowsOf([3]))], { name: 'Band' }))).toBe('Band: stitches by row');
});

test('another order of the same taper differs only in how far it gets from the straight line', () => {
  const other = { ...m, rows: workPiece(sleeve(70, 40, 90)) };
  const overlays = [{ id: 'o', label: 'another order', kind: 'what-if' as const, sizes: [other] }];
  expect(overlaidInWords(specOf([m], { which: 'taper', highlighted: 'm', overlays }))).toEqual([
    'M, another order: 15 shaping rounds, at most 1.7 sts (1.2 cm) off the straight line.',
  ]);
});
