import { counted, listOf, oneOf, wholeCount } from './numbers';
import type { Join } from './types';

/**
 * Checks the seams that have to match stitch for stitch or row for row: the back shoulder and the front shoulder, the
 * sleeve's first row and the stitches picked up at the armhole.
 *
 * All sides of a join have to have the same count; a side may be a sum ("shoulder + neck + shoulder"), added up by the
 * caller. A join that does not hold names every side with its count and what the others lack or have too many.
 *
 * @param joins joins with two or more sides each, counts whole
 * @returns for each join, in order, whether it holds and a sentence that says so
 * @throws CraftError where a count is not whole or a join has fewer than two sides
 * @example
 * checkJoins([
 *   { name: 'Shoulder', by: 'stitch', sides: [{ name: 'back', count: 21 }, { name: 'front', count: 19 }] },
 * ])
 * // [{ name: 'Shoulder', holds: false,
 * //    message: 'Shoulder does not match stitch for stitch: back has 21 stitches, front 19, which is 2 fewer.' }]
 *
 * Source: common practice.
 */
export function checkJoins(joins: Join[]): { name: string; holds: boolean; message: string }[] {
  return listOf(joins, 'The joins').map((join) => {
    const name = String(join?.name ?? 'A join');
    const by = oneOf(join?.by, ['stitch', 'row'], `What ${name} is matched by`);
    const [first, ...others] = listOf(join?.sides, `The sides of ${name}`, 2).map((side) => ({
      name: String(side?.name ?? 'a side'),
      count: wholeCount(side?.count, `The count of ${side?.name ?? 'a side'} in ${name}`),
    }));
    const holds = others.every((side) => side.count === first!.count);
    const message = holds ? matching(name, by, first!) : differing(name, by, first!, others);
    return { name, holds, message };
  });
}

interface Side {
  name: string;
  count: number;
}

function matching(name: string, by: Join['by'], side: Side): string {
  return `${name} matches: ${countOf(side.count, by)} on every side.`;
}

function differing(name: string, by: Join['by'], first: Side, others: Side[]): string {
  const rest = others.map((side) => {
    const more = side.count - first.count;
    const compared = more === 0 ? 'the same' : `which is ${Math.abs(more)} ${more > 0 ? 'more' : 'fewer'}`;
    return `${side.name} ${side.count}, ${compared}`;
  });
  return `${name} does not match ${by} for ${by}: ${first.name} has ${countOf(first.count, by)}, ${rest.join('; ')}.`;
}

function countOf(count: number, by: Join['by']): string {
  return by === 'row' ? counted(count, 'row') : counted(count, 'stitch', 'stitches');
}
