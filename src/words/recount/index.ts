export { countLine } from './count-line';
export { recountPiece } from './piece';
