/* Parts of the room that are fetched when they are first wanted. */
export const loadCellUncertainty = () => import('./CellUncertainty.svelte');
export const loadGiveOrTake = () => import('./GiveOrTake.svelte');
