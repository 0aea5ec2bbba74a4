export { countLine, type CountedLine } from './count-line';
export { readInstruction, type Part } from './instruction';
export { recountPiece, type Following, type Recounted } from './piece';
export { readShaping, type Shaping } from './shaping';
export { forSize } from './size-numbers';
export { workInstruction } from './work-instruction';
