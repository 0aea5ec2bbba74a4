import { bySize } from '../../format';
import { offsOf, tapersIn } from './ideal-line';
import {
  figure,
  lengthFigure,
  lengthInWords,
  rowsInWords,
  rowWord,
  stitchesInWords,
  unitWord,
} from './in-words';
import { overlaidSizes } from './overlays';
import { acrossOf, aloneIn, drawnSizes, isWorked } from './series';
import type { Row } from '../../craft';
import type { PlotSpec, WorkedSize } from './types';

type Worked = WorkedSize & { readonly rows: readonly Row[] };

/**
 * One sentence (or two) that says what a picture shows and what there is to see in it: for the text beside the
 * picture and for those who cannot see it. With a size highlighted it speaks of that size, otherwise of all.
 *
 * @example
 * titleFor(spec) // 'Sleeve: from 76 sts (54.3 cm) down to 38 sts (27.1 cm) over 92 rounds, size M.'
 */
export function titleFor(spec: PlotSpec): string {
  const wanted = spec.sizes.find(({ id }) => id === spec.highlighted);
  if (wanted && isWorked(wanted)) return `${spec.name}: ${gistOf(wanted, spec)}, size ${wanted.label}.`;

  const worked = spec.sizes.filter(isWorked);
  const [only, ...others] = worked;
  if (!only) {
    const reason = (wanted ?? spec.sizes[0])?.problem;
    return `${spec.name}: no rows to draw yet.${reason ? ` ${reason}` : ''}`;
  }
  const gist = others.length === 0 ? `${gistOf(only, spec)}, size ${only.label}` : gistOfAll(spec, worked);
  const missing = wanted
    ? ` Size ${wanted.label} cannot be drawn: ${wanted.problem ?? 'it has no rows yet.'}`
    : '';
  return `${spec.name}: ${gist}.${missing}`;
}

/**
 * What a picture shows, as its heading.
 *
 * @example
 * headingFor(spec) // 'Sleeve: taper, size M'
 */
export function headingFor(spec: PlotSpec): string {
  const alone = aloneIn(spec);
  const word = rowWord(spec.sizes.find(isWorked)?.rows ?? []);
  const what = { taper: 'taper', width: `width by ${word}`, stitches: `stitches by ${word}` }[spec.which];
  return `${spec.name}: ${what}${alone ? `, size ${alone.label}` : ''}`;
}

/**
 * What lies over a plot, a sentence for each overlay that is drawn: of the highlighted size where it is among them,
 * else of the sizes it differs in.
 *
 * @example
 * overlaidInWords(spec) // ['M, before the change: from 74 sts (52.9 cm) down to 38 sts (27.1 cm) over 92 rounds.']
 */
export function overlaidInWords(spec: PlotSpec): string[] {
  const overlaid = overlaidSizes(spec, drawnSizes(spec));
  return (spec.overlays ?? []).flatMap((overlay) => {
    const lines = overlaid.filter((size) => size.overlay === overlay);
    if (lines.length === 0) return [];
    const size = lines.find(({ id }) => id === spec.highlighted);
    if (size) {
      const own = spec.sizes.find(({ id }) => id === size.id)?.rows;
      const gist =
        spec.which === 'taper' && own && sameEnds(own, size.rows) ? taperGist(size.rows, spec) : [];
      return [`${size.label}, ${overlay.label}: ${gist.join(', ') || gistOf(size, spec)}.`];
    }
    return [`Another line ${overlay.label}: ${lines.map(({ label }) => label).join(', ')}.`];
  });
}

/** Whether two pieces go from the same to the same: then only what is between needs saying. */
function sameEnds(a: readonly Row[], b: readonly Row[]): boolean {
  return a.length === b.length && startOf(a) === startOf(b) && a.at(-1)!.width === b.at(-1)!.width;
}

function gistOf({ rows }: Pick<Worked, 'rows'>, spec: PlotSpec): string {
  const first = rows[0]!;
  const last = rows.at(-1)!;
  const start: Row = { ...first, count: startOf(rows), width: startOf(rows) / first.fabric.stitches };
  const of = (row: Row) => acrossOf(row, spec.which);
  const message = ({ count, width }: Row) => {
    const both = [stitchesInWords(count), lengthInWords(width, spec)];
    if (spec.which === 'width') both.reverse();
    return `${both[0]} (${both[1]})`;
  };
  const rowInWords = (row: Row) => `${rowWord(rows)} ${row.number}`;
  const over = `over ${rowsInWords(rows)}`;
  const { lowest, highest } = extremes(rows, of);
  const parts: string[] = [];
  if (of(lowest) === of(start) && of(highest) === of(start)) {
    parts.push(`${message(last)} throughout, ${over}`);
  } else {
    const way = wayBetween(of(last) - of(start));
    parts.push(`from ${message(start)} ${way} ${message(last)} ${over}`);
    if (of(highest) > Math.max(of(start), of(last)))
      parts.push(`at most ${message(highest)} in ${rowInWords(highest)}`);
    if (of(lowest) < Math.min(of(start), of(last)))
      parts.push(`at least ${message(lowest)} in ${rowInWords(lowest)}`);
  }
  if (spec.which === 'taper') parts.push(...taperGist(rows, spec));
  return parts.join(', ');
}

function startOf(rows: readonly Row[]): number {
  return rows[0]!.count - rows[0]!.change;
}

function wayBetween(difference: number): string {
  return difference < 0 ? 'down to' : difference > 0 ? 'up to' : 'and back to';
}

function extremes(rows: readonly Row[], of: (row: Row) => number): { lowest: Row; highest: Row } {
  let lowest = rows[0]!;
  let highest = lowest;
  for (const row of rows) {
    if (of(row) < of(lowest)) lowest = row;
    if (of(row) > of(highest)) highest = row;
  }
  return { lowest, highest };
}

function taperGist(rows: readonly Row[], spec: PlotSpec): string[] {
  const tapers = tapersIn(rows, spec.stretches);
  if (tapers.length === 0) return [];
  const shaped = tapers.reduce((sum, taper) => sum + taper.shaped.length, 0);
  let most = 0;
  let width = 0;
  for (const taper of tapers) {
    const furthest = offsOf(rows, taper).reduce((max, off) => Math.max(max, Math.abs(off)), 0);
    const cm = furthest / rows[taper.first]!.fabric.stitches;
    if (cm > width) [most, width] = [furthest, cm];
  }
  const shapingRows = `${shaped} shaping ${rowWord(rows)}${shaped === 1 ? '' : 's'}`;
  return [
    `${shapingRows}, at most ${figure(most, 1, spec.decimal)} sts (${lengthInWords(width, spec)}) off the straight line`,
  ];
}

function gistOfAll(spec: PlotSpec, worked: readonly Worked[]): string {
  const inWidth = spec.which === 'width';
  const unit = inWidth ? unitWord(spec.unit) : 'sts';
  const start = (rows: readonly Row[]) =>
    inWidth ? startOf(rows) / rows[0]!.fabric.stitches : startOf(rows);
  const end = (rows: readonly Row[]) => acrossOf(rows.at(-1)!, inWidth ? 'width' : 'stitches');
  const across = (value: number) => (inWidth ? lengthFigure(value, spec) : String(value));
  const each = (message: (rows: readonly Row[]) => string) =>
    bySize(spec.sizes.map((size) => (isWorked(size) ? message(size.rows) : '–')));

  const ways = new Set(worked.map(({ rows }) => wayBetween(end(rows) - start(rows))));
  const even = worked.every(({ rows }) =>
    rows.every((row) => acrossOf(row, inWidth ? 'width' : 'stitches') === start(rows)),
  );
  const over = `over ${each((rows) => String(rows.length))} ${rowWord(worked[0]!.rows)}s`;
  const sizes = `sizes ${bySize(spec.sizes.map((size) => size.label))}`;
  const from = each((rows) => across(start(rows)));
  if (even) return `${from} ${unit} throughout, ${over}, ${sizes}`;
  const way = ways.size === 1 ? [...ways][0] : 'to';
  return `from ${from} ${way} ${each((rows) => across(end(rows)))} ${unit} ${over}, ${sizes}`;
}
