export { gaugeFor } from './gauge-for';
export { piecesCalled } from './measured-by';
export { mostCharactersOfAPattern, readPattern } from './read-pattern';
export { taperPlan } from './taper-plan';
export type * from './types';
