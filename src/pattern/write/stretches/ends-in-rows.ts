import type { StretchBySize } from './stretch';

/** Stitches left or added at the ends of rows that are worked even. */
export interface EndsInRows {
  /** More than one: the same stitches at the start of each of so many rows, so at one edge and then at the other. */
  readonly rows: number;
  /** Where among the stretches the last of these rows is: it is the first row of that stretch. */
  readonly last: number;
}

/**
 * The rows that a stretch of stitches left or added is told with, where the row it falls on is worked even in every
 * size; undefined where that row is shaped.
 */
export function endsInRows(stretches: readonly StretchBySize[], at: number): EndsInRows | undefined {
  const first = stretches[at]!;
  const isEven = (sizeIndex: number): boolean => {
    const one = stretches[sizeIndex];
    return (
      one?.swatch === first.swatch &&
      one!.sizes.every(({ stretch, counts }) => stretch.kind === 'even' && counts.length > 0)
    );
  };
  if (!isEven(at + 1)) return undefined;
  let [rows, last] = [1, at + 1];
  while (
    alike(first, stretches[last + 1]) &&
    stretches[last]!.sizes.every(({ counts }) => counts.length === 1) &&
    ['', first.label].includes(stretches[last]!.label) &&
    isEven(last + 2)
  ) {
    rows++;
    last += 2;
  }
  return { rows, last };
}

/** Whether both take the same stitches from the start of a row, or add them there, in every size. */
function alike(one: StretchBySize, other: StretchBySize | undefined): boolean {
  return (
    other?.swatch === one.swatch &&
    other!.label === one.label &&
    one.sizes.every(({ stretch: a }, sizeIndex) => {
      const b = other!.sizes[sizeIndex]!.stretch;
      if (a.kind !== 'leave' && a.kind !== 'add') return false;
      return b.kind === a.kind && a.atStart > 0 && b.atStart === a.atStart && a.atEnd === 0 && b.atEnd === 0;
    })
  );
}
