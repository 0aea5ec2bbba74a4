/* Parts of the room that are fetched when they are first wanted. */
export const loadGraph = () => import('./graph');
export const loadGraphOnPaper = () => import('./graph-printed');
export const loadPlot = () => import('./plot');
export const loadPlotOnPaper = () => import('./printed');
export const loadRangePlot = () => import('./range-plot');
export const loadRangePlotOnPaper = () => import('./range-printed');
