import { cellById, type Notebook } from './document';
import type { Edit } from './edits';
import { inputsOf } from './kinds';

export interface ValueRef {
  readonly cell: string;
  readonly key: string;
  /** null where one place stands for every size. */
  readonly size: string | null;
}

/**
 * Takes the given values out of some places. A size's own value where the line follows a chart gives way to the
 * chart's again; results that are worked out, formulas and the chart's own numbers stay.
 *
 * @returns the edit, or undefined where there is nothing given in these places, and how many values it takes out
 */
export function clearValues(
  notebook: Notebook,
  refs: readonly ValueRef[],
): { edit: Edit | undefined; count: number } {
  const edits = refs.flatMap((ref): Edit[] =>
    isGiven(notebook, ref) ? [{ do: 'give', ...ref, value: null }] : [],
  );
  const count = edits.length;
  const what = count === 1 ? 'emptying a value' : `emptying ${count} values`;
  return { edit: count === 0 ? undefined : { do: 'several', edits, what }, count };
}

function isGiven(notebook: Notebook, { cell: id, key, size }: ValueRef): boolean {
  const cell = cellById(notebook, id);
  const entry = cell && inputsOf(cell).find((input) => input.key === key)?.entry;
  if (!entry || 'formula' in entry) return false;
  if ('value' in entry) return entry.value !== null;
  if (size === null) return false;
  if ('each' in entry) return (entry.each[size] ?? null) !== null;
  return entry.own?.[size] !== undefined;
}
