import { describe, expect, test } from 'vitest';
import { workPiece } from '../../../src/craft';
import { readingInWords, readingOf } from '../../../src/pictures/charts/reading';
import { drawnSizes } from '../../../src/pictures/charts/series';
import { rowsOf, sizeOf, sleeve, specOf } from './pieces';

const plan = sleeve(70, 40, 90);
const sizes = [sizeOf('m', workPiece(plan)), sizeOf('l', null, 'The cuff is missing.')];

function read(row: number, more: Parameters<typeof specOf>[1] = {}) {
  const spec = specOf(sizes, { stretches: plan.stretches, ...more });
  return readingOf(spec, drawnSizes(spec)[0]!, row - 1);
}

describe('what a plot says of a row', () => {
  test('says its number, count and width: 62 sts at 14 to 10 cm are 44.3 cm', () => {
    expect(read(24)).toEqual({
      heading: 'M, taper',
      lines: ['Round 24: 62 sts, 44.3 cm', '2 sts fewer than in round 23'],
    });
  });

  test('says nothing of shaping where nothing is shaped', () => {
    expect(read(25).lines).toEqual(['Round 25: 62 sts, 44.3 cm']);
  });

  test('in a taper says how far it is from the straight line, in stitches and in length', () => {
    expect(read(29, { which: 'taper' }).lines.at(-1)).toBe('1.7 sts (1.2 cm) wider than the straight line');
    expect(read(24, { which: 'taper' }).lines.at(-1)).toBe('On the straight line');
    expect(read(29, { which: 'taper', unit: 'in', decimal: ',' }).lines).toEqual([
      'Round 29: 62 sts, 17,4 in',
      '1,7 sts (0,5 in) wider than the straight line',
    ]);
  });

  test('outside the taper has no straight line', () => {
    expect(read(95, { which: 'taper' }).lines).toEqual(['Round 95: 34 sts, 17.0 cm']);
  });

  test('flat work has rows, and its first is compared with the start', () => {
    const spec = specOf([sizeOf('m', rowsOf([21, 21], 20))]);
    expect(readingOf(spec, drawnSizes(spec)[0]!, 0)).toEqual({
      heading: 'M',
      lines: ['Row 1: 21 sts, 15.0 cm', '1 st more than at the start'],
    });
  });
});

test('with the plan at hand says what is worked on it, in every picture', () => {
  const planned = { ...sizes[0]!, plan };
  for (const which of ['stitches', 'width', 'taper'] as const) {
    const spec = specOf([planned], { which, stretches: plan.stretches });
    const lines = (row: number) => readingOf(spec, drawnSizes(spec)[0]!, row - 1).lines;
    expect(lines(24)[1]).toBe('Decrease 2 in the round');
    expect(lines(25)[1]).toBe('Plain');
    expect(lines(91)[1]).toBe('Decrease 6, spread evenly');
  }
});

test('says what lies over it in the same row', () => {
  const other = { ...sizes[0]!, rows: workPiece(sleeve(74, 40, 20)) };
  const overlays = [{ id: 'x', label: '7 mm hook', kind: 'what-if' as const, sizes: [other] }];
  const spec = specOf(sizes, { overlays });
  const last = (row: number) => readingOf(spec, drawnSizes(spec)[0]!, row - 1).lines.at(-1);
  expect(last(2)).toBe('7 mm hook: 72 sts, 51.4 cm');
  expect(last(60)).toBe('7 mm hook: no such round');
});

test('as a sentence, for a screen reader; nothing for a row or a size that is not there', () => {
  const spec = specOf(sizes, { stretches: plan.stretches });
  expect(readingInWords(spec, 'm', 24)).toBe(
    'M, taper. Round 24: 62 sts, 44.3 cm. 2 sts fewer than in round 23.',
  );
  for (const [id, row] of [
    ['m', 0],
    ['m', 102],
    ['m', 1.5],
    ['l', 1],
    ['x', 1],
  ] as const) {
    expect(readingInWords(spec, id, row)).toBeNull();
  }
});
