export type { Interval } from './intervals';
export { wrongSearch } from './search';
export { solve as workBack, type SolveRequest as WorkBack, type Solved as WorkedBack } from './solve';
export { tidyWithin } from './tidy-within';
export { triesByTrials, type Looked, type TriesByTrials } from './tries-by-trials';
