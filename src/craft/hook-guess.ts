import { perCm, positive } from './numbers';

/**
 * A guess at the gauge with another hook or other needles, from a swatch: gauge goes as 1 over the hook's size.
 *
 * Only good for a first look: it is marked as a guess, and a swatch takes its place.
 *
 * @param o.perCm the swatch's stitches (or rows) per cm
 * @param o.hook the swatch's hook, mm; @param o.other the other hook, mm
 * @returns stitches (or rows) per cm with the other hook
 * @throws CraftError where one of them is not more than 0
 * @example
 * guessGauge({ perCm: 1.5, hook: 6, other: 7.5 }) // { perCm: 1.2, guess: true }
 *
 * Source: our own rule of thumb; swatch before relying on it.
 */
export function guessGauge(o: { perCm: number; hook: number; other: number }): {
  perCm: number;
  guess: true;
} {
  const gauge = perCm(o.perCm, 'The gauge');
  const ratio = positive(o.hook, 'The hook of the swatch') / positive(o.other, 'The other hook');
  return { perCm: perCm(gauge * ratio, 'The gauge with the other hook'), guess: true };
}
