import { drawGraph } from './graph';
import type { GraphSpec } from './graph-spec';
import type { PrintedPicture } from './on-paper';

export { onPaper } from './on-paper';
export { pngOf } from './save-png';

/** A graph as it goes to paper; `spec` is in the light theme. */
export function graphOnPaper(
  title: string,
  sentences: readonly string[],
  spec: GraphSpec,
  height = 400,
): PrintedPicture {
  return {
    title,
    sentences,
    legend: spec.lines.map(({ label, colour, dash, letter }) => ({ label, colour, dash, letter })),
    height,
    draw: (canvas, sheet) => drawGraph(canvas, spec, sheet),
  };
}
