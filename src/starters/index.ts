import type { Notebook } from '../notebook';
import { jacket } from './jacket';

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
      'Nine women’s sizes from two swatches: the back in a patterned fabric, the sleeve worked down to its cuff.',
    make: jacket,
  },
];

export { jacket };
