/* Parts of the room that are fetched when they are first wanted. */
export const loadOffline = () => import('./offline');
export const loadReplay = () => import('./replay');
export const loadShareAddress = () => import('./share-address');
