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
export { gradingInWords, gradingTable, gradingTitle, type Graded, type GradingSpec } from './grading';
export { gradingGraph, offsGraph, offsTable, type Graph, type GraphSpec } from './graph-spec';
export { legendFor, overlaysIn } from './legend';
export { orderLabels, orderOf, ordersBeside } from './orders';
export { sizeStyle, type SizeStyle } from './palette';
export type { RangePlot, RangePointing, RangeSpec, RangedSize } from './range-plot';
export { goesInSteps } from './stairs';
export { tableFor } from './table';
export { themes, type Theme, type ThemeName } from './theme';
export { headingFor, overlaidInWords, titleFor } from './title';
