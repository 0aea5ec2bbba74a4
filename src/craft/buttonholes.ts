import { CraftError } from './craft-error';
import { message } from './message';
import { evenParts } from './even-parts';
import { mostRows, wholeCount } from './numbers';

/**
 * Places buttonholes along a band, evenly.
 *
 * `length` is the band's count, in stitches or in rows, whichever runs along it; `width` is what each hole takes of
 * it and `ends` what stays plain before the first hole and after the last. What is left stands between the holes, in
 * gaps that differ by at most one. A single hole stands in the middle of the band.
 *
 * @param o.length stitches (or rows) along the band
 * @param o.ends plain stitches at each end
 * @param o.count holes
 * @param o.width stitches each hole takes
 * @returns `starts`: the first stitch of each hole, counted from 1; `gaps`: the plain stitches between the holes
 * @throws CraftError where a count is not whole, and where the holes do not fit with a stitch between them (saying
 *   how many do)
 * @example
 * buttonholes({ length: 80, ends: 3, count: 5, width: 3 })
 * // { starts: [4, 22, 40, 57, 75], gaps: [15, 15, 14, 15] }
 *
 * Source: common practice.
 */
export function buttonholes(o: { length: number; ends: number; count: number; width: number }): {
  starts: number[];
  gaps: number[];
} {
  const length = wholeCount(o.length, 'The number of stitches along the band', 1);
  const ends = wholeCount(o.ends, 'The number of plain stitches at each end');
  const count = wholeCount(o.count, 'The number of buttonholes', 1);
  const width = wholeCount(o.width, 'The number of stitches a buttonhole takes', 1);
  if (count > mostRows) {
    throw new CraftError(
      'too-many',
      '{count} buttonholes are more than can be laid out; {mostRows} are the most.',
      { count, mostRows },
    );
  }
  const plain = length - 2 * ends - count * width;
  if (plain < count - 1) throw noRoom(length, ends, count, width);
  if (count === 1) return { starts: [ends + Math.floor(plain / 2) + 1], gaps: [] };

  const gaps = evenParts(plain, count - 1);
  const starts = [ends + 1];
  for (const gap of gaps) starts.push(starts.at(-1)! + width + gap);
  return { starts, gaps };
}

function noRoom(length: number, ends: number, count: number, width: number): CraftError {
  const least = 2 * ends + count * width + count - 1;
  const most = Math.floor((length - 2 * ends + 1) / (width + 1));
  const instead =
    most > 0
      ? message('that-many', '{most, plural, one {# buttonhole} other {# buttonholes}} would fit', { most })
      : 'not one would fit: make the ends or the buttonholes smaller';
  return new CraftError(
    'no-room',
    '{count, plural, one {# buttonhole} other {# buttonholes}} of {width} with {ends} at each end {count, plural, one {takes} other {take}} at least {least, plural, one {# stitch} other {# stitches}}, and the band has {length}; {instead}.',
    { width, ends, count, least, length, instead },
  );
}
