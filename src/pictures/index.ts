/*
 * Rows in, pictures out. What is exported here is light and may be imported at once. The plots themselves bring
 * Chart.js with them: load them when they are wanted, with `const { drawPlot } = await import('../pictures/plot')`.
 */
export type {
  LegendEntry,
  Overlay,
  OverlayEntry,
  Plot,
  PlotSpec,
  Plotted,
  PlotTable,
  Shown,
  Which,
  WorkedSize,
} from './types';
export { heightFor } from './frame';
export { legendFor, overlaysIn } from './legend';
export { sizeStyle, type SizeStyle } from './palette';
export { tableFor } from './table';
export { themes, type Theme, type ThemeName } from './theme';
export { overlaidInWords, titleFor } from './title';
