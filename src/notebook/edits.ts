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
import { namesOf, withFreeName, wrongName } from './names';

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
  /** A cell after itself, under a free name and with an id of its own. */
  | { do: 'duplicate cell'; cell: string; id: string }
  /** Puts a cell before the one that is `at` in a section, counted with the cell itself taken out. */
  | { do: 'move cell'; cell: string; section: string; at: number }
  | { do: 'add section'; at: number; section: Section }
  | { do: 'remove section'; section: string }
  | { do: 'duplicate section'; section: string; id: string }
  | { do: 'move section'; section: string; at: number }
  | { do: 'relabel section'; section: string; label: string }
  | { do: 'add size'; at: number; size: Size }
  | { do: 'remove size'; size: string }
  | { do: 'relabel size'; size: string; label: string }
  | { do: 'move size'; size: string; at: number }
  /** Exchanges all sizes, as when a whole chart is taken; what was given for sizes that stay, stays. */
  | { do: 'take sizes'; sizes: readonly Size[] }
  | { do: 'set'; settings: Partial<Settings> }
  | { do: 'retitle'; title: string }
  /** Several edits as one, all or none: a pasted block, say. `what` is what undo calls it. */
  | { do: 'several'; edits: readonly Edit[]; what: string };

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
    case 'duplicate cell':
      return duplicated(notebook, edit.cell, edit.id);
    case 'move cell':
      return moved(notebook, edit.cell, edit.section, edit.at);
    case 'add section':
    case 'remove section':
    case 'duplicate section':
    case 'move section':
    case 'relabel section':
      return sectionEdited(notebook, edit);
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
    case 'move size': {
      const sizes = shifted(notebook.sizes, edit.size, edit.at);
      return sizes
        ? { notebook: { ...notebook, sizes } }
        : { refused: 'That size is no longer in the notebook.' };
    }
    case 'take sizes':
      return sizesTaken(notebook, edit.sizes);
    case 'several': {
      let applied: Applied = { notebook };
      for (const one of edit.edits) {
        applied = apply(applied.notebook, one);
        if ('refused' in applied) return applied;
      }
      return applied;
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

function sizesTaken(notebook: Notebook, sizes: readonly Size[]): Applied {
  if (sizes.length === 0) return { refused: 'A notebook keeps at least one size.' };
  if (sizes.length > mostSizes) return { refused: `A notebook has at most ${mostSizes} sizes.` };
  if (new Set(sizes.map((size) => size.id)).size !== sizes.length) {
    return { refused: 'Two of these sizes are the same one.' };
  }
  return { notebook: { ...notebook, sizes } };
}

/** A list with one of its members put elsewhere; undefined where it has no such member. */
function shifted<T extends { readonly id: string }>(
  list: readonly T[],
  id: string,
  at: number,
): T[] | undefined {
  const member = list.find((candidate) => candidate.id === id);
  return member && list.filter((candidate) => candidate !== member).toSpliced(at, 0, member);
}

function moved(notebook: Notebook, id: string, section: string, at: number): Applied {
  const cell = cellById(notebook, id);
  if (!cell) return gone;
  if (!notebook.sections.some((candidate) => candidate.id === section)) {
    return { refused: 'That section is no longer there.' };
  }
  return inSections(notebook, (cells, { id: here }) => {
    const others = cells.includes(cell) ? cells.filter((candidate) => candidate !== cell) : cells;
    return here === section ? others.toSpliced(at, 0, cell) : others;
  });
}

/** A copy of a cell. Where its formulas use its own parts, the copy's use the copy's. */
function copyOf(notebook: Notebook, cell: Cell, id: string): Cell {
  const named = withFreeName(notebook, { ...cell, id, label: `${cell.label}, copy`.slice(0, 200) });
  const now = new Map(namesOf(named).map(({ key, name }) => [key, name]));
  const renames = new Map(namesOf(cell).map(({ key, name }) => [sameName(name), now.get(key) ?? name]));
  return mapFormulas(named, (formula) => renameIn(formula, renames));
}

function duplicated(notebook: Notebook, id: string, newId: string): Applied {
  const cell = cellById(notebook, id);
  const section = notebook.sections.find(({ cells }) => cells.some((candidate) => candidate.id === id));
  if (!cell || !section) return gone;
  return added(notebook, section.id, section.cells.indexOf(cell) + 1, copyOf(notebook, cell, newId));
}

type SectionEdit = Extract<Edit, { section: unknown }> & { do: `${string} section` };

function sectionEdited(notebook: Notebook, edit: SectionEdit): Applied {
  const { sections } = notebook;
  if (edit.do === 'add section') {
    if (sections.some(({ id }) => id === edit.section.id))
      return { refused: 'That section is in the notebook already.' };
    return { notebook: { ...notebook, sections: sections.toSpliced(edit.at, 0, edit.section) } };
  }
  const section = sections.find(({ id }) => id === edit.section);
  if (!section) return { refused: 'That section is no longer there.' };
  switch (edit.do) {
    case 'remove section':
      return { notebook: { ...notebook, sections: sections.filter((other) => other !== section) } };
    case 'move section':
      return { notebook: { ...notebook, sections: shifted(sections, section.id, edit.at) ?? sections } };
    case 'relabel section': {
      const label = edit.label.trim().slice(0, 200);
      if (!label) return { refused: 'A section needs a label, such as Sleeve.' };
      return {
        notebook: { ...notebook, sections: sections.with(sections.indexOf(section), { ...section, label }) },
      };
    }
    case 'duplicate section':
      return sectionDuplicated(notebook, section, edit.id);
  }
}

/** A copy of a section whose formulas, where they use cells of the section, use the copies. */
function sectionDuplicated(notebook: Notebook, section: Section, id: string): Applied {
  const label = `${section.label}, copy`.slice(0, 200);
  let applied: Applied = {
    notebook: {
      ...notebook,
      sections: notebook.sections.toSpliced(notebook.sections.indexOf(section) + 1, 0, {
        id,
        label,
        cells: [],
      }),
    },
  };
  const renames = new Map<string, string>();
  for (const [at, cell] of section.cells.entries()) {
    const copy = { ...copyOf(applied.notebook, cell, `${id}-${at + 1}`), label: cell.label };
    const now = new Map(namesOf(copy).map(({ key, name }) => [key, name]));
    for (const { key, name } of namesOf(cell)) renames.set(sameName(name), now.get(key) ?? name);
    applied = added(applied.notebook, id, at, copy);
    if ('refused' in applied) return applied;
  }
  return inSections(applied.notebook, (cells, { id: here }) =>
    here === id ? cells.map((cell) => following(cell, renames)) : cells,
  );
}

/** What an edit does, as undo and redo call it: "the change to Bust". */
export function describe(notebook: Notebook, edit: Edit): string {
  const label = (id: string): string => cellById(notebook, id)?.label || 'a cell';
  const sectionLabel = (id: string): string =>
    notebook.sections.find((section) => section.id === id)?.label ?? '';
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
    case 'duplicate cell':
      return `the copy of ${label(edit.cell)}`;
    case 'move cell':
      return `moving ${label(edit.cell)}`;
    case 'add section':
      return `adding the section ${edit.section.label}`;
    case 'remove section':
      return `removing the section ${sectionLabel(edit.section)}`;
    case 'duplicate section':
      return `the copy of the section ${sectionLabel(edit.section)}`;
    case 'move section':
      return `moving the section ${sectionLabel(edit.section)}`;
    case 'relabel section':
      return `the new label of the section ${sectionLabel(edit.section)}`;
    case 'move size':
      return 'the new order of sizes';
    case 'take sizes':
      return 'taking other sizes';
    case 'several':
      return edit.what;
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
