import type { PieceWriter } from '../piece-writer';
import type { StretchBySize } from './stretch';

/** "Work 48 (50, 52) rows even."; "Work 16 rows in k2, p2 rib." where its label says the stitch. */
export function evenLines(writer: PieceWriter, stretch: StretchBySize): void {
  const rows = stretch.sizes.map(({ counts }) => counts.length - stretch.done || null);
  writer.even(stretch.name, rows, stretch.done > 0 ? 'more ' : '', stitchOf(writer, stretch));
}

/** "K2, p2 rib", "2 x 2 rib", "twisted rib", "cuff in rib"; a heading that only says "Rib" says it all. */
const rib =
  /(?<![\p{L}\p{N}])(?:(?:[kp] ?\d+,? *)+|\d+ *[x×] *\d+ +|twisted +|(?<=in +))rib(?:bing)?(?!\p{L})/iu;
const anyRib = /\brib/iu;
const plainStitch = /^(?:stockinette|stocking|garter)(?: stitch)?$/iu;

/**
 * The stitch that a stretch of a knitted piece is called, where it is a rib and its swatch is of another fabric; and a
 * plain stitch that is all of its label, so that the rows after a rib say that it has ended. '' elsewhere.
 */
function stitchOf({ craft }: PieceWriter, { label, swatch }: StretchBySize): string {
  if (craft !== 'knitting' || (swatch && anyRib.test(`${swatch.label} ${swatch.worked}`))) return '';
  return (rib.exec(label) ?? plainStitch.exec(label.trim()))?.[0].toLowerCase() ?? '';
}
