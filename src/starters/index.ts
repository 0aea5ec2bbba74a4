import type { Notebook } from '../notebook';
import { adaptedPullover } from './adapted-pullover';
import { blank } from './blank';
import { cardigan } from './cardigan';
import { hatCrown } from './hat-crown';
import { lessons } from './lessons';
import { singleSleeve } from './single-sleeve';

export interface Starter {
  readonly label: string;
  readonly about: string;
  /** The view it begins in, where that is not the grid. */
  readonly view?: string;
  make(): Notebook;
}

/** Notebooks to begin with. */
export const starters: readonly Starter[] = [
  {
    label: 'Cardigan with a round neck',
    about:
      'Nine women’s sizes from three swatches: back and fronts from the hem, sleeves from the cuff, a neckband and buttoned bands, yarn and checks.',
    make: cardigan,
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
      'A hat knit in the round, smaller than the head by its negative ease, its crown closed in eight wedges: for women, for men and to your own measure.',
    make: hatCrown,
  },
  {
    label: 'A pattern to adapt',
    about:
      'An invented pullover in nine sizes, pasted as it is printed, with a swatch and a body that are none of its sizes: read, doubted, fitted again.',
    view: 'adapt',
    make: adaptedPullover,
  },
  {
    label: 'Three lessons on gauge',
    about:
      'What gauge is, what half a stitch costs round a bust, and why 10 cm is not 4 in: notes, a swatch to put your own counts in, and a class sheet.',
    make: lessons,
  },
  {
    label: 'Blank',
    about: 'One size and an empty section: begin with a swatch of your own.',
    make: blank,
  },
];

export { adaptedPullover, blank, cardigan, hatCrown, lessons, singleSleeve };
