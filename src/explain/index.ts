export { inText } from './in-text';
export type { WorkingSource } from './source';
export { workingOf } from './working-of';
export type { Result } from './result';
export type { Heading, Step, TextRun } from './step';
export type { Working, WorkingLine } from './working';
export { workFormula } from './expression';
export { syntaxOf, type Syntax } from './syntax';
export { Work } from './work';
