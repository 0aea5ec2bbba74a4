export { default as LineLegend } from './LineLegend.svelte';
export { default as Numbers } from './Numbers.svelte';
export { default as PlotSheet } from './PlotSheet.svelte';
export { default as RowPlot } from './RowPlot.svelte';
export { default as SavePicture } from './SavePicture.svelte';
export { moveByKey } from './move-by-key';
export { schematicOf } from './schematic-spec';
