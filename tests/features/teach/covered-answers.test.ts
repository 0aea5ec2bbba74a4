import { describe, expect, test } from 'vitest';
import { allCells, inputsOf, outputsOf, type Notebook } from '../../../src/notebook';
import { coveredFurtherUp, type Item } from '../../../src/features/teach/answers';
import { starters } from '../../../src/starters';
import { workingOf, type TextRun } from '../../../src/explain';
import { workedSource } from '../../explain/worked-source';

/** Everything that a notebook works out, one below the other, as on a class sheet. */
function everyResult(notebook: Notebook) {
  return allCells(notebook).flatMap((cell) =>
    [
      ...outputsOf(cell).filter(({ unit }) => unit !== 'fabric'),
      ...inputsOf(cell).filter(({ entry }) => 'formula' in entry),
    ].map(({ key }) => ({ cell: cell.id, key })),
  );
}

/** A value that somebody typed is given, whatever answer happens to be the same. */
function isGiven(notebook: Notebook, { of }: TextRun): boolean {
  const cell = allCells(notebook).find(({ id }) => id === of?.cell);
  const input = cell && inputsOf(cell).find(({ key }) => key === of?.key);
  return input !== undefined && !('formula' in input.entry);
}

const unitOf: Readonly<Record<string, string>> = { CM: 'cm', STS: 'sts', ROWS: 'rows' };

/** Numbers that stand in a formula itself, as a step writes them: they are given too. */
function constantsOf(notebook: Notebook, { cell: id, key }: { cell: string; key: string }): Set<string> {
  const cell = allCells(notebook).find((one) => one.id === id);
  const input = cell && inputsOf(cell).find((one) => one.key === key);
  const formula =
    (cell && outputsOf(cell).find((one) => one.key === key)?.formula) ??
    (input && 'formula' in input.entry ? input.entry.formula : '');
  return new Set(
    [...formula.matchAll(/(CM|STS|ROWS)\(([\d.]+)\)/gu)].map(([, unit, n]) => `${n} ${unitOf[unit!]}`),
  );
}

/** What stands in the words of a step whatever its numbers are. */
const ofTheTrade = /over 8 rows or fewer|\b[01] (row|st)s?\b/gu;

const notebooks = starters
  .map(({ label, make }) => [label, make()] as const)
  .filter(([, notebook]) => everyResult(notebook).length > 0);

describe.each(notebooks)('%s', (_label, notebook) => {
  test.each([0, 1])(
    'covered, no answer stands among the numbers further down, begun %s cells back',
    async (back) => {
      const source = await workedSource(notebook);
      const size = notebook.sizes[Math.floor(notebook.sizes.length / 2)]!.id;
      const items: Item[] = everyResult(notebook).map((result) => ({
        result,
        working: workingOf(source, result, size, back),
      }));
      const inWords = coveredFurtherUp(items);
      const leaks: string[] = [];
      const covered = new Map<string, string>();
      let named = 0;
      for (const { working } of items) {
        if ('problem' in working) continue;
        for (const line of working.lines) {
          line.steps.forEach((step, at) => {
            const shown = (step.from ? [step.from, ...step.says] : step.says).map((part) => {
              const revealed = inWords(line, at, part);
              if (revealed) named++;
              return revealed ? '…' : isGiven(notebook, part) ? '' : part.text;
            });
            const numbers =
              shown
                .join('')
                .replaceAll(ofTheTrade, '')
                .match(/\d+(\.\d+)? (sts?|rows?|cm|g)( \/ 10 cm)?/gu) ?? [];
            const given = constantsOf(notebook, line.of);
            for (const number of numbers) {
              if (given.has(number)) continue;
              const where = covered.get(number);
              if (where) leaks.push(`${line.of.label}: ${shown.join('')} tells ${where}`);
            }
            covered.set(step.answer, `${line.of.label}, step ${at + 1}: ${step.answer}`);
          });
        }
      }
      expect(leaks).toEqual([]);
      expect(named).toBeGreaterThan(0);
    },
    60_000,
  );
});
