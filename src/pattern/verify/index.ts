export { countLine } from './count-line';
export { verifyPiece, type VerifiedPiece } from './piece';
export { glossaryOf } from './glossary';
export { readPart, type PartRead } from './read-part';
export { sentenceReaders } from './sentence-readers';
export type * from './printed';
export type { Fact, Statement, Unread } from './statement';
export type { SideStatement } from './side-statements';
