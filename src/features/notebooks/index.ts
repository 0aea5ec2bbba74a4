export { default as LeaveUnsaved } from './LeaveUnsaved.svelte';
export { Ahead } from './ahead';
export { Keeper } from './keeper.svelte';
export type { Opening } from './opening';
export type { Started } from './start';
