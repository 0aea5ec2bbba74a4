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
      'Nine women’s sizes from three swatches: back and fronts in a patterned fabric, sleeves down to their cuffs, bands, yarn and joins.',
    make: jacket,
  },
];

export { jacket };
