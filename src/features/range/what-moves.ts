import type { Change } from '../../notebook';
import { trialNumber, type CellRef, type TrialsWatch, type WorkTrials } from '../../engine';

/** So many values are tried: a result that is the same at all of them is taken not to move. */
const mostTried = 9;

/**
 * Of some results, those that an input moves: whose number is not the same, in some size, at some values spread over its
 * range. That a cell hangs on another is not enough, since rows do not move with the stitches of the same swatch.
 *
 * @param values the steps of the range, in order
 */
export async function whatMoves<Result extends CellRef>(
  work: WorkTrials,
  input: Pick<Change, 'cell' | 'key' | 'size'>,
  values: readonly number[],
  results: readonly Result[],
  sizes: readonly string[],
  watch: TrialsWatch = {},
): Promise<Result[]> {
  const tried = spread(values);
  const { cell, key, size } = input;
  const trials = tried.map((value) => [{ cell, key, size, value }]);
  const wanted = results.map((result): CellRef => ({ cell: result.cell, key: result.key }));
  const given = await work({ trials, wanted, sizes }, watch);
  return results.filter((_result, at) =>
    sizes.some((_size, of) => {
      const numbers = tried.flatMap((_value, trial) => trialNumber(given, trial, of, at) ?? []);
      return numbers.some((number) => number !== numbers[0]);
    }),
  );
}

/** A few of many values, from the first to the last. */
function spread(values: readonly number[]): number[] {
  if (values.length <= mostTried) return [...values];
  const apart = (values.length - 1) / (mostTried - 1);
  return Array.from({ length: mostTried }, (_, at) => values[Math.round(at * apart)]!);
}
