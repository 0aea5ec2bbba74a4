import { chartRange, withinLimits } from '../../craft';
import {
  allCells,
  type Cell,
  type Entry,
  type Notebook,
  type Settings,
  type Size,
  type Input,
  inputsOf,
  outputsOf,
} from '../../notebook';
import { length, mass, sameUnit } from '../../formulas';
import type { CellRef } from '../../engine';

/** Something measured, which may be a little other than it was read. Each is independent of all the others. */
export interface Source {
  readonly id: string;
  /** "Body fabric, stitch gauge" */
  readonly label: string;
  readonly kind: 'gauge' | 'tape' | 'scale';
  /** Where its value stands: it is moved there. */
  readonly ref: CellRef;
  /** Its standard uncertainty, where that does not come from the sheet. */
  readonly u?: number;
  /** The sizes in which it is the middle or an end of a chart's range: what it is called there, and its uncertainty. */
  readonly inChart?: Readonly<Record<string, { readonly label: string; readonly u: number }>>;
  /** Of a gauge: the places of its standard uncertainty and degrees of freedom, and of what was read. */
  readonly gauge?: {
    readonly u?: CellRef;
    readonly dof?: CellRef;
    readonly readings: readonly { readonly count: CellRef; readonly over: CellRef }[];
    readonly counted: 'stitches' | 'rows';
  };
}

/**
 * A tape is read to within half a centimetre either way, and scales to within half a gram: common practice, and our
 * choice where the notebook does not say otherwise. Any value in between is as likely.
 */
export const usualReading = { tapeWithin: 0.5, scaleWithin: 0.5 };

/** The standard uncertainty of one length read from the tape, cm. */
export function tapeUncertainty(settings: Settings): number {
  return withinLimits(settings.tapeWithin ?? usualReading.tapeWithin);
}

/** The standard uncertainty of one weighing, grams. */
function scaleUncertainty(settings: Settings): number {
  return withinLimits(settings.scaleWithin ?? usualReading.scaleWithin);
}

/**
 * The standard uncertainty, in cm, of a body measurement taken from a chart that prints a range: any body in the range
 * is of that size, so that is how far the wearer may be from its middle, however finely the chart's own bodies were
 * measured. From an end of the range, she may be anywhere to the other end. Undefined where the chart prints one
 * number: of that no more is known than of a reading.
 *
 * @example
 * chartUncertainty({ chart: 'bust', point: 'middle' }, { name: 'woman', size: 'M' }) // 1.466, of 36 to 38 in
 *
 * Source: JCGM 100:2008 (GUM), 4.3.7: a rectangle of half-width a has a standard uncertainty of a/√3.
 */
export function chartUncertainty(
  { chart, point }: Pick<Extract<Entry, { chart: unknown }>, 'chart' | 'point'>,
  of: NonNullable<Size['chart']>,
): number | undefined {
  const { low, high } = chartRange(of.name, of.size, chart);
  if (high <= low) return undefined;
  return withinLimits(point === 'middle' ? (high - low) / 2 : high - low);
}

/** What was measured in a notebook: the gauges of its swatches, lengths from the tape and the chart, weights. */
export function sourcesOf(notebook: Notebook): Source[] {
  return allCells(notebook).flatMap((cell) => [
    ...gaugesOf(cell),
    ...measuredIn(cell).flatMap((input) => measured(cell, input, notebook)),
  ]);
}

/** Whether a measure holds a length that is measured, and not one that was chosen. */
function isMeasured(cell: Cell): boolean {
  return cell.kind === 'measure' && !cell.chosen;
}

function gaugesOf(cell: Cell): Source[] {
  if (cell.kind !== 'swatch') return [];
  const outputs = outputsOf(cell);
  return (['sts', 'rows'] as const).flatMap((counted): Source[] => {
    const readings = cell[counted === 'sts' ? 'stitches' : 'rows'];
    const refTo = (key: string): CellRef => ({ cell: cell.id, key });
    const label = (key: string): string =>
      `${cell.label}, ${outputs.find((output) => output.key === key)?.label.toLowerCase() ?? key}`;
    const made = (key: string, gauge: Source['gauge']): Source => ({
      id: `${cell.id} ${key}`,
      label: label(key),
      kind: 'gauge',
      ref: refTo(key),
      gauge: gauge!,
    });
    const counts = counted === 'sts' ? 'stitches' : 'rows';
    const read = (key: string) => ({ count: refTo(`${key}.count`), over: refTo(`${key}.over`) });
    const own = made(counted, {
      u: refTo(`${counted}_uncertainty`),
      dof: refTo(`${counted}_freedom`),
      readings: readings.map((_reading, at) => read(`${counted}.${at}`)),
      counted: counts,
    });
    if (!cell.asWorked) return [own];
    const before = made(`${counted}_as_worked`, { readings: [read(`asWorked.${counted}`)], counted: counts });
    return [own, before];
  });
}

/** The inputs of a cell that a tape or scales were read for. Ease, trim and the like are wished, not measured. */
function measuredIn(cell: Cell): Input[] {
  const inputs = inputsOf(cell);
  switch (cell.kind) {
    case 'measure':
      return isMeasured(cell) ? [...inputs] : [];
    case 'ease':
      return inputs.filter(({ key }) => key === 'body');
    case 'swatch':
      return inputs.filter(({ key }) => /^(weighed|pulled|hung)\./.test(key));
    default:
      return [];
  }
}

function measured(cell: Cell, { key, label, unit, entry }: Input, { settings, sizes }: Notebook): Source[] {
  if (unit === 'any' || 'formula' in entry || isEmpty(entry)) return [];
  const kind = sameUnit(unit, length) ? 'tape' : sameUnit(unit, mass) ? 'scale' : undefined;
  if (!kind) return [];
  const u = kind === 'tape' ? tapeUncertainty(settings) : scaleUncertainty(settings);
  const called = cell.kind === 'measure' ? cell.label : `${cell.label}, ${label.toLowerCase()}`;
  const inChart = 'chart' in entry ? chartedIn(entry, sizes, called) : {};
  return [
    {
      id: `${cell.id} ${key}`,
      label: called,
      kind,
      ref: { cell: cell.id, key },
      u,
      ...(Object.keys(inChart).length > 0 ? { inChart } : {}),
    },
  ];
}

/** The sizes in which a measurement comes from a range of a chart: those with a value of their own are measured. */
function chartedIn(
  entry: Extract<Entry, { chart: unknown }>,
  sizes: readonly Size[],
  called: string,
): NonNullable<Source['inChart']> {
  const found = sizes.flatMap(({ id, chart }) => {
    const u = chart && entry.own?.[id] === undefined ? chartUncertainty(entry, chart) : undefined;
    return u === undefined ? [] : [[id, { label: `${called}, the range of its chart`, u }] as const];
  });
  return Object.fromEntries(found);
}

function isEmpty(entry: Entry): boolean {
  if ('value' in entry) return entry.value === null;
  if ('each' in entry) return Object.values(entry.each).every((value) => value === null);
  return false;
}
