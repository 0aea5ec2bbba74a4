import { CraftError, roundDown, roundNearest, roundUp, whole } from '../../craft';
import { isDimension, plain, type Unit } from '..';
import { amount, numberIn as n, plainOf, truthOf } from '../../explain/amount';
import type { Shows } from '../../explain/work';

const extreme =
  (called: string, of: (...numbers: number[]) => number): Shows =>
  (work, ...given) =>
    work.say(work.words`${called} of ${work.joined(given, ', ')}`, {
      ...given[0]!,
      value: of(...given.map(n)),
    });

/** Rounding, as the sheet has it: OASIS OpenDocument 1.3, part 4, 6.17, after the trade's float edge. */
const rounding =
  (called: string, rounded: (size: number) => number): Shows =>
  (work, given, decimals) => {
    const scale = 10 ** (decimals ? roundDown(n(decimals)) : 0);
    const size = rounded(Math.abs(n(given!)) * scale) / scale;
    const to =
      !decimals || n(decimals) === 0
        ? 'whole'
        : `${n(decimals)} decimal ${n(decimals) === 1 ? 'place' : 'places'}`;
    const says = to === 'whole' ? `${called} to a whole number` : `${called} to ${to}`;
    return work.say(says, { ...given!, value: n(given!) < 0 ? -size : size }, { from: work.part(given!) });
  };

function rootOf(unit: Unit): Unit {
  if (!isDimension(unit)) return plain;
  return Object.fromEntries(Object.entries(unit).map(([base, power]) => [base, (power as number) / 2]));
}

const every =
  (word: string, of: (truths: boolean[]) => boolean): Shows =>
  (work, ...given) =>
    work.say(work.joined(given, ` ${word} `), truthOf(of(given.map(({ value }) => value === true))));

export const standard = {
  AND: every('and', (truths) => truths.every(Boolean)),
  OR: every('or', (truths) => truths.some(Boolean)),
  NOT: (work, given) => work.say(work.words`not ${given!}`, truthOf(given!.value !== true)),
  MIN: extreme('the least', Math.min),
  MAX: extreme('the greatest', Math.max),
  SUM: (work, ...given) =>
    work.say(work.sum(given), { ...given[0]!, value: given.reduce((sum, one) => sum + n(one), 0) }),
  AVERAGE: (work, ...given) =>
    work.say(work.words`(${work.sum(given)}) ÷ ${given.length}`, {
      ...given[0]!,
      value: given.reduce((sum, one) => sum + n(one), 0) / given.length,
    }),
  ABS: (work, given) =>
    work.say(work.words`${given!}, without its sign`, { ...given!, value: Math.abs(n(given!)) }),
  INT: (work, given) =>
    work.say(
      'down to a whole number',
      { ...given!, value: roundDown(n(given!)) },
      { from: work.part(given!) },
    ),
  ROUND: rounding('rounded', roundNearest),
  ROUNDUP: rounding('rounded up', roundUp),
  ROUNDDOWN: rounding('rounded down', roundDown),
  MOD: (work, given, by) => {
    if (n(by!) === 0)
      throw new CraftError('division-by-zero', 'Nothing is left over from a division by zero.');
    const value = whole(n(given!) - n(by!) * roundDown(n(given!) / n(by!)));
    return work.say(work.words`left over from ${given!} ÷ ${by!}`, { ...given!, value });
  },
  SQRT: (work, given) => {
    if (n(given!) < 0) throw new CraftError('negative', 'There is no square root of a number below zero.');
    return work.say(work.words`√(${given!})`, amount(Math.sqrt(n(given!)), rootOf(given!.unit)));
  },
  TRUE: () => truthOf(true),
  FALSE: () => truthOf(false),
  PI: () => plainOf(Math.PI),
} satisfies Record<string, Shows>;
