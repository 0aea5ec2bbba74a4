export { patternOf } from './pattern-of';
export type * from './pattern-document';
export type { PatternSource } from './source';
export { slotsOf, wrongTemplate } from './sentence';
export { inTerms, inUk, type Terms } from './terms';
