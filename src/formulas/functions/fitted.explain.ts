import { fitCount, type Repeat, type Rule } from '../../craft';
import { bare, numberIn, type Amount } from '../../explain/amount';
import type { Work } from '../../explain/work';
import type { TextRun } from '../../explain/step';

/** "multiple of 8 + 3", "multiple of 4", "multiple of 8 − 1" */
export function multipleOf(work: Work, multiple: Amount, plus: Amount): TextRun[] {
  return work.words`multiple of ${bare(multiple)}${numberIn(plus) === 0 ? '' : work.plus(bare(plus))}`;
}

const toward = { nearest: 'nearest', up: 'up to the next', down: 'down to the next' } as const;

/** What a rule is called before the counts it may take: "nearest multiple of 8 + 3". */
export function ruleInWords(work: Work, rule: Rule, counts: string | readonly TextRun[]): TextRun[] {
  return work.words`${toward[rule]} ${counts}`;
}

/** The step in which a count is decided, with its neighbours beside it. */
export function fitted(
  work: Work,
  wanted: Amount,
  allowed: { repeats: Repeat[]; rule: Rule; parity?: 'odd' | 'even' | undefined; says: readonly TextRun[] },
): Amount {
  const { count, below, above } = fitCount(numberIn(wanted), allowed.repeats, allowed.rule, allowed.parity);
  const result = { value: count, unit: wanted.unit };
  const neighbours = below === above ? 'exactly' : `${below ?? 'none'} is below, ${above} above`;
  return work.say(allowed.says, result, { from: work.part(wanted), hint: neighbours });
}
