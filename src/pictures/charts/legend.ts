import { overlaidSizes, overlayLegend } from './overlays';
import { sizeStyle } from './palette';
import { drawnSizes } from './series';
import type { ThemeName } from './theme';
import type { LegendEntry, OverlayEntry, PlotSpec, WorkedSize } from './types';

/**
 * What the page writes beside a picture: each size with its colour, line and mark, whether it is drawn or not.
 *
 * @example
 * legendFor([{ id: 'm', label: 'M', rows: null, problem: 'The cuff is missing.' }], 'light', null)[0]?.problem
 * // 'The cuff is missing.'
 */
export function legendFor(
  sizes: readonly WorkedSize[],
  theme: ThemeName,
  highlighted: string | null,
): LegendEntry[] {
  return sizes.map(({ id, label, rows, problem: error }, sizeIndex) => ({
    id,
    label,
    ...sizeStyle(sizeIndex, theme),
    highlighted: id === highlighted,
    problem: drawable(rows) ? null : (error ?? 'This size has no rows yet.'),
  }));
}

function drawable(rows: WorkedSize['rows']): boolean {
  return rows !== null && rows.length > 0;
}

/** What the page writes of what lies over a plot: the overlays that are drawn, with their letters and dashes. */
export function overlaysIn(spec: PlotSpec): OverlayEntry[] {
  return overlayLegend(overlaidSizes(spec, drawnSizes(spec)));
}
