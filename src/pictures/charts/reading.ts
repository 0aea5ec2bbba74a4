import { offsOf, tapersIn } from './ideal-line';
import { capital } from '../../format';
import { lengthInWords, rowWord, stitchesInWords } from './in-words';
import { overlaidSizes, type OverlaidSize } from './overlays';
import { drawnSizes, type DrawnSize } from './series';
import type { PlotSpec } from './types';
import { workedOn } from './worked-on';

/** What a plot says about one row of one size. */
export interface RowReading {
  /** The size, and the stretch where it has a label: "M, taper". */
  readonly heading: string;
  /** The row, then what is worked on it, then how far it is from the straight line. */
  readonly lines: readonly string[];
}

/**
 * What a plot says about a row: number, count and width; what it changes; in a taper the distance from the straight
 * line. `i` is the row's index in `size.rows`.
 *
 * @example
 * readingOf(spec, size, 23).lines[0] // 'Row 24: 62 sts, 41.3 cm'
 */
export function readingOf(spec: PlotSpec, size: DrawnSize, i: number): RowReading {
  const row = size.rows[i]!;
  const word = rowWord(size.rows);
  const label = spec.stretches?.[row.stretch]?.label;
  const lines = [
    `${capital(word)} ${row.number}: ${stitchesInWords(row.count)}, ${lengthInWords(row.width, spec)}`,
  ];
  if (size.plan) lines.push(capital(workedOn(size, i)));
  else if (row.change !== 0) {
    const before = row.number === 1 ? 'at the start' : `in ${word} ${row.number - 1}`;
    lines.push(
      `${stitchesInWords(Math.abs(row.change))} ${row.change > 0 ? 'more' : 'fewer'} than ${before}`,
    );
  }
  const off = spec.which === 'taper' ? fromStraight(spec, size, i) : null;
  if (off) lines.push(capital(off));
  for (const over of overlaidSizes(spec, [size])) lines.push(overlaidReading(spec, over, i));
  return { heading: label ? `${size.label}, ${label}` : size.label, lines };
}

/** The reading as one sentence, for a screen reader; null where the size has no such row. */
export function readingInWords(spec: PlotSpec, id: string, row: number): string | null {
  const size = drawnSizes(spec).find((candidate) => candidate.id === id);
  if (!size || !Number.isInteger(row) || row < 1 || row > size.rows.length) return null;
  const { heading, lines } = readingOf(spec, size, row - 1);
  return [heading, ...lines].map((line) => `${line}.`).join(' ');
}

/** What a line over the plot says of the same row. */
function overlaidReading(spec: PlotSpec, size: OverlaidSize, i: number): string {
  const row = size.rows[i];
  const called = capital(size.overlay.label);
  if (!row) return `${called}: no such ${rowWord(size.rows)}`;
  const off = spec.which === 'taper' && size.overlay.kind === 'what-if' ? fromStraight(spec, size, i) : null;
  // Off what, its own line says.
  const message = [
    stitchesInWords(row.count),
    off?.replace(/ than .*/, '') ?? lengthInWords(row.width, spec),
  ];
  return `${called}: ${message.join(', ')}`;
}

function fromStraight(spec: PlotSpec, size: DrawnSize, i: number): string | null {
  const taper = tapersIn(size.rows, spec.stretches).find(({ first, last }) => first <= i && i <= last);
  if (!taper) return null;
  const off = offsOf(size.rows, taper)[i - taper.first]!;
  const distance = Math.abs(off) / size.rows[i]!.fabric.stitches;
  if (Math.abs(off) < 0.05) return 'on the straight line';
  const side = off > 0 ? 'wider' : 'narrower';
  return `${Math.abs(off).toFixed(1).replace('.', spec.decimal)} sts (${lengthInWords(distance, spec)}) ${side} than the straight line`;
}
