import { allCells, cellById, type Cell, type Notebook } from '../document';
import { renameIn, sameName } from '../../formulas';
import { mapFormulas } from '../kinds';
import { namesOf, withFreeName, wrongName } from '../names';
import { mostCells, type Applied } from './edit';
import { gone, inSections, replaced } from './with-cell';

/** A cell under another name, which every formula that uses it follows. */
export function renamed(notebook: Notebook, id: string, name: string): Applied {
  const cell = cellById(notebook, id);
  if (!cell) return gone;
  return changed(notebook, { ...cell, name });
}

/** A cell in another state. Where that changes what it calls things, every formula that uses them follows. */
export function changed(notebook: Notebook, next: Cell): Applied {
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
  return inSections(withWhatIfsRenamed(notebook, renames), (cells) => {
    const followed = replaced(cells, next).map((cell) => following(cell, renames));
    return followed.every((cell, at) => cell === cells[at]) ? cells : followed;
  });
}

/** The notebook whose what-ifs follow renames in their formulas; those that no rename concerns stay themselves. */
function withWhatIfsRenamed(notebook: Notebook, renames: ReadonlyMap<string, string>): Notebook {
  if (!notebook.whatIfs) return notebook;
  const whatIfs = notebook.whatIfs.map((whatIf) => {
    let touched = false;
    const changes = whatIf.changes.map((change) => {
      const formula = change.formula === undefined ? undefined : renameIn(change.formula, renames);
      if (formula === undefined || formula === change.formula) return change;
      touched = true;
      return { ...change, formula };
    });
    return touched ? { ...whatIf, changes } : whatIf;
  });
  return { ...notebook, whatIfs };
}

/** The cell with renames followed, or the same cell where none concerns it. */
export function following(cell: Cell, renames: ReadonlyMap<string, string>): Cell {
  let touched = false;
  const mapped = mapFormulas(cell, (formula) => {
    const after = renameIn(formula, renames);
    touched ||= after !== formula;
    return after;
  });
  return touched ? mapped : cell;
}

/** A cell put into a section, before the one that stands at that place. */
export function added(notebook: Notebook, sectionId: string, at: number, cell: Cell): Applied {
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

/** A cell put into a section, its own or another: `at` counts the cells there without it. */
export function moved(notebook: Notebook, id: string, section: string, at: number): Applied {
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
export function copyOf(notebook: Notebook, cell: Cell, id: string): Cell {
  const named = withFreeName(notebook, { ...cell, id, label: `${cell.label}, copy`.slice(0, 200) });
  const now = new Map(namesOf(named).map(({ key, name }) => [key, name]));
  const renames = new Map(namesOf(cell).map(({ key, name }) => [sameName(name), now.get(key) ?? name]));
  return mapFormulas(named, (formula) => renameIn(formula, renames));
}

/** A copy of a cell after it, under names that are free. */
export function duplicated(notebook: Notebook, id: string, newId: string): Applied {
  const cell = cellById(notebook, id);
  const section = notebook.sections.find(({ cells }) => cells.some((candidate) => candidate.id === id));
  if (!cell || !section) return gone;
  return added(notebook, section.id, section.cells.indexOf(cell) + 1, copyOf(notebook, cell, newId));
}
