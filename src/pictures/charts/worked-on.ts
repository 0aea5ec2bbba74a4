import { gather, type Row, type Stretch } from '../../craft';
import { rowWord } from './in-words';
import type { WorkedSize } from './types';

type Plan = NonNullable<WorkedSize['plan']>;
type Ends = Stretch & { kind: 'leave' | 'add' };
type Gathered = Stretch & { kind: 'gather' };

/**
 * What is worked on a row, in the trade's words: "plain", "decrease 1 at each end", "leave 8 at the start and 8 at the
 * end; decrease 1 in each of 9 repeats". Stitches left or added belong to the row after them, as in `workPiece`.
 *
 * `i` is the row's index. Without a plan only what the counts tell is said: "2 fewer".
 *
 * @example
 * workedOn({ rows: workPiece(sleeve), plan: sleeve }, 5) // 'decrease 2 in the round'
 *
 * Source: common practice.
 */
export function workedOn({ rows, plan }: Pick<WorkedSize, 'rows' | 'plan'>, i: number): string {
  const row = rows![i]!;
  if (!plan) return row.change === 0 ? 'plain' : moreOrFewer(row.change);
  const ends = row.stretch === rows![i - 1]?.stretch ? [] : endsBefore(rows!, i, plan);
  const own = row.change - sumOf(ends);
  const parts = ends.flatMap((stretch) => endsInWords(stretch) ?? []);
  const shaping = shapingOf(rows!, i, own, plan);
  if (shaping) parts.push(shaping);
  return parts.join('; ') || 'plain';
}

/** The stretches without rows of their own that fall on the first row of a stretch. */
function endsBefore(rows: readonly Row[], i: number, plan: Plan): Ends[] {
  const between = plan.stretches.slice((rows[i - 1]?.stretch ?? -1) + 1, rows[i]!.stretch);
  return between.filter((stretch): stretch is Ends => stretch.kind === 'leave' || stretch.kind === 'add');
}

function sumOf(ends: readonly Ends[]): number {
  return ends.reduce((sum, { kind, atStart, atEnd }) => {
    return sum + (kind === 'add' ? 1 : -1) * (atStart + atEnd);
  }, 0);
}

function endsInWords({ kind, atStart, atEnd }: Ends): string | null {
  const words = [atStart > 0 && `${atStart} at the start`, atEnd > 0 && `${atEnd} at the end`];
  const message = words.filter(Boolean).join(' and ');
  return message ? `${kind} ${message}` : null;
}

function moreOrFewer(by: number): string {
  return `${Math.abs(by)} ${by > 0 ? 'more' : 'fewer'}`;
}

function shapingOf(rows: readonly Row[], i: number, own: number, plan: Plan): string | null {
  const stretch = plan.stretches[rows[i]!.stretch];
  if (stretch?.kind === 'gather') return gathering(rows, i, stretch, plan);
  if (own === 0) return null;
  const many = Math.abs(own);
  const verb = own > 0 ? 'increase' : 'decrease';
  switch (stretch?.kind) {
    case 'taper':
      if (rowWord(rows) === 'round') return `${verb} ${many} in the round`;
      if (many === 1) return `${verb} 1 at one end`;
      return many % 2 === 0 ? `${verb} ${many / 2} at each end` : `${verb} ${many}`;
    case 'evenly':
      return `${verb} ${many}, spread evenly`;
    case 'eachRepeat':
      return `${verb} ${Math.abs(stretch.by)} in each of ${stretch.repeats} repeats`;
    default:
      return moreOrFewer(own);
  }
}

/** A gathering is found by a search: once for each plan. */
const gathered = new WeakMap<Gathered, ReturnType<typeof gather>['steps']>();

function gathering(rows: readonly Row[], i: number, stretch: Gathered, plan: Plan): string {
  let first = i;
  while (rows[first - 1]?.stretch === rows[i]!.stretch) first--;
  let steps = gathered.get(stretch);
  if (!steps) {
    const from = (rows[first - 1]?.count ?? plan.start) + sumOf(endsBefore(rows, first, plan));
    steps = gather({ from, to: stretch.to, rounds: stretch.rounds }).steps;
    gathered.set(stretch, steps);
  }
  const plain = steps[i - first]!.plain;
  return `(${plain === 0 ? '' : `${plain} plain, `}2 together) around`;
}
