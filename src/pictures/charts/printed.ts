import { heightFor } from './frame';
import { legendFor, overlaysIn } from './legend';
import { layoutWidth, type PrintedEntry, type PrintedPicture } from './on-paper';
import { drawPlot } from './plot';
import { sizeStyle } from './palette';
import { themes } from './theme';
import { headingFor, overlaidInWords, titleFor } from './title';
import type { PlotSpec } from './types';

export { onPaper } from './on-paper';
export { pngOf } from './save-png';

/** A plot as it goes to paper. */
export function plotOnPaper(spec: PlotSpec): PrintedPicture {
  const light: PlotSpec = { ...spec, theme: 'light' };
  const drawn = legendFor(spec.sizes, 'light', spec.highlighted);
  const shown = spec.which === 'taper' && !spec.all ? drawn.filter(({ highlighted }) => highlighted) : drawn;
  const missing = drawn.flatMap(({ label, problem: error }) =>
    error ? [`${label} is not drawn: ${error}`] : [],
  );
  return {
    title: headingFor(light),
    sentences: [titleFor(light), ...overlaidInWords(light), ...missing],
    legend: [
      ...shown.filter(({ problem: error }) => !error),
      ...overlaysIn(light).map(({ id, label, letter, dash, sizes, kind }): PrintedEntry => ({
        label: `${label} (${sizes.length === spec.sizes.length && sizes.length > 1 ? 'all sizes' : sizes.join(', ')})`,
        colour: kind === 'before' ? themes.light.edge : colourOf(light, id),
        dash,
        letter,
      })),
    ],
    height: heightFor(light, layoutWidth),
    draw: (canvas, sheet) => drawPlot(canvas, light, sheet),
  };
}

/** The colour of the size that an overlay is drawn for, or of the first of them. */
function colourOf(spec: PlotSpec, overlay: string): string {
  const sizes = spec.overlays?.find(({ id }) => id === overlay)?.sizes ?? [];
  const index = spec.sizes.findIndex(
    ({ id }) =>
      (spec.highlighted === null || id === spec.highlighted) && sizes.some((size) => size.id === id),
  );
  return sizeStyle(Math.max(0, index), 'light').colour;
}
