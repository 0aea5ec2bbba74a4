import { describe, expect, test } from 'vitest';
import { workPiece } from '../../../src/craft';
import { drawingOf, arrange, plottedOf } from '../../../src/pictures/charts/drawing';
import { heightFor } from '../../../src/pictures/charts/frame';
import { overlaysIn } from '../../../src/pictures/charts/legend';
import { tableFor } from '../../../src/pictures/charts/table';
import { overlaidInWords } from '../../../src/pictures/charts/title';
import type { Overlay } from '../../../src/pictures/charts/types';
import { rowsOf, sizeOf, sleeve, specOf } from './pieces';

const m = sizeOf('m', rowsOf([28, 28, 26, 26]));
const l = sizeOf('l', rowsOf([30, 30, 28, 28]));
const before: Overlay = {
  id: 'before',
  label: 'before the change',
  kind: 'before',
  sizes: [
    sizeOf('m', rowsOf([32, 30, 28])),
    sizeOf('l', rowsOf([30, 30, 28, 28])),
    sizeOf('xl', rowsOf([9])),
  ],
};
const whatIf = (id: string, count: number): Overlay => ({
  id,
  label: `${count} stitches`,
  kind: 'what-if',
  sizes: [sizeOf('m', rowsOf([count, count])), sizeOf('l', rowsOf([count, count]))],
});

function lines(more: Parameters<typeof specOf>[1]) {
  const drawing = drawingOf(specOf([m, l], more));
  return plottedOf(drawing, arrange(drawing, 600, 400, 12)).lines.map(({ id, kind, overlay, points }) => ({
    line: [id, kind, ...(overlay ? [overlay] : [])].join(' '),
    counts: [...new Set(points.map(({ y }) => y))],
  }));
}

describe('what lies over a plot', () => {
  test('before a change: a line for each size that is not the same any more, under the others', () => {
    expect(lines({ overlays: [before] })).toEqual([
      { line: 'm before before', counts: [32, 30, 28] },
      { line: 'm worked', counts: [28, 26] },
      { line: 'l worked', counts: [30, 28] },
    ]);
  });

  test('of a what-if: the highlighted size alone, or all where none is', () => {
    const overlays = [whatIf('a', 20), whatIf('b', 22)];
    const drawn = (highlighted: string | null) =>
      lines({ overlays, highlighted }).flatMap(({ line }) => (line.includes('what-if') ? [line] : []));
    expect(drawn('m')).toEqual(['m what-if a', 'm what-if b']);
    expect(drawn(null)).toEqual(['m what-if a', 'l what-if a', 'm what-if b', 'l what-if b']);
  });

  test('is in the legend, every what-if with a letter and dashes of its own', () => {
    const legend = overlaysIn(
      specOf([m, l], { overlays: [before, whatIf('a', 20), whatIf('b', 22)], highlighted: 'm' }),
    );
    expect(legend.map(({ label, letter, sizes }) => [label, letter, ...sizes])).toEqual([
      ['before the change', '', 'M'],
      ['20 stitches', 'A', 'M'],
      ['22 stitches', 'B', 'M'],
    ]);
    expect(legend[1]!.dash).not.toEqual(legend[2]!.dash);
  });

  test('has its columns in the table, whose rows part where it changes too', () => {
    const { headings, rows } = tableFor(specOf([m, l], { overlays: [before] }));
    expect(headings).toEqual(['Row', 'M', 'L', 'M, before the change']);
    expect(rows).toEqual([
      ['1', '28', '30', '32'],
      ['2', '28', '30', '30'],
      ['3', '26', '28', '28'],
      ['4', '26', '28', '–'],
    ]);
  });

  test('is said in a sentence', () => {
    expect(
      overlaidInWords(specOf([m, l], { overlays: [before, whatIf('a', 20)], highlighted: 'm' })),
    ).toEqual([
      'M, before the change: from 32 sts (22.9 cm) down to 28 sts (20.0 cm) over 3 rows.',
      'M, 20 stitches: 20 sts (14.3 cm) throughout, over 2 rows.',
    ]);
    expect(overlaidInWords(specOf([m, l], { overlays: [before] }))).toEqual([
      'Another line before the change: M.',
    ]);
    expect(overlaidInWords(specOf([m, l]))).toEqual([]);
  });

  test('stays on the paper, and leaves the plot as high as it was', () => {
    const spec = specOf([m], { which: 'width', overlays: [whatIf('a', 90)] });
    const drawing = drawingOf(spec);
    const { frame } = arrange(drawing, 600, 400, 12);
    expect(frame.y[1]).toBeGreaterThan(90 / 1.4);
    expect(heightFor(spec, 600)).toBe(heightFor({ ...spec, overlays: [] }, 600));
  });
});

describe('a taper', () => {
  const plan = sleeve(70, 40, 90);
  const sizes = [sizeOf('m', workPiece(plan)), sizeOf('l', workPiece(sleeve(76, 42, 93)))];
  const taper = (all: boolean) =>
    drawingOf(specOf(sizes, { which: 'taper', highlighted: 'm', stretches: plan.stretches, all }));

  test('shows the highlighted size alone, or every size with its straight line', () => {
    const of = (all: boolean) => taper(all).lines.map(({ size, kind }) => `${size.id} ${kind}`);
    expect(of(false)).toEqual(['m straight', 'm worked']);
    expect(of(true).sort()).toEqual(['l straight', 'l worked', 'm straight', 'm worked']);
  });
});
