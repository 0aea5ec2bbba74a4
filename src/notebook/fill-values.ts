import { chartPoint, charts, type BodyMeasure, type ChartPoint } from '../craft';
import { cellById, type Entry, type Notebook, type Size } from './document';
import type { Edit } from './edits';
import { inputsOf } from './kinds';

/** What a formula gives in a size, where the page knows it. */
export type Worked = (size: string) => number | undefined;

/**
 * The value that stands in an entry for a size: the size's own, the one for every size, or the chart's. null where
 * nothing is given, where the chart has no such size, or where a formula works it out.
 *
 * @example givenIn({ each: { s: 22, m: 24 } }, { id: 'm', label: 'M' }) // 24
 */
export function givenIn(entry: Entry, size: Size): number | null {
  if ('value' in entry) return entry.value;
  if ('each' in entry) return entry.each[size.id] ?? null;
  if ('formula' in entry) return null;
  const own = entry.own?.[size.id];
  if (own !== undefined) return own;
  return size.chart && charts[size.chart.name].sizes.includes(size.chart.size)
    ? chartPoint(size.chart.name, size.chart.size, entry.chart, entry.point)
    : null;
}

/**
 * An entry with a value for each size of the notebook. One value for all sizes is repeated, a chart gives its values,
 * and a formula what `worked` knows of it.
 *
 * @example perSize(notebook, { value: 4 }) // { each: { s: 4, m: 4 } } in a notebook of sizes s and m
 */
export function perSize(notebook: Notebook, entry: Entry, worked?: Worked): Entry {
  const valueOf = (size: Size): number | null =>
    'formula' in entry ? (worked?.(size.id) ?? null) : givenIn(entry, size);
  return { each: Object.fromEntries(notebook.sizes.map((size) => [size.id, valueOf(size)])) };
}

/**
 * An entry with one value for every size: the one it has for `size`.
 *
 * @example forAll(notebook, { each: { s: 22, m: 24 } }, 'm') // { value: 24 }
 */
export function forAll(notebook: Notebook, entry: Entry, size: string, worked?: Worked): Entry {
  if ('value' in entry) return entry;
  const found = notebook.sizes.find((candidate) => candidate.id === size);
  if ('formula' in entry) return { value: worked?.(size) ?? null };
  return { value: found ? givenIn(entry, found) : null };
}

/**
 * An entry whose value for one size is filled into other sizes. A measure that follows a chart keeps following it, with
 * the value as those sizes' own. An empty value fills nothing, a formula is left, and one value for every size stays.
 *
 * @example filled({ each: { s: 22, m: 24, l: 26 } }, m, [l]) // { each: { s: 22, m: 24, l: 24 } }
 */
export function filled(entry: Entry, from: Size, to: readonly Size[]): Entry {
  const value = givenIn(entry, from);
  if (value === null || 'value' in entry || 'formula' in entry) return entry;
  const others = to.filter((size) => size.id !== from.id && givenIn(entry, size) !== value);
  if (others.length === 0) return entry;
  const values = Object.fromEntries(others.map((size) => [size.id, value]));
  if ('each' in entry) return { each: { ...entry.each, ...values } };
  return { ...entry, own: { ...entry.own, ...values } };
}

/**
 * An entry that follows a measure of the body charts. Values of a size's own stay where it followed that measure
 * before, at another point of its range.
 */
export function onChart(entry: Entry, chart: BodyMeasure, point: ChartPoint): Entry {
  return 'chart' in entry && entry.chart === chart ? { ...entry, point } : { chart, point };
}

/** The sizes that stand after one in the notebook. */
export function sizesAfter(notebook: Notebook, size: string): readonly Size[] {
  const at = notebook.sizes.findIndex((candidate) => candidate.id === size);
  return at < 0 ? [] : notebook.sizes.slice(at + 1);
}

/** The edit that puts a changed entry in an input; undefined where the entry stays as it is, or is gone. */
export function entering(
  notebook: Notebook,
  ref: { readonly cell: string; readonly key: string },
  change: (entry: Entry) => Entry,
): Extract<Edit, { do: 'enter' }> | undefined {
  const cell = cellById(notebook, ref.cell);
  const entry = cell && inputsOf(cell).find((input) => input.key === ref.key)?.entry;
  if (!entry) return undefined;
  const next = change(entry);
  return next === entry ? undefined : { do: 'enter', cell: ref.cell, key: ref.key, entry: next };
}

/**
 * The edit that fills the values of some inputs along sizes: on each line the value of `from` goes into the sizes
 * `to`. undefined where there is nothing to fill, or every value is there already.
 */
export function fillValues(
  notebook: Notebook,
  refs: readonly { readonly cell: string; readonly key: string }[],
  from: Size,
  to: readonly Size[],
): Edit | undefined {
  const edits = refs.flatMap((ref) => entering(notebook, ref, (entry) => filled(entry, from, to)) ?? []);
  if (edits.length === 0) return undefined;
  const lines = edits.length === 1 ? 'a value' : `${edits.length} lines`;
  return { do: 'several', edits, what: `filling ${lines} along the sizes` };
}
