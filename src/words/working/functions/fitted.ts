import { fitCount, type Repeat, type Rule } from '../../../craft';
import { numberIn, type Amount } from '../amount';
import type { Work } from '../work';

/** "multiple of 8 + 3", "multiple of 4", "multiple of 8 − 1" */
export function multipleOf({ multiple, plus }: Repeat): string {
  const added = plus === 0 ? '' : plus < 0 ? ` − ${-plus}` : ` + ${plus}`;
  return `multiple of ${multiple}${added}`;
}

const toward = { nearest: 'nearest', up: 'up to the next', down: 'down to the next' } as const;

/** What a rule is called before the counts it may take: "nearest multiple of 8 + 3". */
export function ruleInWords(rule: Rule, counts: string): string {
  return `${toward[rule]} ${counts}`;
}

/** The step in which a count is decided, with its neighbours beside it. */
export function fitted(
  work: Work,
  wanted: Amount,
  allowed: { repeats: Repeat[]; rule: Rule; parity?: 'odd' | 'even' | undefined; says: string },
): Amount {
  const { count, below, above } = fitCount(numberIn(wanted), allowed.repeats, allowed.rule, allowed.parity);
  const result = { value: count, unit: wanted.unit };
  const neighbours = below === above ? 'exactly' : `${below ?? 'none'} is below, ${above} above`;
  return work.say(allowed.says, result, { from: work.part(wanted), beside: neighbours });
}
