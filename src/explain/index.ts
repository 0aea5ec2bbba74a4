export { inText } from './in-text';
export type { WorkingSource } from './source';
export { workingOf } from './working-of';
export type { Result } from './result';
export type { Heading, TextRun, Step, Working, WorkingLine } from './working';
