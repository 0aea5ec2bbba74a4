/* Parts of the room that are fetched when they are first wanted. */
export const loadAdaptedPullover = () => import('./adapted-pullover');
export const loadCardigan = () => import('./cardigan');
