import type { CheckCell, Size } from './document';

/** What the sheet worked for a check in a size: its value where it is looked at across sizes, else yes or no. */
export interface CheckWorked {
  valueOf(size: string): number | string | undefined;
  truthOf(size: string): boolean | undefined;
}

/**
 * Whether a check holds in a size; undefined where that cannot be told, because something is not worked there.
 *
 * A plain check holds where its condition is true. One across sizes compares its value with that of the size before it
 * in the notebook, whatever charts the two follow: it has to be another ('differ'), more ('grow') or no more than 1
 * away from it ('steady': of a difference from what is wanted, in steps that the repeats allow), and in the first
 * size, which has none before it, it holds. With 'meet' it holds where its value is 0. With 'no child' it holds in a size of a grown-up's chart, and in a child's
 * or a baby's where the value is 0; of a size that follows no chart nobody but the person can tell whose it is.
 *
 * @param at the place of the size in `sizes`, from 0
 * @example
 * // a cuff of 40, 40 and 44 stitches in S, M and L, which has to differ from size to size
 * checkHolds(cell, sizes, 1, worked) // false: M has the count of S
 */
export function checkHolds(
  cell: Pick<CheckCell, 'across'>,
  sizes: readonly Size[],
  at: number,
  worked: CheckWorked,
): boolean | undefined {
  const size = sizes[at];
  if (!size) return undefined;
  if (!cell.across) return worked.truthOf(size.id);
  const value = worked.valueOf(size.id);
  if (value === undefined) return undefined;
  if (cell.across === 'no child') return holdsForChild(size, value);
  if (cell.across === 'meet') return typeof value === 'number' ? same(value, 0) : undefined;
  const before = sizes[at - 1];
  if (!before) return true;
  const earlier = worked.valueOf(before.id);
  if (earlier === undefined) return undefined;
  if (cell.across === 'differ') return !same(value, earlier);
  if (typeof value !== 'number' || typeof earlier !== 'number') return undefined;
  if (cell.across === 'steady') return Math.abs(value - earlier) <= 1 || same(Math.abs(value - earlier), 1);
  return value > earlier && !same(value, earlier);
}

/** Whether a size is a child's by the chart it follows; undefined where it follows none. */
export function isChilds({ chart }: Size): boolean | undefined {
  return chart && (chart.name === 'child' || chart.name === 'baby');
}

function holdsForChild(size: Size, value: number | string): boolean | undefined {
  if (value === 0) return true;
  const childs = isChilds(size);
  return childs === undefined ? undefined : !childs;
}

/** What arithmetic on fractions leaves behind is no difference. */
function same(one: number | string, another: number | string): boolean {
  if (typeof one === 'string' || typeof another === 'string') return one === another;
  return Math.abs(one - another) <= 1e-9 * Math.max(1, Math.abs(one), Math.abs(another));
}
