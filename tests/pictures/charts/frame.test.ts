import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { workPiece } from '../../../src/craft';
import { extentOf, frameOf, heightFor, insetsFor } from '../../../src/pictures/charts/frame';
import { drawnSizes } from '../../../src/pictures/charts/series';
import { moss, rowsOf, sizeOf, sleeve, specOf } from './pieces';

const insets = { left: 30, right: 20, top: 40, bottom: 40, foot: 18 };
const sleeveExtent = { along: 50, lowest: 24, highest: 54, row: 0.5, stitch: 0.7 };

describe('a plot fitted into its canvas', () => {
  test('a sleeve 50 cm long is to scale: a cm along is as long on the screen as a cm across', () => {
    const { pxAlong, pxAcross, stretched } = frameOf(sleeveExtent, insets, 640, 480);
    expect(stretched).toBe(1);
    expect(pxAlong).toBe(pxAcross);
  });

  test('room left over is more paper, so a wide canvas shows more than the piece is long', () => {
    const { x } = frameOf(sleeveExtent, insets, 1200, 400);
    expect(x[1]).toBeGreaterThan(100);
  });

  test('a band of 10 rows in sizes from 80 to 120 cm would be a sliver: its rows are drawn some times as high', () => {
    const { stretched, pxAlong, pxAcross } = frameOf(
      { along: 4, lowest: 80, highest: 120, row: 0.4, stitch: 0.5 },
      insets,
      640,
      480,
    );
    expect(stretched).toBeGreaterThan(1);
    expect(Number.isInteger(stretched)).toBe(true);
    expect(pxAlong / pxAcross).toBeCloseTo(stretched, 12);
    expect(0.4 * pxAlong).toBeLessThanOrEqual(20);
  });

  test('a blanket of 10 000 rows is drawn some times as wide, and its stitches no wider than 20 px', () => {
    const frame = frameOf({ along: 5000, lowest: 80, highest: 120, row: 0.5, stitch: 0.7 }, insets, 640, 480);
    expect(Number.isInteger(1 / frame.stretched)).toBe(true);
    expect(frame.stretched).toBeLessThan(1);
    expect(0.7 * frame.pxAcross).toBeLessThanOrEqual(20);
  });

  test('an even scarf is not stretched: there is nothing across it to see', () => {
    expect(
      frameOf({ along: 160, lowest: 20, highest: 20, row: 0.5, stitch: 0.7 }, insets, 640, 300).stretched,
    ).toBe(1);
  });

  test('one row lies on paper of ten rows and ten stitches at the least', () => {
    const { x, y } = frameOf(
      { along: 0.5, lowest: 20, highest: 20, row: 0.5, stitch: 0.7 },
      insets,
      640,
      480,
    );
    expect(x[1]).toBeGreaterThanOrEqual(5);
    expect(y[1] - y[0]).toBeGreaterThanOrEqual(7);
  });

  test('whatever is drawn lies inside the plot, above the labels at its foot, and no paper is less than 0 wide', () => {
    const extents = fc.record({
      along: fc.double({ min: 0.1, max: 1e4, noNaN: true }),
      lowest: fc.double({ min: 0.5, max: 500, noNaN: true }),
      more: fc.double({ min: 0, max: 500, noNaN: true }),
      row: fc.double({ min: 0.05, max: 5, noNaN: true }),
      stitch: fc.double({ min: 0.05, max: 5, noNaN: true }),
    });
    const side = fc.integer({ min: 250, max: 1600 });
    fc.assert(
      fc.property(extents, side, side, ({ more, ...rest }, width, height) => {
        const extent = { ...rest, highest: rest.lowest + more };
        const { x, y } = frameOf(extent, insets, width, height);
        expect(x[0]).toBe(0);
        expect(x[1]).toBeGreaterThanOrEqual(extent.along * (1 - 1e-9));
        expect(y[0]).toBeGreaterThanOrEqual(0);
        expect(y[0]).toBeLessThanOrEqual(extent.lowest);
        expect(y[1]).toBeGreaterThanOrEqual(extent.highest * (1 - 1e-9));
      }),
    );
  });
});

describe('what the sizes reach', () => {
  const rows = workPiece(sleeve(70, 40, 90));

  test('a sleeve of 91 rounds at 2 to the cm and 10 at 2.5 is 49.5 cm long, from 34 stitches of rib, 17 cm, to 50 cm', () => {
    const spec = specOf([sizeOf('m', rows)], { which: 'width' });
    const extent = extentOf(drawnSizes(spec), spec);
    expect(extent.along).toBeCloseTo(49.5, 9);
    expect(extent.lowest).toBeCloseTo(17, 9);
    expect(extent.highest).toBeCloseTo(50, 9);
    expect(extent.stitch).toBeCloseTo(1 / moss.stitches, 12);
  });

  test('a taper shaped on its first row reaches to where its straight line starts', () => {
    const increase = workPiece({
      name: 'Gusset',
      worked: 'flat',
      start: 14,
      stretches: [{ kind: 'taper', fabric: moss, to: 28, over: 7, perRow: 2, every: 1, before: 0, after: 0 }],
    });
    const spec = specOf([sizeOf('m', increase)], { which: 'taper' });
    expect(extentOf(drawnSizes(spec), spec).lowest).toBeCloseTo(10, 9);
  });
});

describe('the height that suits a plot', () => {
  const spec = specOf([sizeOf('m', workPiece(sleeve(70, 40, 90)))], { which: 'width' });

  test('fills the canvas to scale: at that height the piece is as long as the plot is wide', () => {
    const { x } = frameOf(
      extentOf(drawnSizes(spec), spec),
      insetsFor(spec, 600, 12, 2),
      600,
      heightFor(spec, 600),
    );
    expect(x[1] / 49.5).toBeLessThan(1.15);
  });

  test('never leaves the screen, and never is too low to read', () => {
    for (const width of [280, 600, 1280]) {
      for (const rows of [
        rowsOf([20]),
        rowsOf(Array<number>(5000).fill(20)),
        workPiece(sleeve(400, 40, 200)),
      ]) {
        const height = heightFor(specOf([sizeOf('m', rows)], { which: 'width' }), width);
        expect(height).toBeGreaterThanOrEqual(220);
        expect(height).toBeLessThanOrEqual(640);
      }
    }
  });
});
