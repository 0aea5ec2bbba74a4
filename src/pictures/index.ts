/*
 * Rows in, pictures out. What is exported here is light and may be imported at once. The plots themselves bring
 * Chart.js with them: load them when they are wanted, with `const { drawPlot } = await import('./charts/plot')`.
 */
export type { Overlay, Plot, PlotSpec, Plotted, PlotTable, Which, WorkedSize } from './charts/types';
export { heightFor } from './charts/frame';
export { gradingInWords, gradingTable, gradingTitle, type Graded, type GradingSpec } from './charts/grading';
export { gradingGraph, offsGraph, offsTable, type Graph, type GraphSpec } from './charts/graph-spec';
export { legendFor, overlaysIn } from './charts/legend';
export { ordersBeside } from './charts/orders';
export { sizeStyle } from './charts/palette';
export type { RangePlot, RangeSpec } from './charts/range-plot';
export { goesInSteps } from './charts/stairs';
export { tableFor } from './charts/table';
export { headingFor, overlaidInWords, titleFor } from './charts/title';
