import { cellById, inputsOf, outputsOf, type Edit, type Notebook } from '../notebook';

/** The notebook that was open when something was begun that ends in an edit. */
export interface OpenNotebook {
  readonly id: string;
  readonly title: string;
  /** It is a preview, shown instead of the open notebook. */
  readonly previewed: boolean;
}

/** What an edit was prepared for: which notebook was open, and its state. */
export interface StartState extends OpenNotebook {
  readonly notebook: Notebook;
}

/**
 * Why an edit that was prepared for one state of a notebook is not to be made in another; undefined where what it
 * touches is as it was. What it does not touch may be another.
 */
export function outdated(edit: Edit, before: Notebook, now: Notebook): string | undefined {
  if (before === now) return undefined;
  if (edit.do === 'several') {
    for (const one of edit.edits) {
      const why = outdated(one, before, now);
      if (why !== undefined) return why;
    }
    return undefined;
  }
  if (alike(touchedBy(edit, before), touchedBy(edit, now))) return undefined;
  const label = 'cell' in edit && typeof edit.cell === 'string' && cellById(before, edit.cell)?.label;
  return `${label ? `"${label}"` : 'What this changes'} was changed meanwhile, so this was not entered. Look at it and try again.`;
}

/** What an edit puts something in the place of. */
function touchedBy(edit: Edit, notebook: Notebook): unknown {
  if (edit.do === 'change what-if') return notebook.whatIfs?.find(({ id }) => id === edit.whatIf);
  if (!('cell' in edit) || typeof edit.cell !== 'string') return undefined;
  const cell = cellById(notebook, edit.cell);
  if (!cell) return undefined;
  if (edit.do === 'enter' || edit.do === 'give')
    return inputsOf(cell).find((input) => input.key === edit.key)?.entry;
  if (edit.do === 'take over') return outputsOf(cell).find((output) => output.key === edit.key)?.formula;
  return cell;
}

/** Whether two parts of notebooks hold the same, though they may have been read from a file each. */
function alike(one: unknown, other: unknown): boolean {
  return one === other || JSON.stringify(one) === JSON.stringify(other);
}
