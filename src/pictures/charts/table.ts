import { offsOf, tapersIn } from './ideal-line';
import { capital } from '../../format';
import { figure, lengthFigure, rowWord, unitWord } from './in-words';
import { overlaidSizes, type OverlaidSize } from './overlays';
import { aloneIn, drawnSizes, isWorked } from './series';
import type { Row } from '../../craft';
import type { PlotSpec, PlotTable, WorkedSize } from './types';
import { workedOn } from './worked-on';

/** A run of rows in which nothing changes in any size: the indices of its first and its last. */
type Run = readonly [number, number];

const none = '–';

/**
 * The numbers of a plot as a table. Rows in which nothing changes are one row of the table ("5–11"), so nothing is
 * lost by it; a piece that changes on more than `most` rows is cut off there, and the note says so.
 *
 * A plot of stitches gives the count of each size, a plot of widths the width in the unit shown. A taper of a
 * highlighted size gives its counts and widths, and by how much its rows are off the straight line.
 *
 * @example
 * tableFor(spec).rows[0] // ['1–5', '76', '80']
 */
export function tableFor(spec: PlotSpec, most = 400): PlotTable {
  const taper = aloneIn(spec);
  const overlaid = overlaidSizes(spec, drawnSizes(spec));
  const sizes = [...(taper ? [taper] : spec.sizes), ...overlaid];
  const length = Math.max(0, ...sizes.map((size) => size.rows?.length ?? 0));
  const { runs, left } = runsOf(sizes, length, most);
  const word = rowWord(sizes.find(isWorked)?.rows ?? []);
  const number = (i: number) => String(i + 1);
  const heads = runs.map(([first, last]) =>
    first === last ? number(first) : `${number(first)}–${number(last)}`,
  );
  const own = taper ? taperColumns(spec, taper) : sizeColumns(spec);
  const over = overlaidColumns(spec, overlaid, taper !== null);
  const headings = [...own.headings, ...over.headings];
  const cells = (run: Run) => [...own.cells(run), ...over.cells(run)];
  return {
    caption: `${spec.name}: ${captionOf(spec, taper, word)}`,
    headings: [capital(word), ...headings],
    rows: runs.map((run, i) => [heads[i]!, ...cells(run)]),
    note:
      left === null
        ? null
        : `${capital(word)}s ${left + 1} to ${length} are left out here: too many of them differ to be listed.`,
  };
}

function captionOf(spec: PlotSpec, alone: WorkedSize | null, word: string): string {
  if (alone) return `stitches and width by ${word}, size ${alone.label}`;
  return spec.which === 'stitches' ? `stitches by ${word}` : `width in ${unitWord(spec.unit)} by ${word}`;
}

function runsOf(
  sizes: readonly Pick<WorkedSize, 'rows'>[],
  length: number,
  most: number,
): { runs: Run[]; left: number | null } {
  const runs: Run[] = [];
  let first = 0;
  for (let i = 1; i <= length; i++) {
    if (i < length && !sizes.some(({ rows }) => changes(rows, i))) continue;
    if (runs.length === most) return { runs, left: first };
    runs.push([first, i - 1]);
    first = i;
  }
  return { runs, left: null };
}

function changes(rows: WorkedSize['rows'], i: number): boolean {
  const row = rows?.[i];
  const before = rows?.[i - 1];
  return row?.count !== before?.count || row?.width !== before?.width;
}

interface Columns {
  readonly headings: readonly string[];
  readonly cells: (run: Run) => string[];
}

function sizeColumns(spec: PlotSpec): Columns {
  const value = (row: Row) => (spec.which === 'stitches' ? String(row.count) : lengthFigure(row.width, spec));
  return {
    headings: spec.sizes.map(({ label }) => label),
    cells: ([first]) =>
      spec.sizes.map(({ rows }) => {
        const row = rows?.[first];
        return row ? value(row) : none;
      }),
  };
}

/** A column for each line that lies over the plot. */
function overlaidColumns(spec: PlotSpec, overlaid: readonly OverlaidSize[], counts: boolean): Columns {
  const inStitches = counts || spec.which === 'stitches';
  return {
    headings: overlaid.map(({ label, overlay }) => `${label}, ${overlay.label}`),
    cells: ([first]) =>
      overlaid.map(({ rows }) => {
        const row = rows[first];
        if (!row) return none;
        return inStitches ? String(row.count) : lengthFigure(row.width, spec);
      }),
  };
}

/** What is worked on the rows of a run: something on its first, and from then on nothing. */
function workedIn(size: Pick<WorkedSize, 'rows' | 'plan'>, [first, last]: Run): string {
  const worked = workedOn(size, first);
  if (worked === 'plain' || first === last) return worked;
  return `${worked}, then ${last - first} plain`;
}

function taperColumns(spec: PlotSpec, size: WorkedSize & { readonly rows: readonly Row[] }): Columns {
  const { rows, plan } = size;
  const tapers = tapersIn(rows, spec.stretches).map((taper) => ({ ...taper, offs: offsOf(rows, taper) }));
  const furthest = ([first, last]: Run): number | null => {
    let found: number | null = null;
    for (const taper of tapers) {
      for (let i = Math.max(first, taper.first); i <= Math.min(last, taper.last); i++) {
        const off = taper.offs[i - taper.first]!;
        if (found === null || Math.abs(off) > Math.abs(found)) found = off;
      }
    }
    return found;
  };
  return {
    headings: [
      'Stitches',
      'Change',
      `Width, ${unitWord(spec.unit)}`,
      'Most off the straight line, stitches',
      ...(plan ? ['Worked'] : []),
    ],
    cells: (run) => {
      const row = rows[run[0]]!;
      const off = furthest(run);
      const change = row.change > 0 ? `+${row.change}` : figure(row.change, 0, spec.decimal);
      return [
        String(row.count),
        change,
        lengthFigure(row.width, spec),
        off === null ? none : figure(off, 1, spec.decimal),
        ...(plan ? [workedIn(size, run)] : []),
      ];
    },
  };
}
