import { capital } from '../../format';
import type { PerSize, StatedMultiple } from './types';

/** So many sizes are told one by one; of more it is said how many there are. */
const mostSizes = 3;

/**
 * What is wrong where a pattern says other counts than its lines come to; undefined where they agree. Where only a few
 * sizes differ it is taken for a misprint of a number.
 *
 * @param stated by size, as the pattern says; @param counts by size, as they were followed up to there
 * @param sentence one size's difference: "the line comes to 40, and the pattern says 42"
 */
export function countsApart(
  sizes: readonly string[],
  stated: PerSize,
  counts: PerSize,
  sentence: (stated: number, count: number) => string,
): string | undefined {
  const wrong = sizes.flatMap((size, at) => {
    const [says, count] = [stated[at] ?? null, counts[at] ?? null];
    return says === null || count === null || says === count ? [] : [{ size, says, count }];
  });
  if (wrong.length === 0) return undefined;
  const first = wrong
    .slice(0, mostSizes)
    .map(({ size, says, count }) => `in size ${size} ${sentence(says, count)}`);
  const left = wrong.length - mostSizes;
  const more = left > 0 ? `; and so in ${left} more ${left === 1 ? 'size' : 'sizes'}` : '';
  const few = wrong.length <= Math.max(1, Math.floor(sizes.length / 3));
  const off = Math.max(...wrong.map(({ says, count }) => Math.abs(says - count)));
  return `${capital(first.join('; '))}${more}. ${
    few
      ? `The other sizes agree, so ${off === 1 ? 'a number here or above is off by one: it' : 'one number here or above'} is probably a misprint. Correct it`
      : 'Correct the count, or the line'
  }; from here it goes on with the pattern’s count.`;
}

/** More stitches, or more rows, than any piece has. */
export const mostOfAny = 10_000;

/**
 * Which numbers cannot be counts, since they are no whole numbers or out of reach: "In size S it is 0." Undefined where
 * all can be.
 */
export function noCounts(sizes: readonly string[], counts: PerSize, least: 0 | 1): string | undefined {
  const wrong = sizes.flatMap((size, at) => {
    const count = counts[at] ?? null;
    return count === null || canBeCount(count, least) ? [] : [`in size ${size} it is ${count}`];
  });
  if (wrong.length === 0) return undefined;
  const left = wrong.length - mostSizes;
  return `${capital(wrong.slice(0, mostSizes).join('; '))}${left > 0 ? `; and ${left} more are wrong` : ''}.`;
}

export function canBeCount(count: number, least: 0 | 1): boolean {
  return Number.isInteger(count) && count >= least && count <= mostOfAny;
}

/**
 * In which sizes a line takes more stitches than there are; undefined where it does so in none.
 *
 * @param before by size, before the line; @param after as the line comes to
 */
export function tooFew(sizes: readonly string[], before: PerSize, after: PerSize): string | undefined {
  const wrong = sizes.flatMap((size, at) => {
    const [had, has] = [before[at] ?? null, after[at] ?? null];
    return had === null || has === null || has > 0
      ? []
      : [`in size ${size} ${had} are there, and it would leave ${String(has).replace('-', '−')}`];
  });
  if (wrong.length === 0) return undefined;
  const left = wrong.length - mostSizes;
  const more = left > 0 ? `; and so in ${left} more ${left === 1 ? 'size' : 'sizes'}` : '';
  return `This takes more stitches than there are: ${wrong.slice(0, mostSizes).join('; ')}${more}. Correct the count, or the line.`;
}

/**
 * Which counts are not what a stated multiple allows, each with the nearest that are; undefined where all are.
 *
 * @example noMultiple(['S', 'M'], [75, 84], { multiple: 8, plus: 3, place })
 * // 'Not a multiple of 8 plus 3: 84 in size M (83 or 91 would be). Correct the count or the multiple.'
 */
export function noMultiple(
  sizes: readonly string[],
  counts: PerSize,
  { multiple, plus }: StatedMultiple,
): string | undefined {
  const wrong = sizes.flatMap((size, at) => {
    const count = counts[at] ?? null;
    return count === null || (count - plus) % multiple === 0 ? [] : [{ size, count }];
  });
  if (wrong.length === 0) return undefined;
  const first = wrong.slice(0, mostSizes).map(({ size, count }) => {
    const below = Math.floor((count - plus) / multiple) * multiple + plus;
    return `${count} in size ${size} (${below} or ${below + multiple} would be)`;
  });
  return `Not a multiple of ${multiple}${plus === 0 ? '' : ` plus ${plus}`}: ${first.join('; ')}. Correct the count or the multiple.`;
}
