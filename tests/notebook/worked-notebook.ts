import { changesBetween, type Notebook } from '../../src/notebook';
import { Results } from '../../src/engine';
import { WorkedSheet } from '../../src/engine/sheet';

/** The results of a notebook, worked in a sheet built for it. */
export async function worked(notebook: Notebook): Promise<Results> {
  const results = new Results();
  results.apply(await new WorkedSheet().update(changesBetween(null, notebook)));
  return results;
}
