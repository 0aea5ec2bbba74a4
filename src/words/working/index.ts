export { inText } from './in-text';
export type { WorkingSource } from './source';
export { workingOf } from './working-of';
export type { Heading, Part, Result, Step, Working, WorkingLine } from './working';
