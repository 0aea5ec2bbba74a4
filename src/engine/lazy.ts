/* The engine, for the worker: large, and loaded after the first cells are readable. */
export { WorkedSheet } from './sheet';
export { Trials } from './trials';
export { inTurn } from './trials-in-turn';
