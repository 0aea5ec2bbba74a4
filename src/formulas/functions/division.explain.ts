import { plainOf, type Amount } from '../../explain/amount';
import type { Work } from '../../explain/work';
import type { TextRun } from '../../explain/step';

/** A division that leaves something over, as a step: "58 rows ÷ 10 = 5, remainder 8". */
export function withRemainder(
  work: Work,
  of: Amount | readonly TextRun[],
  by: readonly TextRun[],
  all: number,
  parts: number,
): void {
  const each = Math.floor(all / parts);
  const left = all - each * parts;
  work.say(work.words`${of} ÷ ${by}`, plainOf(each), {
    answer: left === 0 ? String(each) : `${each}, remainder ${left}`,
  });
}
