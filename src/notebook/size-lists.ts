import { charts, type BodyMeasure, type ChartName } from '../craft';
import { allCells, type Notebook, type Size } from './document';
import type { Edit } from './edits';
import type { Input } from './kind';
import { inputsOf } from './kinds';

/**
 * Sizes of a body chart, in the chart's order. A size of the notebook that follows that size of the chart already is
 * kept as it is, with its id, so that what was given for it stays; the others get an id that is always the same for
 * that size of that chart.
 *
 * @param which the sizes of the chart that are wanted; all of them unless told
 * @example chartSizes(notebook, 'baby', ['6 months'])
 * // [{ id: 'baby-6-months', label: '6 months', chart: { name: 'baby', size: '6 months' } }]
 */
export function chartSizes(notebook: Notebook, chart: ChartName, which?: readonly string[]): Size[] {
  const wanted = charts[chart].sizes.filter((size) => !which || which.includes(size));
  return wanted.map(
    (size) =>
      notebook.sizes.find(({ chart: followed }) => followed?.name === chart && followed.size === size) ?? {
        id: `${chart}-${size.toLowerCase().replaceAll(' ', '-')}`,
        label: size,
        chart: { name: chart, size },
      },
  );
}

/** The sizes of the notebook and, after them, those of `more` that are not among them. */
export function withMoreSizes(notebook: Notebook, more: readonly Size[]): Size[] {
  const there = new Set(notebook.sizes.map((size) => size.id));
  return [...notebook.sizes, ...more.filter((size) => !there.has(size.id))];
}

/**
 * A size that follows no chart, under an id that nothing in the notebook uses: values of a size that was removed stay
 * in the notebook under its id, and would otherwise come back for this one.
 */
export function freshSize(notebook: Notebook, label: string): Size {
  const used = new Set(notebook.sizes.map((size) => size.id));
  for (const { input } of allInputs(notebook)) {
    if ('each' in input.entry) for (const id of Object.keys(input.entry.each)) used.add(id);
    if ('chart' in input.entry) for (const id of Object.keys(input.entry.own ?? {})) used.add(id);
  }
  for (let number = 1; ; number++) {
    const id = `size-${number}`;
    if (!used.has(id)) return { id, label };
  }
}

/** A value that is given for one size and no other. */
export interface OwnValue {
  readonly cell: string;
  readonly key: string;
  readonly label: string;
  readonly input: Input;
  readonly value: number;
}

/** The values that go with a size when it is removed: those given for it alone, not the chart's and not results. */
export function ownValues(notebook: Notebook, size: string): OwnValue[] {
  return allInputs(notebook).flatMap(({ cell, label, input }): OwnValue[] => {
    const { entry } = input;
    const value = 'each' in entry ? entry.each[size] : 'chart' in entry ? entry.own?.[size] : undefined;
    return value === undefined || value === null ? [] : [{ cell, key: input.key, label, input, value }];
  });
}

/** A value that a size without a chart has to be given, and the inputs it goes into. */
export interface Ask {
  readonly label: string;
  /** The body measure of the chart; undefined for a value that is given for each size anyway. */
  readonly measure?: BodyMeasure;
  /** The first of the inputs: its unit and what its value must be. */
  readonly input: Input;
  readonly refs: readonly { readonly cell: string; readonly key: string }[];
}

/**
 * What a person's own measurements have to tell: each body measure that some input follows a chart for, once however
 * many inputs follow it, and then each value that is given size by size.
 */
export function asksOf(notebook: Notebook): Ask[] {
  const charted = new Map<BodyMeasure, Ask>();
  const each: Ask[] = [];
  for (const { cell, label, input } of allInputs(notebook)) {
    const ref = { cell, key: input.key };
    if ('each' in input.entry) each.push({ label, input, refs: [ref] });
    if (!('chart' in input.entry)) continue;
    const measure = input.entry.chart;
    const before = charted.get(measure);
    charted.set(
      measure,
      before
        ? { ...before, label: `${before.label}; ${label}`, refs: [...before.refs, ref] }
        : { label, measure, input, refs: [ref] },
    );
  }
  return [...charted.values(), ...each];
}

/** The edits that give a size what was told for it; nothing told leaves what stands there. */
export function givingTo(
  size: string,
  answers: readonly { readonly ask: Ask; readonly value: number }[],
): Edit[] {
  return answers.flatMap(({ ask, value }) =>
    ask.refs.map((ref): Edit => ({ do: 'give', ...ref, size, value })),
  );
}

function allInputs(notebook: Notebook): { cell: string; label: string; input: Input }[] {
  return allCells(notebook).flatMap((cell) =>
    inputsOf(cell).map((input) => ({
      cell: cell.id,
      label: input.label === cell.label ? cell.label : `${cell.label}, ${input.label.toLowerCase()}`,
      input,
    })),
  );
}
