/* Parts of the room that are fetched when they are first wanted. */
export const loadAskedOfMeasures = () => import('./asked-of-measures');
export const loadNotebookFile = () => import('./file');
export const loadPieceStart = () => import('./piece-start');
