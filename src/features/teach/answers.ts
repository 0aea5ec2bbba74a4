import type { ClassResult } from '../../notebook';
import type { TextRun, Working, WorkingLine } from '../../explain';

type ResultRef = Pick<ClassResult, 'cell' | 'key'>;

/** What an answer on the sheet is covered and uncovered by: the item it stands in, the line, and the step. */
export const answerKey = (
  item: ResultRef,
  { of, steps }: WorkingLine,
  step: number = steps.length - 1,
): string => JSON.stringify([item.cell, item.key, of.cell, of.key, step]);

/** One item of the sheet: what was put on it, and how it is worked. */
export interface Item {
  readonly result: ResultRef;
  readonly working: Working | { readonly problem: string };
}

const idOf = ({ cell, key }: ResultRef): string => `${cell} ${key}`;

/** An answer on the sheet, and what is said in the place of its number while it is covered. */
export interface RevealedAnswer {
  readonly answer: string;
  readonly name: string;
}

/**
 * Finds the answer further up the sheet that a run of a step gives away. It is asked for there as a result by itself,
 * or the number is what the last step before that came to it: in the same line, or in one above.
 */
export function coveredFurtherUp(
  items: readonly Item[],
): (line: WorkingLine, step: number, part: TextRun) => RevealedAnswer | undefined {
  const results = new Map<string, RevealedAnswer & { readonly nth: number }>();
  const worths = new Map<string, { answer: string; line: WorkingLine; step: number; nth: number }[]>();
  const order = new Map<WorkingLine, number>();
  const alike = new Map<string, string>();
  let nth = 0;
  for (const { result, working } of items) {
    if ('problem' in working) continue;
    for (const line of working.lines) {
      order.set(line, nth);
      const name = line.of.label;
      if (!results.has(idOf(line.of)))
        results.set(idOf(line.of), { answer: answerKey(result, line), name, nth });
      line.steps.forEach((step, at) => {
        const answer = answerKey(result, line, at);
        alike.set(JSON.stringify(step), answer);
        if (step.worth === undefined) return;
        const same = worths.get(step.worth) ?? [];
        same.push({ answer, line, step: at, nth: nth + at });
        worths.set(step.worth, same);
      });
      nth += line.steps.length;
    }
  }

  const byResult = (line: WorkingLine, of: NonNullable<TextRun['of']>): RevealedAnswer | undefined =>
    [of, ...(of.over ?? [])]
      .map((ref) => results.get(idOf(ref)))
      .find((found) => found && found.nth < order.get(line)!);

  const byWorth = (line: WorkingLine, step: number, worth: string): RevealedAnswer | undefined => {
    const here = order.get(line)! + step;
    const found = worths.get(worth)?.findLast((one) => one.nth < here);
    if (!found) return undefined;
    const last = found.step === found.line.steps.length - 1;
    const itself = `step ${found.step + 1}`;
    const elsewhere = last ? found.line.of.label : `${found.line.of.label}, ${itself}`;
    return { answer: found.answer, name: found.line === line ? itself : elsewhere };
  };

  return (line, step, { of, worth, tells }) => {
    if (of) return byResult(line, of);
    if (worth !== undefined) return byWorth(line, step, worth);
    const decided = tells && alike.get(JSON.stringify(tells.step));
    return decided === undefined ? undefined : { answer: decided, name: tells!.untold };
  };
}
