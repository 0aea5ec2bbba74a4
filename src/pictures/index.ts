/*
 * Rows in, pictures out. What is exported here is light and may be imported at once. The plots themselves bring
 * Chart.js with them: load them when they are wanted, with `const { drawPlot } = await import('../pictures/plot')`.
 */
export type { Overlay, Plot, PlotSpec, Plotted, PlotTable, Which, WorkedSize } from './types';
export { heightFor } from './frame';
export { gradingInWords, gradingTable, gradingTitle, type Graded, type GradingSpec } from './grading';
export { gradingGraph, offsGraph, offsTable, type Graph, type GraphSpec } from './graph-spec';
export { legendFor, overlaysIn } from './legend';
export { ordersBeside } from './orders';
export { sizeStyle } from './palette';
export type { RangePlot, RangeSpec } from './range-plot';
export { goesInSteps } from './stairs';
export { tableFor } from './table';
export { headingFor, overlaidInWords, titleFor } from './title';
