import { describe, expect, test } from 'vitest';
import { allCells, inputsOf, outputsOf, type Notebook, type Settings } from '../../src/notebook';
import { starters } from '../../src/starters';
import { workingOf } from '../../src/explain';
import { shownFunctions } from '../../src/formulas/functions/explanations';
import { functionNames, withExamples } from '../formulas/functions/with-examples';
import { workedSource } from './worked-source';

const written: Pick<Settings, 'length' | 'gaugeOver' | 'decimal'>[] = [
  { length: 'cm', gaugeOver: '10 cm', decimal: '.' },
  { length: 'in', gaugeOver: '4 in', decimal: ',' },
];

/** Where a notebook works something out. */
function workedRefs(notebook: Notebook) {
  return allCells(notebook).flatMap((cell) => [
    ...inputsOf(cell).flatMap((input) =>
      'formula' in input.entry ? [{ cell: cell.id, key: input.key }] : [],
    ),
    ...outputsOf(cell).map(({ key }) => ({ cell: cell.id, key })),
  ]);
}

const notebooks = [
  ...starters.map(({ label, make }) => [label, make()] as const),
  ['every function’s example', withExamples()] as const,
];

describe.each(notebooks)('%s', (_label, notebook) => {
  test.each(written)(
    'a working ends on what the sheet has, in $length and per $gaugeOver',
    async (settings) => {
      const shown = { ...notebook, settings: { ...notebook.settings, ...settings } };
      const source = await workedSource(shown);
      let compared = 0;
      // Gathered, and expected once: there are half a million steps.
      const faults: string[] = [];
      for (const ref of workedRefs(shown)) {
        for (const { id: size, label } of shown.sizes) {
          const at = [size, ref.cell, ref.key] as const;
          const sheet = source.number(...at) ?? source.truth(...at) ?? source.text(...at);
          const working = workingOf(source, ref, size, 2);
          const where = `${ref.cell} ${ref.key} in ${label}`;
          if ('problem' in working) throw new Error(`${where}: ${working.problem}`);
          for (const line of working.lines) {
            if (line.steps.length === 0) faults.push(`${where}: a line without steps`);
            for (const { says, answer } of line.steps) {
              const text = `${says.map((part) => part.text).join('')} = ${answer}`;
              if (answer === '' || /undefined|NaN|Infinity|\[object|\{"/.test(text))
                faults.push(`${where}: ${text}`);
            }
          }
          const { value } = working.lines.at(-1)!.result;
          const isSame =
            typeof sheet === 'number' && typeof value === 'number'
              ? Math.abs(value - sheet) < 1e-8 * Math.max(1, Math.abs(sheet))
              : value === sheet;
          if (!isSame) faults.push(`${where}: ${String(value)}, where the sheet has ${String(sheet)}`);
          compared++;
        }
      }
      expect(faults).toEqual([]);
      if (notebook.sections.some(({ cells }) => cells.length > 0)) expect(compared).toBeGreaterThan(10);
    },
  );
});

test('every function that is offered has a working of its own; IF is seen to where its branch is chosen', () => {
  expect(functionNames.filter((name) => name !== 'IF' && !(name in shownFunctions))).toEqual([]);
  expect(Object.keys(shownFunctions).filter((name) => !functionNames.includes(name))).toEqual([]);
});
