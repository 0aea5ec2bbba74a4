import { beforeAll, describe, expect, test } from 'vitest';
import type { Notebook } from '../../../src/notebook/document';
import { families, functionNamed, functions } from '../../../src/notebook/functions';
import { toldFunctions } from '../../../src/notebook/functions/told';
import { sameName } from '../../../src/notebook/formula';
import { nameTable } from '../../../src/notebook/names';
import { isDimension } from '../../../src/notebook/units';
import { tradeFunctions } from '../../../src/sheet/functions';
import { jacket } from '../../../src/starters/jacket';
import { formula, measure } from '../notebook-of';
import { Worked } from '../worked';

const idOf = (name: string): string => `example_${name.toLowerCase()}`;

/** The jacket, what examples speak of beside it, and every example in a cell of its own. */
function withExamples(): Notebook {
  const notebook = jacket();
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
  const examples = toldFunctions.map(({ name, example }) => formula(idOf(name), example));
  const cells = [...beside, ...examples];
  return { ...notebook, sections: [...notebook.sections, { id: 'examples', label: '', cells }] };
}

describe('every function that is offered', () => {
  const sheet = new Worked();
  const sizes = jacket().sizes.map(({ id }) => id);
  beforeAll(async () => void (await sheet.show(withExamples())));

  test.each(toldFunctions.map((entry) => [entry.example, entry] as const))(
    'works its example in every size of the jacket: %s',
    (_example, { name, gives, arguments: asked }) => {
      const place = [idOf(name), 'value'] as const;
      for (const size of sizes) expect(sheet.results.trouble(size, ...place)).toBeUndefined();
      const unit = sheet.results.unit(...place)!;
      // The example of PI goes on to something else.
      if (gives !== 'any' && name !== 'PI') expect(unit).toEqual(gives);
      if (gives === 'any') expect(asked.some((argument) => argument.unit === 'any')).toBe(true);
      for (const size of sizes) {
        if (isDimension(unit)) expect(sheet.results.number(size, ...place)).toBeTypeOf('number');
        else if (unit === 'truth') expect(sheet.results.truth(size, ...place)).toBeTypeOf('boolean');
        else expect(sheet.results.text(size, ...place)).toBeTypeOf('string');
      }
    },
  );

  test('is told of once, in one sentence, under its family', () => {
    expect(new Set(functions.map(({ name }) => name)).size).toBe(functions.length);
    for (const { about, family, name } of toldFunctions) {
      expect(about).toMatch(/^[^.]+(\.\d[^.]*)*\.$/);
      expect(families).toContain(family);
      expect(functionNamed(name.toLowerCase())?.name).toBe(name);
    }
  });

  test('of the trade is one that is worked, and every one that is worked is offered', () => {
    const trade = functions.filter((entry) => entry.of === 'the trade').map(({ name }) => name);
    expect(trade.filter((name) => !(name in tradeFunctions))).toEqual([]);
    expect(Object.keys(tradeFunctions).filter((name) => !functionNamed(name))).toEqual([]);
  });

  test('takes what may be left out after what may not', () => {
    for (const entry of functions) {
      const left = entry.arguments.map((argument) => argument.optional === true);
      expect(left, entry.name).toEqual([...left].sort());
    }
  });
});
