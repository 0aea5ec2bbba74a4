export { inText, lineInText } from './in-text';
export type { Place, WorkingSource } from './source';
export { workingOf, type WorkingRead } from './working-of';
export type { Part, Result, Step, Working, WorkingLine } from './working';
