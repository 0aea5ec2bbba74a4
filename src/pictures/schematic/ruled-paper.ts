import { everyFor } from '../charts';
import { px } from './markup';
import type { Outline } from './outline';
import type { Scale } from './outline-path';

/** The lines of the paper as two paths: fine ones, and every tenth. */
export interface RuledPaper {
  readonly fine: string;
  readonly tenth: string;
}

/** What part of the paper is ruled, in cm. */
export interface Sheet {
  readonly left: number;
  readonly right: number;
}

/**
 * Paper ruled at whole rows and whole stitches, each fabric's stretch in its own ratio of stitch to row, from the left
 * edge of its first row. Lines that would stand closer than `least` px are thinned out, both ways alike, so that a
 * cell keeps the proportions of a stitch.
 */
export function ruledPaper(
  outline: Outline,
  sheet: Sheet,
  scale: Scale,
  pxPerCm: number,
  least = 4,
): RuledPaper {
  const { rows, edges, left } = outline;
  let fine = '';
  let tenth = '';
  const across = (y: number): string => `M${px(scale.x(sheet.left))} ${px(y)}H${px(scale.x(sheet.right))}`;
  for (let first = 0; first < rows.length;) {
    const { fabric } = rows[first]!;
    let end = first + 1;
    while (end < rows.length && sameGauges(rows[end]!.fabric, fabric)) end++;
    const stitch = 1 / fabric.stitches;
    const row = (edges[end]! - edges[first]!) / (end - first);
    const every = Math.max(everyFor(stitch * pxPerCm, least), everyFor(row * pxPerCm, least));
    const heavy = 10 ** (Math.floor(Math.log10(every) + 1e-9) + 1);
    for (let k = Math.ceil((first + 1) / every) * every; k <= end; k += every) {
      const line = across(scale.y(edges[k]!));
      if (k % heavy === 0) tenth += line;
      else fine += line;
    }
    const [top, bottom] = [scale.y(edges[first]!), scale.y(edges[end]!)];
    const from = Math.ceil((sheet.left - left[first]!) / stitch / every - 1e-9) * every;
    for (let k = from; left[first]! + k * stitch <= sheet.right + 1e-9; k += every) {
      const line = `M${px(scale.x(left[first]! + k * stitch))} ${px(top)}V${px(bottom)}`;
      if (k % heavy === 0) tenth += line;
      else fine += line;
    }
    first = end;
  }
  return { fine, tenth };
}

function sameGauges(a: { stitches: number; rows: number; heights?: number[] }, b: typeof a): boolean {
  if (a === b) return true;
  return a.stitches === b.stitches && a.rows === b.rows && a.heights?.join() === b.heights?.join();
}
