/* Parts of the room that are fetched when they are first wanted. */
export const loadMeasureQuestions = () => import('./measure-questions');
export const loadNotebookFile = () => import('./file');
export const loadPieceStart = () => import('./piece-start');
