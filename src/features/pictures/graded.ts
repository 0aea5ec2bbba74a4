import {
  allCells,
  inputsOf,
  outputsOf,
  type Cell,
  type EaseCell,
  type Measure,
  type Notebook,
} from '../../notebook';
import { isDimension, length, sameUnit } from '../../formulas';
import type { Graded } from '../../pictures';
import type { Workspace } from '../../workspace';

/** A measurement that can be drawn against the sizes, and where it stands in the notebook. */
export interface Gradable {
  readonly id: string;
  readonly label: string;
  readonly of: Graded['of'];
  readonly over?: string;
  readonly cell: string;
  readonly key: string;
  readonly section: string;
}

/**
 * All that is a length in the notebook: measures, finished measurements, formulas, and what pieces and other cells work
 * out. Of a body are measures from a chart, and those an ease is added to.
 */
export function gradables(workspace: Workspace): Gradable[] {
  const bodies = bodiesOf(workspace.notebook);
  return workspace.notebook.sections.flatMap((section) =>
    section.cells.flatMap((cell) =>
      refsOf(cell, workspace).map(({ key, label }): Gradable => {
        const body = cell.kind === 'ease' ? bodyOf(cell, workspace.notebook) : undefined;
        return {
          id: `${cell.id} ${key}`,
          label:
            label === cell.label ? label : `${cell.label}, ${label.charAt(0).toLowerCase()}${label.slice(1)}`,
          of: bodies.has(cell.id) ? 'body' : 'finished',
          ...(body ? { over: `${body.id} value` } : {}),
          cell: cell.id,
          key,
          section: section.label,
        };
      }),
    ),
  );
}

/** What is drawn until something else is chosen: the first body measurement an ease is added to, and what it makes. */
export function usualGradables(all: readonly Gradable[]): string[] {
  const eased = all.find(({ over }) => over !== undefined && all.some(({ id }) => id === over));
  if (eased) return [eased.over!, eased.id];
  const bodies = all.filter(({ of }) => of === 'body');
  return (bodies.length > 0 ? bodies : all.slice(0, 1)).map(({ id }) => id);
}

/** A measurement in every size; a component that reads it follows its cell. */
export function gradedOf(workspace: Workspace, { id, label, of, over, cell, key }: Gradable): Graded {
  const results = workspace.results(cell);
  return {
    id,
    label,
    of,
    over,
    values: workspace.sizes.map((size) => results.number(size.id, cell, key) ?? null),
    problems: workspace.sizes.map((size) => results.error(size.id, cell, key)?.message),
  };
}

function refsOf(cell: Cell, workspace: Workspace): { key: string; label: string }[] {
  if (cell.kind === 'swatch') return [];
  const results = workspace.results(cell.id);
  const isLength = ({ key, unit }: { key: string; unit: unknown }) => {
    const known = results.unit(cell.id, key);
    if (known !== undefined) return isDimension(known) && sameUnit(known, length);
    return typeof unit === 'object' && sameUnit(unit as typeof length, length);
  };
  const inputs = cell.kind === 'measure' || cell.kind === 'formula' ? inputsOf(cell) : [];
  const outputs = outputsOf(cell).filter(({ shown }) => shown !== 'none');
  return [...inputs, ...outputs].filter(isLength);
}

function bodiesOf(notebook: Notebook): Set<string> {
  const cells = allCells(notebook);
  const charted = cells.filter((cell) => cell.kind === 'measure' && 'chart' in cell.entry);
  const eased = cells.flatMap((cell) => (cell.kind === 'ease' ? (bodyOf(cell, notebook) ?? []) : []));
  return new Set([...charted, ...eased].map(({ id }) => id));
}

/** The measure that an ease names as its body. */
function bodyOf({ body }: EaseCell, notebook: Notebook): Measure | undefined {
  if (!('formula' in body)) return undefined;
  const name = body.formula.trim();
  return allCells(notebook).find((cell): cell is Measure => cell.kind === 'measure' && cell.name === name);
}
