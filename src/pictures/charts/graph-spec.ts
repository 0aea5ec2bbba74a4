import { easesIn, letterFor, type GradingSpec } from './grading';
import { capital } from '../../format';
import { figure, inUnit, lengthInWords, rowWord, unitWord } from './in-words';
import { offsByRow, orderLabels, orderOf } from './orders';
import { overlaidSizes } from './overlays';
import { sizeStyle, type SizeStyle } from './palette';
import { aloneIn, drawnSizes } from './series';
import { themes } from './theme';
import type { PlotSpec, PlotTable } from './types';

/** A line of a graph: one value for each place along it, null where it has none. */
export interface GraphLine {
  readonly id: string;
  readonly label: string;
  readonly letter: string;
  readonly colour: string;
  readonly dash: readonly number[];
  readonly values: readonly (number | null)[];
  /** Whether a value holds from the place before to its own. */
  readonly stepped?: boolean;
}

/** Everything a graph is drawn from, in the units that it shows. */
export interface GraphSpec {
  readonly along: readonly { readonly value: number; readonly label: string }[];
  readonly captions: { readonly along: string; readonly across: string };
  readonly lines: readonly GraphLine[];
  /** A mark for each place along, on every line. */
  readonly marks?: readonly SizeStyle[];
  /** Pairs of lines whose distance is shaded. */
  readonly between?: readonly (readonly [
    lower: readonly (number | null)[],
    upper: readonly (number | null)[],
  ])[];
  /** Whether the line at 0 is drawn. */
  readonly straight?: boolean;
  readonly reading: (i: number) => { readonly heading: string; readonly lines: readonly string[] };
  readonly theme: 'light' | 'dark';
  readonly decimal: '.' | ',';
}

/** A graph on a canvas. */
export interface Graph {
  update(spec: GraphSpec): void;
  /** Points at a place along it and returns what it says there; `null` stops pointing. */
  pointAt(i: number | null): string | null;
  data(): readonly { readonly id: string; readonly values: readonly (number | null)[] }[];
  close(): void;
}

const dashes: readonly (readonly number[])[] = [[], [8, 3], [2, 3], [8, 3, 2, 3], [14, 4], [5, 2]];

/** The graph of a grading: bodies thin and soft, finished measurements in ink, the marks of the sizes on both. */
export function gradingGraph(spec: GradingSpec): GraphSpec {
  const theme = themes[spec.theme];
  const shown = (values: readonly (number | null)[]) =>
    values.map((value) => (value === null ? null : inUnit(value, spec.unit)));
  const eases = easesIn(spec);
  const turns = { body: 0, finished: 0 };
  return {
    along: spec.sizes.map(({ label }, value) => ({ value, label })),
    captions: { along: 'size', across: unitWord(spec.unit) },
    lines: spec.measures.map(({ id, label, of, values }, index) => ({
      id,
      label,
      letter: letterFor(index),
      colour: of === 'body' ? theme.soft : theme.ink,
      // Bodies begin with dashes, what is made for them with an unbroken line.
      dash: dashes[(turns[of]++ + (of === 'body' ? 1 : 0)) % dashes.length]!,
      values: shown(values),
    })),
    marks: spec.sizes.map((_, index) => sizeStyle(index, spec.theme)),
    between: eases.map(({ body, finished }) => [shown(body.values), shown(finished.values)]),
    reading: (i) => ({
      heading: spec.sizes[i]?.label ?? '',
      lines: [
        ...spec.measures.map(({ label, values, problems: errors }) => {
          const value = values[i] ?? null;
          return `${label}: ${value === null ? (errors?.[i] ?? 'no value yet') : lengthInWords(value, spec)}`;
        }),
        ...eases.flatMap(({ finished, values }) => {
          const value = values[i] ?? null;
          return value === null ? [] : [`Ease of ${finished.label}: ${lengthInWords(value, spec)}`];
        }),
      ],
    }),
    theme: spec.theme,
    decimal: spec.decimal,
  };
}

/**
 * How far the tapers of the highlighted size are off their straight lines, row by row, in stitches, and those of what
 * lies over it: orders whose stairs hardly part to scale part here. Null where no size is shown alone.
 */
export function offsGraph(spec: PlotSpec): GraphSpec | null {
  const own = aloneIn(spec);
  const size = own && drawnSizes(spec)[0];
  if (!own || !size) return null;
  const theme = themes[spec.theme];
  const order = own.plan ? orderOf(own.plan) : null;
  const others = overlaidSizes(spec, [size]).filter(({ overlay }) => overlay.kind === 'what-if');
  const lines: GraphLine[] = [
    ...others.map(({ overlay, rows, letter, dash, style }) => ({
      id: overlay.id,
      label: overlay.label,
      letter,
      colour: style.colour,
      dash,
      values: offsByRow(rows, spec.stretches),
      stepped: true,
    })),
    {
      id: own.id,
      label: `${order ? orderLabels[order] : 'an order of its own in each taper'} (as it is)`,
      letter: '',
      colour: theme.ink,
      dash: [],
      values: offsByRow(own.rows, spec.stretches),
      stepped: true,
    },
  ];
  const word = rowWord(own.rows);
  const long = Math.max(...lines.map(({ values }) => values.length));
  return {
    along: Array.from({ length: long }, (_, i) => ({ value: i + 1, label: String(i + 1) })),
    captions: { along: word, across: 'stitches off the straight line' },
    lines,
    straight: true,
    reading: (i) => ({
      heading: `${capital(word)} ${i + 1}`,
      lines: [...lines].reverse().map(({ label, values }) => {
        const off = values[i] ?? null;
        return `${capital(label)}: ${off === null ? 'no straight line here' : `${figure(off, 1, spec.decimal)} sts`}`;
      }),
    }),
    theme: spec.theme,
    decimal: spec.decimal,
  };
}

/**
 * The same as a table: one row for each row of the piece, a column for each order. Beyond `most` rows it is cut off,
 * and the note says so.
 */
export function offsTable(spec: PlotSpec, most = 400): PlotTable {
  const graph = offsGraph(spec);
  const lines = [...(graph?.lines ?? [])].reverse();
  const along = graph?.along ?? [];
  return {
    caption: `${spec.name}: stitches off the straight line by ${graph?.captions.along ?? 'row'}`,
    headings: [capital(graph?.captions.along ?? 'row'), ...lines.map(({ label }) => capital(label))],
    rows: along.slice(0, most).map(({ label }, i) => [
      label,
      ...lines.map(({ values }) => {
        const off = values[i] ?? null;
        return off === null ? '–' : figure(off, 1, spec.decimal);
      }),
    ]),
    note: along.length > most ? `What follows row ${most} is left out here.` : null,
  };
}
