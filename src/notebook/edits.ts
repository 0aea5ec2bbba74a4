import {
  allCells,
  cellById,
  type Cell,
  type Entry,
  type Notebook,
  type Section,
  type Settings,
  type Size,
} from './document';
import { renameIn, sameName } from './formula';
import type { Input } from './kind';
import { inputsOf, kindOf, mapFormulas, outputsOf } from './kinds';
import { wrongValue } from './must';
import { namesOf, wrongName } from './names';

/** One thing a person does to a notebook. */
export type Edit =
  /** Gives an input a value, for one size or (`size: null`) for all. */
  | { do: 'give'; cell: string; key: string; size: string | null; value: number | null }
  /** Puts a whole entry in an input: a formula, a place in a chart, a value for each size. */
  | { do: 'enter'; cell: string; key: string; entry: Entry }
  /** Puts a formula in place of an output's own; `null` gives its own back. */
  | { do: 'take over'; cell: string; key: string; formula: string | null }
  | { do: 'relabel'; cell: string; label: string }
  | { do: 'rename'; cell: string; name: string }
  /** Exchanges a cell for another state of itself: another rule, one more reading, a note's text. */
  | { do: 'change'; cell: Cell }
  | { do: 'add cell'; section: string; at: number; cell: Cell }
  | { do: 'remove cell'; cell: string }
  | { do: 'add size'; at: number; size: Size }
  | { do: 'remove size'; size: string }
  | { do: 'relabel size'; size: string; label: string }
  | { do: 'set'; settings: Partial<Settings> }
  | { do: 'retitle'; title: string };

export type Applied = { readonly notebook: Notebook } | { readonly refused: string };

export const mostSizes = 100;
export const mostCells = 10_000;

/** The notebook after an edit, or why it cannot be made. The notebook before stays as it was. */
export function apply(notebook: Notebook, edit: Edit): Applied {
  switch (edit.do) {
    case 'give':
      return withInput(notebook, edit, (input) => given(notebook, input, edit.size, edit.value));
    case 'enter':
      return withInput(notebook, edit, (input) => entered(input, edit.entry));
    case 'take over':
      return withCell(notebook, edit.cell, (cell) => takenOver(cell, edit.key, edit.formula));
    case 'relabel': {
      const label = edit.label.trim();
      if (!label) return { refused: 'A label cannot be empty: it is what people read.' };
      return withCell(notebook, edit.cell, (cell) => ({ ...cell, label: label.slice(0, 200) }));
    }
    case 'rename':
      return renamed(notebook, edit.cell, edit.name.trim().normalize('NFC'));
    case 'change':
      return changed(notebook, edit.cell);
    case 'add cell':
      return added(notebook, edit.section, edit.at, edit.cell);
    case 'remove cell':
      if (!cellById(notebook, edit.cell)) return gone;
      return inSections(notebook, (cells) =>
        cells.some((cell) => cell.id === edit.cell) ? cells.filter((cell) => cell.id !== edit.cell) : cells,
      );
    case 'add size':
      return sizeAdded(notebook, edit.at, edit.size);
    case 'remove size':
      if (notebook.sizes.length === 1) return { refused: 'A notebook keeps at least one size.' };
      return { notebook: { ...notebook, sizes: notebook.sizes.filter((size) => size.id !== edit.size) } };
    case 'relabel size': {
      const label = edit.label.trim().slice(0, 60);
      if (!label) return { refused: 'A size needs a label, such as M or 38.' };
      const sizes = notebook.sizes.map((size) => (size.id === edit.size ? { ...size, label } : size));
      return { notebook: { ...notebook, sizes } };
    }
    case 'set':
      return { notebook: { ...notebook, settings: { ...notebook.settings, ...edit.settings } } };
    case 'retitle':
      return { notebook: { ...notebook, title: edit.title.trim().slice(0, 200) || 'Untitled' } };
  }
}

const gone: Applied = { refused: 'That cell is no longer in the notebook.' };

function inSections(
  notebook: Notebook,
  change: (cells: readonly Cell[], section: Section) => readonly Cell[],
): Applied {
  const sections = notebook.sections.map((section) => {
    const cells = change(section.cells, section);
    return cells === section.cells ? section : { ...section, cells };
  });
  return { notebook: { ...notebook, sections } };
}

function withCell(
  notebook: Notebook,
  id: string,
  change: (cell: Cell) => Cell | { refused: string },
): Applied {
  const cell = cellById(notebook, id);
  if (!cell) return gone;
  const next = change(cell);
  return 'refused' in next ? next : inSections(notebook, (cells) => replaced(cells, next));
}

function replaced(cells: readonly Cell[], next: Cell): readonly Cell[] {
  const at = cells.findIndex((cell) => cell.id === next.id);
  return at < 0 || cells[at] === next ? cells : cells.with(at, next);
}

function withInput(
  notebook: Notebook,
  { cell: id, key }: { cell: string; key: string },
  change: (input: Input) => Entry | { refused: string },
): Applied {
  return withCell(notebook, id, (cell) => {
    const input = inputsOf(cell).find((candidate) => candidate.key === key);
    if (!input) return { refused: 'That value is no longer in the cell.' };
    const entry = change(input);
    if ('refused' in entry) return entry;
    return kindOf(cell).put(cell, key, entry);
  });
}

function given(
  notebook: Notebook,
  input: Input,
  size: string | null,
  value: number | null,
): Entry | { refused: string } {
  const wrong = value === null ? undefined : wrongValue(input, value);
  if (wrong) return { refused: wrong };
  if (size === null || input.shared) return { value };
  const { entry } = input;
  if ('formula' in entry) {
    return {
      refused:
        'A formula works this out for every size: change the formula, or give one value for all sizes.',
    };
  }
  if ('chart' in entry) {
    const own = { ...entry.own };
    if (value === null) delete own[size];
    else own[size] = value;
    const { own: _before, ...followed } = entry;
    return Object.keys(own).length ? { ...followed, own } : followed;
  }
  if ('each' in entry) return { each: { ...entry.each, [size]: value } };
  return {
    each: { ...Object.fromEntries(notebook.sizes.map(({ id }) => [id, entry.value])), [size]: value },
  };
}

function entered(input: Input, entry: Entry): Entry | { refused: string } {
  const values = 'value' in entry ? [entry.value] : 'each' in entry ? Object.values(entry.each) : [];
  for (const value of values) {
    const wrong = value === null ? undefined : wrongValue(input, value);
    if (wrong) return { refused: wrong };
  }
  return entry;
}

function takenOver(cell: Cell, key: string, formula: string | null): Cell | { refused: string } {
  if (!outputsOf(cell).some((output) => output.key === key))
    return { refused: 'That result is no longer in the cell.' };
  const { taken: before, ...rest } = cell;
  const { [key]: _old, ...others } = before ?? {};
  const taken = formula === null ? others : { ...others, [key]: formula };
  return Object.keys(taken).length ? ({ ...rest, taken } as Cell) : (rest as Cell);
}

function renamed(notebook: Notebook, id: string, name: string): Applied {
  const cell = cellById(notebook, id);
  if (!cell) return gone;
  return changed(notebook, { ...cell, name });
}

/** A cell in another state. Where that changes what it calls things, every formula that uses them follows. */
function changed(notebook: Notebook, next: Cell): Applied {
  const before = cellById(notebook, next.id);
  if (!before) return gone;
  if (before.kind !== next.kind) return { refused: 'A cell keeps its kind; add another cell instead.' };
  const wrong = wrongName(notebook, next);
  if (wrong) return { refused: wrong };
  const now = new Map(namesOf(next).map(({ key, name }) => [key, name]));
  const renames = new Map<string, string>();
  for (const { key, name } of namesOf(before)) {
    const after = now.get(key);
    if (after !== undefined && after !== name) renames.set(sameName(name), after);
  }
  if (renames.size === 0) return inSections(notebook, (cells) => replaced(cells, next));
  return inSections(notebook, (cells) => {
    const followed = replaced(cells, next).map((cell) => following(cell, renames));
    return followed.every((cell, at) => cell === cells[at]) ? cells : followed;
  });
}

/** The cell with renames followed, or the same cell where none concerns it. */
function following(cell: Cell, renames: ReadonlyMap<string, string>): Cell {
  let touched = false;
  const mapped = mapFormulas(cell, (formula) => {
    const after = renameIn(formula, renames);
    touched ||= after !== formula;
    return after;
  });
  return touched ? mapped : cell;
}

function added(notebook: Notebook, sectionId: string, at: number, cell: Cell): Applied {
  if (allCells(notebook).length >= mostCells)
    return { refused: `A notebook has at most ${mostCells} cells.` };
  if (cellById(notebook, cell.id)) return { refused: 'That cell is in the notebook already.' };
  if (!notebook.sections.some((section) => section.id === sectionId))
    return { refused: 'That section is no longer there.' };
  const wrong = wrongName(notebook, cell);
  if (wrong) return { refused: wrong };
  return inSections(notebook, (cells, section) =>
    section.id === sectionId ? cells.toSpliced(at, 0, cell) : cells,
  );
}

function sizeAdded(notebook: Notebook, at: number, size: Size): Applied {
  if (notebook.sizes.length >= mostSizes) return { refused: `A notebook has at most ${mostSizes} sizes.` };
  if (notebook.sizes.some((other) => other.id === size.id))
    return { refused: 'That size is in the notebook already.' };
  return { notebook: { ...notebook, sizes: notebook.sizes.toSpliced(at, 0, size) } };
}

/** What an edit does, as undo and redo call it: "the change to Bust". */
export function describe(notebook: Notebook, edit: Edit): string {
  const label = (id: string): string => cellById(notebook, id)?.label || 'a cell';
  switch (edit.do) {
    case 'give':
    case 'enter':
    case 'take over':
      return `the change to ${label(edit.cell)}`;
    case 'change':
      return `the change to ${label(edit.cell.id)}`;
    case 'relabel':
      return `the new label of ${label(edit.cell)}`;
    case 'rename':
      return `the new name of ${label(edit.cell)}`;
    case 'add cell':
      return `adding ${edit.cell.label}`;
    case 'remove cell':
      return `removing ${label(edit.cell)}`;
    case 'add size':
      return `adding size ${edit.size.label}`;
    case 'remove size':
      return `removing size ${notebook.sizes.find((size) => size.id === edit.size)?.label ?? ''}`.trim();
    case 'relabel size':
      return `the new label of size ${edit.label}`;
    case 'set':
      return 'the change of settings';
    case 'retitle':
      return 'the new title';
  }
}
