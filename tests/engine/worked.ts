import { changesBetween } from '../../src/notebook/changes';
import type { Cell, Notebook } from '../../src/notebook/document';
import { Results } from '../../src/engine/results';
import { WorkedSheet } from '../../src/engine/sheet';
import { formula, notebookOf } from './notebook-of';

/** A notebook at work: shown again after each edit, with what was told so far. */
export class Worked {
  readonly sheet = new WorkedSheet();
  readonly results = new Results();
  #notebook: Notebook | null = null;

  async show(notebook: Notebook, hold: readonly string[] = []): Promise<this> {
    this.results.apply(await this.sheet.update(changesBetween(this.#notebook, notebook), hold));
    this.#notebook = notebook;
    return this;
  }

  number(cell: string, key = 'value', size = 'm'): number | undefined {
    return this.results.number(size, cell, key);
  }

  errorIn(cell: string, key = 'value', size = 'm'): string | undefined {
    return this.results.error(size, cell, key)?.message;
  }
}

export async function worked(...cells: readonly Cell[]): Promise<Worked> {
  return new Worked().show(notebookOf(cells));
}

/** What one formula gives beside some cells: a value, or the sentence on why there is none. */
export async function valueOf(text: string, ...others: readonly Cell[]): Promise<number | string | boolean> {
  const { results } = await worked(...others, formula('here', text));
  const read = ['m', 'here', 'value'] as const;
  const error = results.error(...read);
  return (
    results.number(...read) ??
    results.text(...read) ??
    results.truth(...read) ??
    (error?.from ? `from ${error.from.cell}: ${error.message}` : error!.message)
  );
}
