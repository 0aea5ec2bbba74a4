import { nameTable, type Notebook } from '../../../src/notebook';
import { sameName } from '../../../src/formulas';
import { functions } from '../../../src/formulas/functions/signatures';
import { documentedFunctions } from '../../../src/formulas/functions/docs';
import { even, piece } from '../../../src/notebook/cell-builders';
import { formula, measure, swatch } from '../../engine/notebook-of';
import { vNeck } from '../../notebooks/v-neck';

/** The id of the cell in which the example of a function stands. */
export const exampleOf = (name: string): string => `example_${name.toLowerCase()}`;

/** The V-neck, what examples speak of beside it, and the example of every function in a cell of its own. */
export function withExamples(): Notebook {
  const notebook = vNeck();
  const known = nameTable(notebook);
  const others = [
    measure('hips', 'length', 104),
    measure('neck_to_wrist', 'length', 75),
    measure('sleeve_sts', 'stitches', 74),
    swatch('sleeve_fabric', 16, 14),
    piece('Sleeve', 'round', 'sleeve_sts', [even('All', 'sleeve_fabric', 'ROWS(60)')]),
    measure('back_width', 'length', 52),
    measure('left_front', 'length', 26),
    measure('right_front', 'length', 26),
    measure('front_sts', 'stitches', 75),
    formula('finished_back', 'finished_bust / 2'),
    formula('cuff_rows', 'GAUGE(ROWS(20); CM(10))'),
  ].filter(({ name }) => !known.has(sameName(name)));
  const examples = documentedFunctions.map(({ name, example }) => formula(exampleOf(name), example));
  return {
    ...notebook,
    sections: [...notebook.sections, { id: 'examples', label: '', cells: [...others, ...examples] }],
  };
}

export const functionNames = functions.map(({ name }) => name);
