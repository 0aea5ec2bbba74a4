export {
  patternOf,
  slotsOf,
  wrongTemplate,
  inTerms,
  inUk,
  linesOf,
  reword,
  sentencesOf,
  plainText,
  markdown,
  html,
  stitchChoices,
} from './write';
export type * from './pattern-document';
export type { PatternSource } from './source';
export { prove, proverOf, type NotProven, type Proof } from './proof';
export { countLine } from './verify';
export { notProven, proofWords } from './proof-words';
export { notebookFrom } from './adapt';
