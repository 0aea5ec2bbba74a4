import type { ClassResult } from '../../notebook';
import type { Result, Working, WorkingLine } from '../../words/working';

type Place = Pick<ClassResult, 'cell' | 'key'>;

/** What an answer on the sheet is covered and uncovered by: the item it stands in, the line, and the step. */
export const answerKey = (item: Place, { of, steps }: WorkingLine, step: number = steps.length - 1): string =>
  JSON.stringify([item.cell, item.key, of.cell, of.key, step]);

/** One item of the sheet: what was put on it, and how it is worked. */
export interface Item {
  readonly result: Place;
  readonly working: Working | { readonly trouble: string };
}

const idOf = ({ cell, key }: Place): string => `${cell} ${key}`;

/**
 * Finds the answer further up the sheet that a number in a line gives away: where the sheet asks for that result
 * first, if it does so before that line.
 */
export function askedFurtherUp(
  items: readonly Item[],
): (line: WorkingLine, result: Result) => string | undefined {
  const asked = new Map<string, { readonly answer: string; readonly nth: number }>();
  const order = new Map<WorkingLine, number>();
  for (const { result, working } of items) {
    if ('trouble' in working) continue;
    for (const line of working.lines) {
      const nth = order.size;
      order.set(line, nth);
      if (!asked.has(idOf(line.of))) asked.set(idOf(line.of), { answer: answerKey(result, line), nth });
    }
  }
  return (line, result) => {
    const first = asked.get(idOf(result));
    return first && first.nth < order.get(line)! ? first.answer : undefined;
  };
}
