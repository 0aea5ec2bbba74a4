/* Parts of the room that are fetched when they are first wanted. */
export const loadLineWorking = () => import('./LineWorking.svelte');
