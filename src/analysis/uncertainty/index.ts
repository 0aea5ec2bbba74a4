export { giveOrTake, type Share, type Uncertainty } from './give-or-take';
export { nextCountChance, nextRoundedChance, roundedIn, targetOf } from './next-count';
export { usualReading } from './sources';
export { worksByTrials } from './works-by-trials';
export type { Works } from './works';
