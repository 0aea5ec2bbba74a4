import type { Notebook } from '../notebook';
import { blank } from './blank';
import { hatCrown } from './hat-crown';
import { jacket } from './jacket';
import { singleSleeve } from './single-sleeve';

export interface Starter {
  readonly label: string;
  readonly about: string;
  make(): Notebook;
}

/** Notebooks to begin with. */
export const starters: readonly Starter[] = [
  {
    label: 'Jacket with dropped shoulders',
    about:
      'Nine women’s sizes from three swatches: back and fronts in a patterned fabric, sleeves down to their cuffs, bands, yarn and joins.',
    make: jacket,
  },
  {
    label: 'One sleeve',
    about:
      'A sleeve worked flat from its cuff up, in a size M and in one of your own: type your measurements over those that stand there.',
    make: singleSleeve,
  },
  {
    label: 'Hat crown',
    about:
      'A hat knit in the round, smaller than the head by its negative ease, whose crown closes in eight wedges.',
    make: hatCrown,
  },
  {
    label: 'Blank',
    about: 'One size and an empty section: begin with a swatch of your own.',
    make: blank,
  },
];

export { blank, hatCrown, jacket, singleSleeve };
