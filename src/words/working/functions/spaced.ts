import { spaceEvenly } from '../../../craft';
import { plainOf, stitchesOf } from '../amount';
import type { Work } from '../work';
import { withRemainder } from './division';

/** Shaping across one row: how many there are, and the division that spreads them. */
export function spaced(
  work: Work,
  plan: { from: number; to: number; worked: 'flat' | 'round'; ends: 'half' | 'whole' },
): ReturnType<typeof spaceEvenly> {
  const found = spaceEvenly(plan);
  const { from, to, worked, ends } = plan;
  const [larger, smaller] = from > to ? [from, to] : [to, from];
  const sts = (count: number): string => work.write(stitchesOf(count));
  const kind = found.kind === 'none' ? 'shapings' : `${found.kind}s`;
  const named = found.shapings === 1 ? kind.slice(0, -1) : kind;
  work.say(`${sts(larger)} − ${sts(smaller)}`, plainOf(found.shapings), {
    answer: `${found.shapings} ${named}`,
  });
  if (found.shapings === 0) return found;
  if (worked === 'flat' && ends === 'whole') {
    const used = found.kind === 'decrease' ? 2 * found.shapings : 0;
    const plain = from - used;
    withRemainder(work, `${sts(plain)} left plain`, `${found.shapings + 1} gaps`, plain, found.shapings + 1);
  } else {
    withRemainder(work, sts(from), `${found.shapings}, a segment to each`, from, found.shapings);
  }
  return found;
}
