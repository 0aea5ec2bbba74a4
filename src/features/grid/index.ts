export { default as NotebookGrid } from './NotebookGrid.svelte';
export { default as Welcome } from './Welcome.svelte';
export { unitOf } from './copying';
export { default as Drawing } from './side-panel/Drawing.svelte';
