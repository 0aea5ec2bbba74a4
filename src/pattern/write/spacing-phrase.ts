import type { FabricWords } from './fabric-words';
import { moreTimes, times, type BySize } from './size-list';

/** Shapings across one row: the plain stitches before each, and those after the last. */
export interface RowPlan {
  readonly kind: 'decrease' | 'increase';
  readonly gaps: readonly number[];
  readonly last: number;
}

/** Gaps that are worked one after the other, so many times. */
export interface GapBlock {
  readonly gaps: readonly number[];
  readonly times: number;
}

const mostBlocks = 3;

/**
 * Gaps as few repeats as can be read while working.
 *
 * As they stand where that takes up to three blocks; otherwise the same gaps in another order, every longer one among
 * so many shorter ones: by then no gap differs from another by more than one stitch, and a row of them in their exact
 * order would be a list that nobody follows.
 *
 * @param first whether the first gap is half a gap before the others, and stays where it is
 * @example gapBlocks([6, 6, 6, 7]) // [{ gaps: [6], times: 3 }, { gaps: [7], times: 1 }]
 */
export function gapBlocks(gaps: readonly number[], first: 'apart' | 'alike' = 'apart'): GapBlock[] {
  const exact = gaps.length <= 2000 ? fewestBlocks(gaps) : undefined;
  if (exact && exact.length <= mostBlocks) return exact;
  if (first === 'alike') return inOrder(gaps);
  return [{ gaps: gaps.slice(0, 1), times: 1 }, ...inOrder(gaps.slice(1))];
}

/** The shortest way to write a list as blocks that repeat, of up to three gaps each. */
function fewestBlocks(gaps: readonly number[]): GapBlock[] {
  const cost = new Array<number>(gaps.length + 1).fill(Infinity);
  const from = new Array<{ at: number; block: GapBlock } | undefined>(gaps.length + 1);
  cost[0] = 0;
  for (let at = 0; at < gaps.length; at++) {
    for (let length = 1; length <= 3 && at + length <= gaps.length; length++) {
      const pattern = gaps.slice(at, at + length);
      let end = at;
      for (let done = 1; ; done++) {
        if (!pattern.every((gap, i) => gaps[end + i] === gap)) break;
        end += length;
        if (done === 1 && length > 1) continue;
        const price = cost[at]! + length + (done > 1 ? 1 : 0) + 1;
        if (price < cost[end]!) {
          cost[end] = price;
          from[end] = { at, block: { gaps: pattern, times: done } };
        }
      }
    }
  }
  const blocks: GapBlock[] = [];
  for (let at = gaps.length; at > 0; at = from[at]!.at) blocks.unshift(from[at]!.block);
  return blocks;
}

/** Gaps of two kinds put in order: each of the rarer among so many of the others, what is left over at the end. */
function inOrder(gaps: readonly number[]): GapBlock[] {
  const counts = new Map<number, number>();
  for (const gap of gaps) counts.set(gap, (counts.get(gap) ?? 0) + 1);
  const [rare, common, ...more] = [...counts].sort((a, b) => a[1] - b[1]);
  const block = ([gap, many]: readonly [number, number]): GapBlock[] =>
    many > 0 ? [{ gaps: [gap], times: many }] : [];
  if (!rare || !common || more.length > 0) return [...counts].flatMap(block);
  const [each, left] = [Math.floor(common[1] / rare[1]), common[1] % rare[1]];
  if (each <= 2) {
    const together = [rare[0], ...new Array<number>(each).fill(common[0])];
    return [{ gaps: together, times: rare[1] }, ...block([common[0], left])];
  }
  const before = Math.ceil(common[1] / 2);
  return [...block([common[0], before]), ...block(rare), ...block([common[0], common[1] - before])];
}

/** What sizes must agree in to be written in one phrase. */
export function shapeOf(plan: RowPlan, words: FabricWords): string {
  const uses = plan.kind === 'increase' ? words.increaseUses : 0;
  const blocks = gapBlocks(plan.gaps).map(
    (block) => block.gaps.map((gap) => (gap - uses > 0 ? 'n' : '0')).join('') + (block.times > 1 ? '*' : ''),
  );
  return [plan.kind, ...blocks].join(' ');
}

/**
 * The shapings of one row in sizes of the same shape, as a phrase.
 *
 * @example
 * spacingPhrase([{ kind: 'decrease', gaps: [6, 6, 6, 6], last: 5 }], wordsFor('crochet', 'sc'), 'flat')
 * // '*sc 6, sc2tog; rep from * 3 more times, sc 5'
 */
export function spacingPhrase(plans: BySize<RowPlan>, words: FabricWords, worked: 'flat' | 'round'): string {
  const some = plans.find((plan) => plan !== null)!;
  const uses = some.kind === 'increase' ? words.increaseUses : 0;
  const shaping = some.kind === 'increase' ? words.increase : words.decrease;
  const blocks = plans.map((plan) => plan && gapBlocks(plan.gaps));
  const first = blocks.find((list) => list !== null)!;
  const lasts = plans.map((plan) => plan && plan.last);
  const endsPlain = lasts.some((last) => last !== null && last > 0);
  const repeats = first.filter((block) => block.times > 1).length;

  const parts = first.map((block, at) => {
    const inside = block.gaps
      .flatMap((gap, i) => {
        const plain = blocks.map((list) => list && list[at]!.gaps[i]! - uses);
        return gap - uses > 0 ? [words.plain(plain), shaping] : [shaping];
      })
      .join(', ');
    const often = blocks.map((list) => list && list[at]!.times);
    if (block.times === 1) return inside;
    if (repeats > 1) return `(${inside}) ${times(often)}`;
    const toEnd = at === first.length - 1 && !endsPlain;
    const again = toEnd
      ? worked === 'round'
        ? 'around'
        : 'to end'
      : moreTimes(often.map((many) => many && many - 1));
    return `*${inside}; rep from * ${again}`;
  });
  if (endsPlain) parts.push(words.plain(lasts.map((last) => (last === 0 ? null : last))));
  return parts.join(', ');
}
