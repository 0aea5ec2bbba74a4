import { describe, expect, test } from 'vitest';
import { workPiece } from '../../../src/craft';
import { ruledStretches } from '../../../src/pictures/charts/rulings';
import { edgesOf } from '../../../src/pictures/charts/series';
import { lengthTicks, rowTicks, stitchTicks } from '../../../src/pictures/charts/ticks';
import { moss, rib, rowsOf, sleeve } from './pieces';

const labels = (ticks: { label: string }[]) => ticks.map(({ label }) => label);
const cm = { unit: 'cm', decimal: '.' } as const;

describe('lengths on an axis', () => {
  test('50 cm at 8 px to the cm are marked every 5', () => {
    expect(labels(lengthTicks([0, 50], 8, 40, cm))).toEqual('0 5 10 15 20 25 30 35 40 45 50'.split(' '));
  });

  test('inches stand at whole inches, 2.54 cm apart', () => {
    const ticks = lengthTicks([0, 26], 20, 40, { unit: 'in', decimal: '.' });
    expect(labels(ticks)).toEqual('0 1 2 3 4 5 6 7 8 9 10'.split(' '));
    expect(ticks[10]!.value).toBeCloseTo(25.4, 9);
  });

  test('halves are marked where there is room, with the decimal sign asked for', () => {
    expect(labels(lengthTicks([0, 1], 160, 40, { unit: 'cm', decimal: ',' }))).toEqual(['0,0', '0,5', '1,0']);
  });

  test('an axis that starts between two marks begins with the next', () => {
    expect(labels(lengthTicks([23.4, 41], 12, 40, cm))).toEqual(['25', '30', '35', '40']);
  });
});

test('stitches are marked at their width: the 20th at 1.4 to the cm is at 14.3 cm', () => {
  const ticks = stitchTicks([13, 30], 1 / 1.4, 5, 24);
  expect(labels(ticks)).toEqual(['20', '25', '30', '35', '40']);
  expect(ticks[0]!.value).toBeCloseTo(20 / 1.4, 9);
});

describe('rows on an axis', () => {
  test('stand at the end of the row they name', () => {
    const rows = workPiece(sleeve(70, 40, 90));
    const edges = edgesOf(rows, 'width');
    const ticks = rowTicks(edges, ruledStretches({ rows }, 'width'), 10, 48);
    expect(labels(ticks)).toEqual('10 20 30 40 50 60 70 80 90 100'.split(' '));
    expect(ticks[8]!.value).toBeCloseTo(45, 9);
    expect(ticks[9]!.value).toBeCloseTo(45.5 + 9 / 2.5, 9);
  });

  test('a long stretch of low rows sets how far apart they are, a short one does not', () => {
    const front = (ribRows: number) => {
      const rows = workPiece({
        name: 'Front',
        worked: 'flat',
        start: 60,
        stretches: [
          { kind: 'even', fabric: { ...rib, rows: 8 }, rows: ribRows },
          { kind: 'even', fabric: moss, rows: 60 },
        ],
      });
      return labels(rowTicks(edgesOf(rows, 'width'), ruledStretches({ rows }, 'width'), 10, 48)).slice(0, 2);
    };
    expect(front(6)).toEqual(['10', '20']);
    expect(front(80)).toEqual(['50', '100']);
  });

  test('a piece of one row has its one row marked', () => {
    const rows = rowsOf([20]);
    expect(rowTicks(edgesOf(rows, 'width'), ruledStretches({ rows }, 'width'), 40, 48)).toEqual([
      { value: 0.5, label: '1' },
    ]);
  });
});
