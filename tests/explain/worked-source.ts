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
    number: (...address) => results.number(...address),
    text: (...address) => results.text(...address),
    truth: (...address) => results.truth(...address),
    errorAt: (...address) => results.error(...address)?.message,
    unit: (...address) => results.unit(...address),
  };
}
