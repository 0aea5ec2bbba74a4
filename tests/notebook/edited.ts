import { apply, type Edit, type Notebook } from '../../src/notebook';

/** The notebook after some edits, none of which may be refused. */
export function edited(notebook: Notebook, ...edits: readonly Edit[]): Notebook {
  return edits.reduce((before, edit) => {
    const applied = apply(before, edit);
    if ('refused' in applied) throw new Error(applied.refused);
    return applied.notebook;
  }, notebook);
}

/** Why an edit is refused; "made" where it is not. */
export function refusal(notebook: Notebook, edit: Edit): string {
  const applied = apply(notebook, edit);
  return 'refused' in applied ? applied.refused : 'made';
}
