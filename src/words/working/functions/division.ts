import { plainOf } from '../amount';
import type { Work } from '../work';

/** A division that leaves something over, as a step: "58 rows ÷ 10 = 5, remainder 8". */
export function withRemainder(work: Work, of: string, by: string, all: number, parts: number): void {
  const each = Math.floor(all / parts);
  const left = all - each * parts;
  work.say(`${of} ÷ ${by}`, plainOf(each), {
    answer: left === 0 ? String(each) : `${each}, remainder ${left}`,
  });
}
