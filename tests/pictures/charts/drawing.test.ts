import { describe, expect, test } from 'vitest';
import { workPiece } from '../../../src/craft';
import { drawingOf, arrange, plottedOf } from '../../../src/pictures/charts/drawing';
import { rowsOf, sizeOf, sleeve, specOf } from './pieces';

const plan = sleeve(70, 40, 90);
const m = sizeOf('m', workPiece(plan));
const l = sizeOf('l', workPiece(sleeve(76, 42, 93)));

describe('what is drawn', () => {
  test('a line for each size, the highlighted one last, on top', () => {
    const { lines } = drawingOf(specOf([m, l], { highlighted: 'm' }));
    expect(lines.map(({ size, kind }) => [size.id, kind])).toEqual([
      ['l', 'worked'],
      ['m', 'worked'],
    ]);
  });

  test('in a taper the straight line lies under the steps, which start and end on it', () => {
    const { lines } = drawingOf(
      specOf([m, l], { which: 'taper', highlighted: 'm', stretches: plan.stretches }),
    );
    expect(lines.map(({ kind }) => kind)).toEqual(['straight', 'worked']);
    const [straight, worked] = lines.map(({ points }) => points);
    expect(straight![0]).toEqual(worked![0]);
    expect(worked).toContainEqual(straight![1]);
  });

  test('nothing at all, where no size can be worked, on blank paper', () => {
    const drawing = drawingOf(specOf([sizeOf('m', null, 'The cuff is missing.')]));
    expect(drawing.lines).toEqual([]);
    const laid = arrange(drawing, 320, 240, 12);
    expect([laid.left, laid.bottom, laid.top, laid.right]).toEqual([[], [], [], []]);
    expect(plottedOf(drawing, laid)).toEqual({ lines: [], toScale: true, stretched: 1, ruledFor: null });
  });

  test('nine sizes of 10 000 rows that all differ, in few enough corners to be drawn at once', () => {
    const sizes = Array.from({ length: 9 }, (_, i) =>
      sizeOf(`s${i}`, rowsOf(Array.from({ length: 10_000 }, (_, row) => 100 + 10 * i + (row % 2)))),
    );
    for (const { points } of drawingOf(specOf(sizes)).lines) expect(points.length).toBeLessThanOrEqual(1700);
  });
});

describe('what stands along the sides', () => {
  const laid = (width: number, more: Parameters<typeof specOf>[1]) =>
    arrange(drawingOf(specOf([m], more)), width, 400, 12);

  test('lengths at the foot and the left, rounds above and stitches at the right, for a plot of widths', () => {
    const { captions, right, top } = laid(640, { which: 'width' });
    expect(captions).toEqual({
      left: 'cm around',
      top: 'rounds',
      right: 'sts, moss stitch',
      bottom: 'cm along',
    });
    expect(top.length).toBeGreaterThan(3);
    expect(right.length).toBeGreaterThan(3);
  });

  test('the stitches at the right give way on a narrow screen', () => {
    expect(laid(320, { which: 'width' })).toMatchObject({ right: [], captions: { right: '' } });
  });

  test('rounds at the foot and stitches at the left, and nothing else, for a plot of stitches', () => {
    expect(laid(640, { which: 'stitches' })).toMatchObject({
      top: [],
      right: [],
      captions: { left: 'stitches', bottom: 'rounds' },
    });
  });

  test('says for which size the rounds are counted where they are not equally far along in all', () => {
    const both = (a: typeof m, b: typeof m) =>
      arrange(drawingOf(specOf([a, b], { which: 'width', highlighted: b.id })), 640, 400, 12).captions.top;
    expect(both(m, l)).toBe('rounds, size L');
    const other = sizeOf('l', workPiece(sleeve(76, 46, 90)));
    expect(both(m, other)).toBe('rounds');
  });

  test('says that and how a plot is not to scale', () => {
    const band = [80, 160].map((count) => sizeOf(`s${count}`, rowsOf(Array<number>(8).fill(count))));
    const drawing = drawingOf(specOf(band, { which: 'width' }));
    const { frame, captions } = arrange(drawing, 640, 400, 12);
    expect(frame.stretched).toBeGreaterThan(1);
    expect(captions.bottom).toBe(`cm along; rows drawn ${frame.stretched} times as high`);
  });

  test('a piece of one row has a line, and its row marked', () => {
    const drawing = drawingOf(specOf([sizeOf('m', rowsOf([20]))], { which: 'taper' }));
    expect(drawing.lines.map(({ points }) => points.length)).toEqual([2]);
    expect(arrange(drawing, 320, 240, 12).top).toEqual([{ value: 0.5, label: '1' }]);
  });
});
