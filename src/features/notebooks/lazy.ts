/* Parts of the room that are fetched when they are first wanted. */
export const loadNotebooks = () => import('./Notebooks.svelte');
export const loadShare = () => import('./Share.svelte');
export const loadStart = () => import('./start');
export const loadStarters = () => import('./Starters.svelte');
export const loadStates = () => import('./States.svelte');
