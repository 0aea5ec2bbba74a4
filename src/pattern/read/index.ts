export { gaugeFor } from './gauge-for';
export { mostCharactersOfAPattern, readPattern } from './read-pattern';
export { taperPlan } from './taper-plan';
export type * from './types';
export { sizeListAt } from './size-list-at';
