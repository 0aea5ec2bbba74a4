import { spaceEvenly, whole } from '../../craft';
import { numberIn, plainOf, stitchesOf, type Amount } from '../../explain/amount';
import type { Work } from '../../explain/work';
import { withRemainder } from './division.explain';

/** Shaping across one row: how many there are, and the division that spreads them. */
export function spaced(
  work: Work,
  plan: { from: Amount; to: Amount; worked: 'flat' | 'round'; ends: 'half' | 'whole' },
): ReturnType<typeof spaceEvenly> {
  const { worked, ends } = plan;
  const [from, to] = [whole(numberIn(plan.from)), whole(numberIn(plan.to))];
  const found = spaceEvenly({ from, to, worked, ends });
  const [larger, smaller] = from > to ? [plan.from, plan.to] : [plan.to, plan.from];
  const kind = found.kind === 'none' ? 'shapings' : `${found.kind}s`;
  const named = found.shapings === 1 ? kind.slice(0, -1) : kind;
  const shapings = work.say(work.words`${larger} − ${smaller}`, plainOf(found.shapings), {
    answer: `${found.shapings} ${named}`,
  });
  if (found.shapings === 0) return found;
  if (worked === 'flat' && ends === 'whole') {
    const used = found.kind === 'decrease' ? 2 * found.shapings : 0;
    const plain = from - used;
    const left = used > 0 ? stitchesOf(plain) : plan.from;
    const gaps = [{ text: `${found.shapings + 1} gaps` }];
    withRemainder(work, work.words`${left} left plain`, gaps, plain, found.shapings + 1);
  } else {
    withRemainder(work, plan.from, work.words`${shapings}, a segment to each`, from, found.shapings);
  }
  return found;
}
