import { gapBlocks } from './spacing-phrase';
import { moreTimes, sizeList, times, type BySize } from './size-list';

/** Row ends along an edge: `pick` stitches, then `skip` row ends; without a skip one row end takes all of them. */
interface Group {
  readonly pick: number;
  readonly skip: number;
  readonly times?: number;
}

/** Groups that are worked one after the other, so many times. */
export interface Block {
  readonly groups: readonly Group[];
  readonly times: number;
}

const mostGroups = 2000;

/** The groups of a pick-up in few repeats: the same groups, the rarer ones spread among the others. */
export function inBlocks(groups: readonly Group[]): Block[] {
  const kinds = [...new Map(groups.map((group) => [`${group.pick} ${group.skip}`, group])).values()];
  const kindOf = (group: Group): number =>
    kinds.findIndex(({ pick, skip }) => pick === group.pick && skip === group.skip);
  const many = groups.reduce((sum, group) => sum + (group.times ?? 1), 0);
  if (groups.length === 1 || many > mostGroups) {
    return groups.map((group) => ({ groups: [group], times: group.times ?? 1 }));
  }
  const each = groups.flatMap((group) => new Array<number>(group.times ?? 1).fill(kindOf(group)));
  return gapBlocks(each, 'alike').map((block) => ({
    groups: block.gaps.map((kind) => kinds[kind]!),
    times: block.times,
  }));
}

const unitOf = ({ pick, skip }: Group): string =>
  skip === 0 ? 'ends' : skip > 1 ? 'skip first' : pick > 1 ? 'some' : 'one';

/** What sizes must agree in to be written in one line. */
export function shapeOfBlocks(blocks: readonly Block[]): string {
  return blocks
    .map(({ groups, times: often }) => `${groups.map(unitOf).join('+')}${often > 1 ? '*' : ''}`)
    .join(' ');
}

/**
 * "(pick up 3, skip 1) 10 times, pick up 4, skip 1"; where no row end is skipped, "2 in the next row end".
 *
 * @example groupWords([[{ groups: [{ pick: 3, skip: 1 }], times: 10 }]]) // '*pick up 3, skip 1; rep from * 9 more times'
 */
export function groupWords(lists: BySize<readonly Block[]>): string {
  const first = lists.find((list) => list !== null)!;
  return first
    .map((block, at) => {
      const inside = block.groups
        .map((group, i) => {
          const of = (value: (group: Group) => number): string =>
            sizeList(lists.map((list) => list && value(list[at]!.groups[i]!)));
          const [pick, skip] = [of((one) => one.pick), of((one) => one.skip)];
          if (group.skip === 0) return `${pick} in the next row end`;
          if (group.skip > 1) return `skip ${skip}, pick up ${pick}`;
          return `pick up ${pick}, skip ${skip}`;
        })
        .join(', ');
      const often = lists.map((list) => list && list[at]!.times);
      if (block.times === 1) return inside;
      const only = block.groups.length === 1 && block.groups[0]!.skip === 0;
      if (only) {
        const pick = sizeList(lists.map((list) => list && list[at]!.groups[0]!.pick));
        return `${pick} in each of the next ${sizeList(often)} row ends`;
      }
      if (first.length === 1) {
        return `*${inside}; rep from * ${moreTimes(often.map((many) => many && many - 1))}`;
      }
      return `(${inside}) ${times(often)}`;
    })
    .join(', ');
}
