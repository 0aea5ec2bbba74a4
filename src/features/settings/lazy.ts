/* Parts of the room that are fetched when they are first wanted. */
export const loadSettings = () => import('./Settings.svelte');
export const loadSizes = () => import('./Sizes.svelte');
