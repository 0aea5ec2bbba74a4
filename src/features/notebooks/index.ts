export { default as LeaveUnsaved } from './LeaveUnsaved.svelte';
export { Ahead } from './ahead';
export { Keeper } from './keeper.svelte';
export { opening, type Opening } from './opening';
export type { Started } from './start';
export { answerOrExample } from './waiting';
export { openFile } from './open-file';
