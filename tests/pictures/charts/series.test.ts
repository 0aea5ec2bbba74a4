import { describe, expect, test } from 'vitest';
import { workPiece } from '../../../src/craft';
import {
  cornersOf,
  drawnSizes,
  edgesOf,
  rowAt,
  ruledSize,
  thinned,
} from '../../../src/pictures/charts/series';
import { moss, rib, rowsOf, sizeOf, sleeve, specOf } from './pieces';

describe('how far along the piece its rows reach', () => {
  test('rows at 2 to the cm are half a cm each', () => {
    expect([...edgesOf(rowsOf([20, 20, 18]), 'width')]).toEqual([0, 0.5, 1, 1.5]);
  });

  test('in a plot of stitches a row is as high as it is in stitch widths: half a cm at 1.4 stitches to the cm is 0.7', () => {
    expect([...edgesOf(rowsOf([20, 20]), 'stitches')]).toEqual([0, 0.7, 1.4]);
  });

  test('rows of differing heights keep them', () => {
    const striped = { stitches: 1.2, rows: 1, heights: [0.6, 1.4] };
    const rows = workPiece({
      name: 'Stripes',
      worked: 'flat',
      start: 10,
      stretches: [{ kind: 'even', fabric: striped, rows: 3 }],
    });
    expect([...edgesOf(rows, 'taper')].map((edge) => Number(edge.toFixed(9)))).toEqual([0, 0.6, 2, 2.6]);
  });
});

describe('the line of a size', () => {
  test('is a stair: a count holds for the whole of its row and jumps where the next begins', () => {
    const rows = rowsOf([20, 20, 18, 18]);
    expect(
      cornersOf(
        rows,
        edgesOf(rows, 'width').map((_, k) => k),
        'stitches',
      ),
    ).toEqual([
      { x: 0, y: 20 },
      { x: 2, y: 20 },
      { x: 2, y: 18 },
      { x: 4, y: 18 },
    ]);
  });

  test('of one row is one tread', () => {
    const rows = rowsOf([20]);
    expect(cornersOf(rows, edgesOf(rows, 'width'), 'stitches')).toEqual([
      { x: 0, y: 20 },
      { x: 0.5, y: 20 },
    ]);
  });

  test('jumps in width where the fabric changes although the count does not', () => {
    const rows = workPiece({
      name: 'Front',
      worked: 'flat',
      start: 28,
      stretches: [
        { kind: 'even', fabric: rib, rows: 5 },
        { kind: 'even', fabric: moss, rows: 4 },
      ],
    });
    const edges = edgesOf(rows, 'width');
    expect(cornersOf(rows, edges, 'width').map(({ y }) => Math.round(y))).toEqual([14, 14, 20, 20]);
    expect(cornersOf(rows, edges, 'stitches')).toHaveLength(2);
  });

  test('needs two corners however many rows are worked even', () => {
    const rows = rowsOf(Array<number>(10_000).fill(60));
    expect(cornersOf(rows, edgesOf(rows, 'width'), 'width')).toHaveLength(2);
  });
});

describe('a line with more corners than can be seen', () => {
  const jagged = Array.from({ length: 20_000 }, (_, i) => ({ x: i, y: i === 7_777 ? 500 : i % 2 }));

  test('is thinned, with its ends, its highest and its lowest kept', () => {
    const line = thinned(jagged, 1600);
    expect(line.length).toBeLessThanOrEqual(1604);
    expect([line[0], line.at(-1)]).toEqual([jagged[0], jagged.at(-1)]);
    expect(line).toContainEqual({ x: 7_777, y: 500 });
    expect(Math.min(...line.map(({ y }) => y))).toBe(0);
  });

  test('stays in order', () => {
    const xs = thinned(jagged, 1600).map(({ x }) => x);
    expect(xs).toEqual([...xs].sort((a, b) => a - b));
  });

  test('is left alone where it is short', () => {
    expect(thinned(jagged.slice(0, 40), 1600)).toHaveLength(40);
  });
});

describe('the sizes a plot draws', () => {
  const m = sizeOf('m', workPiece(sleeve(70, 40, 90)));
  const l = sizeOf('l', workPiece(sleeve(76, 42, 92)));
  const broken = sizeOf('s', null, 'The cuff is missing.');

  test('a size that cannot be worked does not keep the others from being drawn, nor change their colours', () => {
    const drawn = drawnSizes(specOf([broken, m, l]));
    expect(drawn.map(({ id, sizeIndex }) => [id, sizeIndex])).toEqual([
      ['m', 1],
      ['l', 2],
    ]);
    expect(drawn[0]!.style).toEqual(drawnSizes(specOf([l, m]))[1]!.style);
  });

  test('a taper shows the highlighted size alone, or all where none is or it cannot be worked', () => {
    const ids = (highlighted: string | null) =>
      drawnSizes(specOf([broken, m, l], { which: 'taper', highlighted })).map(({ id }) => id);
    expect(ids('l')).toEqual(['l']);
    expect(ids(null)).toEqual(['m', 'l']);
    expect(ids('s')).toEqual(['m', 'l']);
  });

  test('a size of no rows is not drawn', () => {
    expect(drawnSizes(specOf([sizeOf('m', [])]))).toEqual([]);
  });

  test('the paper is ruled for the highlighted size, or else for the first that is drawn', () => {
    const drawn = drawnSizes(specOf([broken, m, l]));
    expect(ruledSize(drawn, 'l')?.id).toBe('l');
    expect(ruledSize(drawn, 's')?.id).toBe('m');
    expect(ruledSize([], 's')).toBeNull();
  });
});

test('a place along the piece is on the row that reaches over it, and beyond the ends on the first or the last', () => {
  const edges = Float64Array.of(0, 0.5, 1, 1.5);
  expect([-1, 0, 0.49, 0.5, 1.2, 1.5, 9].map((x) => rowAt(edges, x))).toEqual([0, 0, 0, 1, 2, 2, 2]);
});
