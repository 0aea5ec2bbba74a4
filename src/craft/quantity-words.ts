import { formatNumber } from './format';

/**
 * A count and what is counted, as they stand in a sentence: singular where there is one.
 *
 * @example
 * counted(1, 'row')                    // '1 row'
 * counted(3, 'shaping row')            // '3 shaping rows'
 * counted(2, 'stitch', 'stitches')     // '2 stitches'
 */
export function counted(count: number, one: string, several = `${one}s`): string {
  return `${formatNumber(count)} ${count === 1 ? one : several}`;
}

/** A length as it stands in a sentence in plain cm. */
export function formatLength(cm: unknown): string {
  return `${formatNumber(cm)} cm`;
}
