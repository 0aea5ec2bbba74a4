import type { Place } from './source';

/** A result, and what it is called. */
export interface Result extends Place {
  readonly label: string;
  /** The results whose number it only takes over. */
  readonly over?: readonly Place[];
}
