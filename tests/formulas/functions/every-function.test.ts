import { beforeAll, describe, expect, test } from 'vitest';
import { families, functionNamed, functions } from '../../../src/formulas/functions/signatures';
import { documentedFunctions } from '../../../src/formulas/functions/docs';
import { isDimension } from '../../../src/formulas/units';
import { tradeFunctions } from '../../../src/formulas/functions/evaluators';
import { Worked } from '../../engine/worked';
import { exampleOf, withExamples } from './with-examples';
import { vNeck } from '../../notebooks/v-neck';

describe('every function that is offered', () => {
  const sheet = new Worked();
  const sizes = vNeck().sizes.map(({ id }) => id);
  beforeAll(async () => void (await sheet.show(withExamples())));

  test.each(documentedFunctions.map((entry) => [entry.example, entry] as const))(
    'works its example in every size of the V-neck: %s',
    (_example, { name, gives, arguments: wanted }) => {
      const address = [exampleOf(name), 'value'] as const;
      for (const size of sizes) expect(sheet.results.error(size, ...address)).toBeUndefined();
      const unit = sheet.results.unit(...address)!;
      // The example of PI goes on to something else.
      if (gives !== 'any' && name !== 'PI') expect(unit).toEqual(gives);
      if (gives === 'any') expect(wanted.some((argument) => argument.unit === 'any')).toBe(true);
      for (const size of sizes) {
        if (isDimension(unit)) expect(sheet.results.number(size, ...address)).toBeTypeOf('number');
        else if (unit === 'truth') expect(sheet.results.truth(size, ...address)).toBeTypeOf('boolean');
        else expect(sheet.results.text(size, ...address)).toBeTypeOf('string');
      }
    },
  );

  test('is told of once, in one sentence, under its family', () => {
    expect(new Set(functions.map(({ name }) => name)).size).toBe(functions.length);
    for (const { about, family, name } of documentedFunctions) {
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
