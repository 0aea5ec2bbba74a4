import { nameTable, sameName, type Notebook } from '../../../src/notebook';
import { functions } from '../../../src/notebook/functions';
import { toldFunctions } from '../../../src/notebook/functions/told';
import { formula, measure } from '../notebook-of';
import { smock } from '../../notebooks/smock';

/** The id of the cell in which the example of a function stands. */
export const exampleOf = (name: string): string => `example_${name.toLowerCase()}`;

/** The smock, what examples speak of beside it, and the example of every function in a cell of its own. */
export function withExamples(): Notebook {
  const notebook = smock();
  const known = nameTable(notebook);
  const beside = [
    measure('hips', 'length', 104),
    measure('back_width', 'length', 52),
    measure('left_front', 'length', 26),
    measure('right_front', 'length', 26),
    measure('front_sts', 'stitches', 75),
    formula('finished_back', 'finished_bust / 2'),
    formula('cuff_rows', 'GAUGE(ROWS(20); CM(10))'),
  ].filter(({ name }) => !known.has(sameName(name)));
  const examples = toldFunctions.map(({ name, example }) => formula(exampleOf(name), example));
  return {
    ...notebook,
    sections: [...notebook.sections, { id: 'examples', label: '', cells: [...beside, ...examples] }],
  };
}

export const functionNames = functions.map(({ name }) => name);
