import { gather, shapeEachRepeat, whole } from '../../craft';
import { inSteps } from '..';
import { bare, numberIn as n, plainOf, stitchesOf, textOf, type Amount } from '../../explain/amount';
import type { Shows, Work } from '../../explain/work';
import { spaced } from './spaced.explain';
import { tapered, taperRequest } from './tapered.explain';

function across(work: Work, given: readonly Amount[]) {
  const [from, to, worked, ends] = given;
  return spaced(work, {
    from: from!,
    to: to!,
    worked: worked!.value as 'flat' | 'round',
    ends: (ends?.value ?? 'half') as 'half' | 'whole',
  });
}

/** Rounds of "so many plain, 2 together": of every k + 2 stitches one goes. */
export function gathered(work: Work, from: Amount, to: Amount, rounds: Amount) {
  const { steps } = gather({ from: whole(n(from)), to: whole(n(to)), rounds: whole(n(rounds)) });
  let before = from;
  for (const { plain, count } of steps) {
    const fewer = Math.floor(n(before) / (plain + 2));
    before = work.say(
      work.words`${bare(before)} ÷ ${plain + 2}, whole, are ${fewer} decreases (${plain} plain, 2 together): ${bare(before)} − ${fewer}`,
      stitchesOf(count),
    );
  }
  return steps;
}

export const shaping = {
  SPACING: (work, ...given) => {
    const { plain } = across(work, given);
    return work.say('plain before each, and after the last', textOf(inSteps(plain.map(String))));
  },
  SHAPINGS: (work, ...given) => plainOf(across(work, given).shapings),
  TAPEREVERY: (work, ...given) => tapered(work, taperRequest(given.slice(0, 7), given[7]!)),
  GATHER: (work, from, to, rounds) => {
    const steps = gathered(work, from!, to!, rounds!);
    return work.say(
      'round by round',
      textOf(steps.map(({ plain, count }) => `${plain} plain: ${count}`).join('; ')),
    );
  },
  GATHERED: (work, from, to, rounds) => stitchesOf(gathered(work, from!, to!, rounds!).at(-1)!.count),
  SHAPEREPEATS: (work, count, repeats, by) => {
    const after = shapeEachRepeat({
      count: whole(n(count!)),
      repeats: whole(n(repeats!)),
      by: whole(n(by!)),
    });
    const sign = n(by!) < 0 ? '−' : '+';
    return work.say(
      work.words`${count!} ${sign} ${bare(repeats!)} × ${{ ...by!, ...stitchesOf(Math.abs(n(by!))) }}`,
      stitchesOf(after),
    );
  },
} satisfies Record<string, Shows>;
