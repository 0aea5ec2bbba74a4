/* Parts of the room that are fetched when they are first wanted. */
export const loadGraphFigure = () => import('./GraphFigure.svelte');
export const loadPictures = () => import('./Pictures.svelte');
