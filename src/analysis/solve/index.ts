export type { Interval } from './intervals';
export { wrongSearch } from './search';
export { workBack, type WorkBack, type WorkedBack } from './solve';
export { tidyWithin } from './tidy-within';
export { triesByTrials, type Looked, type TriesByTrials } from './tries-by-trials';
