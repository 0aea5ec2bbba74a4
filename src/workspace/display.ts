import {
  isDimension,
  length,
  mass,
  plain,
  rowGauge,
  rows,
  sameUnit,
  stitchGauge,
  stitches,
  unitSymbol,
  type Unit,
} from '../formulas';
import {
  readCount,
  readGauge,
  readLength,
  readNumber,
  readPercent,
  withoutWord,
  writeGauge,
  writeFineLength,
  writeNumber,
  writePercent,
} from '../format';
import type { Entry, Input, Settings, Size, WrittenAs } from '../notebook';
import type { CellRef, WordedError } from '../engine';
import { chartPoint, charts, cmPerInch } from '../craft';
import type { Workspace } from './workspace.svelte';
import type { ValueLine } from './lines';

/** A stored number as the notebook shows it, without its unit. */
export function showNumber(value: number, unit: Unit, settings: Settings, written?: WrittenAs): string {
  if (!isDimension(unit)) return '';
  const { decimal } = settings;
  if (written === 'percent') return writePercent(value, { decimal });
  if (written === 'metres') return writeNumber(value / yarnUnit(settings).cm, { decimal, decimals: 0 });
  if (sameUnit(unit, length)) return writeFineLength(value, { unit: settings.length, decimal });
  if (isGauge(unit)) return writeGauge(value, settings.gaugeOver, { decimal });
  // Endless degrees of freedom, as the sheet holds them.
  if (sameUnit(unit, plain) && value >= 1e9) return '∞';
  if (isCount(unit) || sameUnit(unit, mass))
    return writeNumber(value, { decimal, decimals: isWhole(value) ? 0 : 1 });
  const lengths = unit.length ?? 0;
  const converted = settings.length === 'in' ? value / cmPerInch ** lengths : value;
  if (lengths >= 2) return writeNumber(converted, { decimal, decimals: 0 });
  return writeNumber(converted, { decimal, decimals: isWhole(converted) ? 0 : 2 });
}

/** A stored number as it stands in an editor: whole, so that leaving it untouched loses nothing. */
export function typeable(value: number, unit: Unit, settings: Settings, written?: WrittenAs): string {
  if (written === 'metres') return trimmed(value / yarnUnit(settings).cm, settings.decimal);
  if (isDimension(unit) && sameUnit(unit, length)) {
    const inUnit = settings.length === 'in' ? value / cmPerInch : value;
    return trimmed(inUnit, settings.decimal);
  }
  if (written === 'percent') return trimmed(value * 100, settings.decimal);
  return trimmed(value, settings.decimal);
}

function trimmed(value: number, decimal: '.' | ','): string {
  return String(Number(value.toPrecision(12))).replace('.', decimal);
}

/** By how much a result moved: "+4", "−1.5". */
export function showDifference(by: number, unit: Unit, settings: Settings): string {
  const shown = showNumber(Math.abs(by), unit, settings);
  return `${by < 0 ? '−' : '+'}${shown}`;
}

/** The unit as it stands once in a row. */
export function symbolFor(unit: Unit, settings: Settings, written?: WrittenAs): string {
  if (written === 'percent') return '%';
  if (written === 'metres') return yarnUnit(settings).symbol;
  if (!isDimension(unit)) return '';
  if (isGauge(unit)) return `${unit.stitch ? 'sts' : 'rows'} / ${settings.gaugeOver}`;
  return unitSymbol(unit, settings.length);
}

/** Yarn is sold by the metre, or by the yard of 36 inches. */
export function yarnUnit(settings: Settings): { cm: number; symbol: string } {
  return settings.length === 'in' ? { cm: 36 * cmPerInch, symbol: 'yd' } : { cm: 100, symbol: 'm' };
}

export function isGauge(unit: Unit): boolean {
  return sameUnit(unit, stitchGauge) || sameUnit(unit, rowGauge);
}

function isCount(unit: Unit): boolean {
  return sameUnit(unit, stitches) || sameUnit(unit, rows);
}

function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) <= 1e-9 * Math.max(1, Math.abs(value));
}

/** The number a person typed for an input, as it is stored; nothing typed is no value yet. */
export function typedNumber(
  typed: string,
  input: Input,
  unit: Unit,
  settings: Settings,
): { value: number | null } | { problem: string } {
  if (typed.trim() === '') return { value: null };
  const { decimal } = settings;
  if (input.written === 'percent') return readPercent(typed, { decimal });
  if (input.written === 'metres') {
    const { cm, symbol } = yarnUnit(settings);
    const word = new RegExp(`\\s*${symbol[0]}(etres?|d|ards?)?\\.?\\s*$`, 'i');
    const read = readNumber(typed.replace(word, ''), { decimal });
    return 'problem' in read ? read : { value: read.value * cm };
  }
  if (sameUnit(unit, length)) return readLength(typed, { unit: settings.length, decimal });
  const { stitch, row } = isDimension(unit) ? unit : {};
  // Rounds are rows.
  if (stitch ? /\d\W*r/i.test(typed) : row && /\d\W*s/i.test(typed))
    return { problem: `${row ? 'Rows' : 'Stitches'} are counted here: type how many.` };
  if (isGauge(unit)) return readGauge(typed, settings.gaugeOver, { decimal });
  if (input.constraint?.whole && isCount(unit))
    return readCount(typed, { decimal, least: input.constraint.least ?? -Infinity });
  // The stitches counted in a swatch need not be whole: half of one counts.
  return readNumber(isCount(unit) ? withoutWord(typed) : typed, { decimal });
}

/** The number at a place: from the results, or, until they arrive, the value that was given. */
export function numberOf(
  workspace: Workspace,
  cell: string,
  line: ValueLine,
  size: string,
): number | undefined {
  const results = workspace.results(cell);
  const worked = results.number(size, cell, line.key);
  if (worked !== undefined || !line.input || results.error(size, cell, line.key)) return worked;
  return givenValue(line.input.entry, workspace.sizes, size);
}

/** What stands at a place of the grid. */
export interface ShownAt {
  readonly value: number | undefined;
  readonly unit: Unit;
  /** Empty where there is nothing yet. */
  readonly text: string;
  /** The same with its unit, which those who see it read once in the line. */
  readonly spoken: string;
  readonly error: WordedError | undefined;
  /** By how much the last edit moved a result, for as long as that is shown. */
  readonly by: string | undefined;
  /** Whether it is a whole number of stitches or rows. */
  readonly count: boolean;
}

export function shownAt(
  workspace: Workspace,
  { cell, line, size }: { cell: string; line: ValueLine; size: string },
): ShownAt {
  const { settings } = workspace;
  const { key, written } = line;
  const results = workspace.results(cell);
  const value = numberOf(workspace, cell, line, size);
  const unit = line.unit === 'any' ? (results.unit(cell, key) ?? {}) : line.unit;
  const text =
    value !== undefined
      ? showNumber(value, unit, settings, written)
      : (yesOrNo(results.truth(size, cell, key)) ??
        ((unit === 'text' && results.text(size, cell, key)) || ''));
  const given = line.input !== undefined && !('formula' in line.input.entry);
  const move = given ? undefined : workspace.calculation.moved({ cell, key, size });
  return {
    value,
    unit,
    text,
    spoken: value === undefined ? text : `${text} ${symbolFor(unit, settings, written)}`.trimEnd(),
    error: results.error(size, cell, key),
    by: move && showDifference(move.after - move.before, unit, settings),
    count:
      isDimension(unit) && ('stitch' in unit || 'row' in unit) && !('length' in unit) && /^\d+$/.test(text),
  };
}

function yesOrNo(truth: boolean | undefined): string | undefined {
  return truth === undefined ? undefined : truth ? 'yes' : 'no';
}

function givenValue(entry: Entry, sizes: readonly Size[], size: string): number | undefined {
  if ('value' in entry) return entry.value ?? undefined;
  if ('each' in entry) return entry.each[size] ?? undefined;
  if (!('chart' in entry)) return undefined;
  if (entry.own?.[size] !== undefined) return entry.own[size];
  const chart = sizes.find((candidate) => candidate.id === size)?.chart;
  return chart && charts[chart.name].sizes.includes(chart.size)
    ? chartPoint(chart.name, chart.size, entry.chart, entry.point)
    : undefined;
}

const people = { woman: 'women’s', man: 'men’s', child: 'children’s', baby: 'babies’' };
const points = { lower: 'lower end', middle: 'middle', upper: 'upper end' };

/** Where the values of an entry come from, where that is not from the person. */
export function fromWhere(entry: Entry, sizes: readonly Size[]): string {
  if (!('chart' in entry)) return '';
  const used = [...new Set(sizes.flatMap((size) => size.chart?.name ?? []))];
  const named = used.map((name) => people[name]).join(' and ') || 'no';
  const ranged = used.some((name) =>
    charts[name].measures[entry.chart].some((printed) => typeof printed !== 'number'),
  );
  return `${named} chart${ranged ? `, ${points[entry.point]}` : ''}`;
}

/** The texts of a place, each once with the sizes it is for. */
export function textsOf(workspace: Workspace, cell: string, key: string): { text: string; sizes: string }[] {
  const results = workspace.results(cell);
  const grouped = new Map<string, string[]>();
  for (const size of workspace.sizes) {
    const text = results.text(size.id, cell, key);
    if (text !== undefined) grouped.set(text, [...(grouped.get(text) ?? []), size.label]);
  }
  return [...grouped].map(([text, sizes]) => ({
    text,
    sizes: sizes.length === workspace.sizes.length ? '' : sizes.join(', '),
  }));
}

export interface ShownError {
  readonly message: string;
  /** The sizes it concerns, where not all. */
  readonly sizes: string;
  readonly from?: CellRef;
}

/** The troubles of a place, each told once with the sizes it concerns. */
export function errorsOf(workspace: Workspace, cell: string, key: string): ShownError[] {
  const results = workspace.results(cell);
  const grouped = new Map<string, { sizes: string[]; from?: CellRef }>();
  for (const size of workspace.sizes) {
    const error = results.error(size.id, cell, key);
    // Where the trouble starts in the same cell, it is told there, a few lines above.
    if (!error || error.from?.cell === cell) continue;
    const same = grouped.get(error.message) ?? { sizes: [], ...(error.from ? { from: error.from } : {}) };
    same.sizes.push(size.label);
    grouped.set(error.message, same);
  }
  return [...grouped].map(([message, { sizes, ...rest }]) => ({
    message,
    sizes: sizes.length === workspace.sizes.length ? '' : sizes.join(', '),
    ...rest,
  }));
}
