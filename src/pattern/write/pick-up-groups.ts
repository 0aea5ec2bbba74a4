import { moreTimes, sizeList, times, type BySize } from './size-list';
import { gapBlocks } from './spacing-phrase';

/** Row ends along an edge: `pick` stitches, then `skip` row ends; without a skip one row end takes all of them. */
interface Group {
  readonly pick: number;
  readonly skip: number;
  readonly times?: number;
}

/** Groups that are worked one after the other, so many times; each group of them so many times running. */
export interface Block {
  readonly groups: readonly (Group & { readonly times: number })[];
  readonly times: number;
}

/** What an edge is made of, one by one. */
export type Along = 'row end' | 'st' | 'repeat';

const mostGroups = 2000;

/** The groups of a pick-up in few repeats: the same groups, the rarer ones spread among the others. */
export function inBlocks(groups: readonly Group[]): Block[] {
  const kinds = new Map<string, Group & { times: number }>();
  for (const group of groups) {
    const key = `${group.pick} ${group.skip}`;
    const before = kinds.get(key)?.times ?? 0;
    kinds.set(key, { ...group, times: before + (group.times ?? 1) });
  }
  const [rare, common, ...more] = [...kinds.values()].sort((a, b) => a.times - b.times);
  if (!rare) return [];
  if (!common || more.length > 0) return [...kinds.values()].map(alone);
  const many = rare.times + common.times;
  if (many > mostGroups) return [rare, common].map(alone);
  if (rare.skip === 0 && common.skip === 0) {
    // Every row end takes some: one with the rarer number, then a run of the others.
    const run = Math.floor(common.times / rare.times);
    const left = common.times % rare.times;
    const runs = (length: number, times: number): Block => ({
      groups: [
        { ...rare, times: 1 },
        { ...common, times: length },
      ],
      times,
    });
    // What is left over ends the edge where it is no longer than a run; more of it would pull the edge in there.
    if (left > run) return [runs(run + 1, left), runs(run, rare.times - left)];
    return [runs(run, rare.times), ...(left > 0 ? [{ groups: [{ ...common, times: left }], times: 1 }] : [])];
  }
  const list = [rare, common];
  const each = groups.flatMap((group) =>
    new Array<number>(group.times ?? 1).fill(
      list.findIndex(({ pick, skip }) => pick === group.pick && skip === group.skip),
    ),
  );
  return gapBlocks(each, 'alike').map((block) => ({
    groups: block.gaps.map((kind) => ({ ...list[kind]!, times: 1 })),
    times: block.times,
  }));
}

function alone(group: Group & { readonly times: number }): Block {
  return group.skip === 0
    ? { groups: [group], times: 1 }
    : { groups: [{ ...group, times: 1 }], times: group.times };
}

/** What sizes must agree in to be written in one line. A run that is left over at the end may be missing in some. */
export function shapeOfBlocks(blocks: readonly Block[]): string {
  const [first] = blocks;
  if (first?.groups.every(({ skip }) => skip === 0)) {
    const [one, other] = first.groups;
    // One is "in the next row end", and more are "in each of the next": what is left over may be missing in some sizes.
    if (!other) return one!.times === 1 ? 'one row end' : 'each row end';
    const twoRuns = blocks[1]?.groups.length === 2;
    const runs = [other.times, blocks[1]?.groups.at(-1)?.times]
      .map((run) => (run === 1 ? ', one' : ''))
      .join(';');
    const often = [first, ...(twoRuns ? [blocks[1]!] : [])]
      .map(({ times: many }) => (many > 1 ? '*' : '.'))
      .join('');
    return `${one!.pick > other.pick ? 'more' : 'fewer'} among others${often}${runs}`;
  }
  return blocks
    .map(({ groups, times: often }) => groups.map(unitOf).join('+') + (often > 1 ? '*' : ''))
    .join(' ');
}

const unitOf = ({ skip }: Group): string => (skip > 1 ? 'skip first' : 'skip last');

/**
 * "(pick up 3, skip 1) 10 times, pick up 4, skip 1"; where no row end is skipped, "2 in the next row end".
 *
 * @param along what is picked up along: row ends, stitches, repeats
 *
 * @example
 * groupWords([[{ groups: [{ pick: 3, skip: 1, times: 1 }], times: 10 }]])
 * // '*pick up 3, skip 1; rep from * 9 more times'
 */
export function groupWords(lists: BySize<readonly Block[]>, along: Along = 'row end'): string {
  const longest = lists.reduce<readonly Block[]>(
    (most, list) => (list && list.length > most.length ? list : most),
    [],
  );
  return longest
    .map((block, at) => {
      const inside = block.groups
        .map((_group, i) =>
          groupPhrase(
            lists.map((list) => list?.[at]?.groups[i] ?? null),
            along,
          ),
        )
        .join(', ');
      const often = lists.map((list) => list?.[at]?.times ?? null);
      if (often.every((many) => many === null || many === 1)) return inside;
      if (longest.length === 1) {
        return `*${inside}; rep from * ${moreTimes(often.map((many) => many && many - 1))}`;
      }
      return `(${inside}) ${times(often)}`;
    })
    .join(', ');
}

function groupPhrase(groups: BySize<Group & { readonly times: number }>, along: Along): string {
  const of = (value: (group: Group & { readonly times: number }) => number): string =>
    sizeList(groups.map((group) => group && value(group)));
  const pick = of((group) => group.pick);
  const some = groups.find((group) => group !== null)!;
  if (some.skip > 1) return `skip ${of((group) => group.skip)}, pick up ${pick}`;
  if (some.skip === 1) return `pick up ${pick}, skip ${of((group) => group.skip)}`;
  const run = of((group) => group.times);
  if (groups.every((group) => group === null || group.times === 1)) return `${pick} in the next ${along}`;
  // One dash is enough: "1 in each of the next 6 (–) row ends".
  const same = groups.every((group) => group === null || group.pick === some.pick);
  return `${same ? some.pick : pick} in each of the next ${run} ${along}s`;
}
