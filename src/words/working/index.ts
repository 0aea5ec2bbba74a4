export { inText } from './in-text';
export type { WorkingSource } from './source';
export { workingOf } from './working-of';
export type { Step } from './working';
