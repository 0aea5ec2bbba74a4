import type { PrintedEntry, PrintedPicture } from './on-paper';
import { sizeStyle } from './palette';
import { drawRange, wholeRing, type RangeSpec } from './range-plot';
import { themes } from './theme';

export { onPaper } from './on-paper';
export { pngOf } from './save-png';

/** A result over a range as it goes to paper. */
export function rangeOnPaper(title: string, spec: RangeSpec): PrintedPicture {
  const light: RangeSpec = { ...spec, theme: 'light' };
  const theme = themes.light;
  const legend: PrintedEntry[] = light.sizes.map(({ label, sizeIndex }) => {
    return { label, ...sizeStyle(sizeIndex, 'light') };
  });
  if (light.sizes.some(({ whole }) => whole.length > 0)) {
    legend.push({
      label: 'about the mark: whole repeats',
      colour: theme.ink,
      dash: [0, 99],
      mark: wholeRing,
    });
  }
  if (light.now !== null) legend.push({ label: 'as it is now', colour: theme.edge, dash: [4, 3] });
  return {
    title,
    sentences: [],
    legend,
    height: 400,
    draw: (canvas, sheet) => drawRange(canvas, light, { pointed: () => {}, taken: () => {} }, sheet),
  };
}
