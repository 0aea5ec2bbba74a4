export { countLine } from './count-line';
export { recountPiece } from './piece';
export type { Said } from './said';
