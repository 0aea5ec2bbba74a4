import { changesBetween, type Notebook } from '../../src/notebook';
import { Results } from '../../src/engine';
import { WorkedSheet } from '../../src/engine/sheet';
import type { WorkingSource } from '../../src/explain';

/** A notebook with its results, as a working asks for them. */
export async function workedSource(
  notebook: Notebook,
): Promise<WorkingSource & { readonly results: Results }> {
  const results = new Results();
  results.apply(await new WorkedSheet().update(changesBetween(null, notebook)));
  return {
    notebook,
    results,
    number: (...place) => results.number(...place),
    text: (...place) => results.text(...place),
    truth: (...place) => results.truth(...place),
    errorAt: (...place) => results.error(...place)?.message,
    unit: (...place) => results.unit(...place),
  };
}
