import { expect, it } from 'vitest';
import { workPiece } from '../../../src/craft';
import { distinctSizes, sizeStyle } from '../../../src/pictures/charts/palette';
import { silhouetteDrawn } from '../../../src/pictures/schematic';
import { edgeMarks } from '../../../src/pictures/schematic/edge-marks';
import { outlineOf } from '../../../src/pictures/schematic/outline';
import { specOf } from './spec-of';
import { vNeck } from '../../notebooks/v-neck';

it('the marks of twelve sizes stand on the edges of their rows, no two at one height', async () => {
  const spec = await specOf(vNeck());
  const { plan } = spec.pieces.find(({ id }) => id === 'back')!.sizes[0]!;
  const outline = outlineOf(workPiece(plan!), plan!);
  const heights = Array.from({ length: distinctSizes }, (_, sizeIndex) => {
    const marks = edgeMarks(outline, sizeIndex, 4);
    expect(marks.length).toBeGreaterThanOrEqual(2);
    for (const { x, y } of marks) {
      const row = outline.edges.findLastIndex((edge, at) => edge <= y && at < outline.left.length);
      expect([outline.left[row], outline.right[row]]).toContain(x);
    }
    return [...new Set(marks.map(({ y }) => y))];
  }).flat();
  expect(new Set(heights).size).toBe(heights.length);
});

it('the widths by row of all sizes bear the mark of each, in the drawing and in its key', async () => {
  const spec = await specOf(vNeck());
  const { svg } = silhouetteDrawn({ ...spec, pieces: spec.pieces.filter(({ id }) => id === 'back') });
  const stated = spec.sizes.map((_, sizeIndex) => {
    const { mark, colour } = sizeStyle(sizeIndex, 'light');
    return svg.split(/<path /).filter((path) => path.includes(`d="${mark}"`) && path.includes(colour)).length;
  });
  // Two on the edges at least, and one in the key.
  expect(Math.min(...stated)).toBeGreaterThanOrEqual(3);
  expect(silhouetteDrawn({ ...spec, size: 'm' }).svg).not.toContain('size-mark');
});
