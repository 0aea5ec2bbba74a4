import type { Side } from '../../craft';
import type { JoinEdge } from '../../notebook';
import type { Outline } from './outline';

const both = ['left', 'right'] as const;
const otherSide = { left: 'right', right: 'left' } as const;

/**
 * Which of the two row ends of a piece an edge means: the ones a join's letter stands on.
 *
 * 'stepped' is the edge of the underarm and the side seam, 'other' the opposite one, of the neck or the front. The
 * underarm's edge is where stitches are left first, those of a neck aside; where none are, an armhole is shaped at it,
 * or a neck at the other one. A piece whose two edges are alike has both.
 *
 * @param first, last the rows of the stretch that is joined
 */
export function sidesOf(outline: Outline, edge: JoinEdge, first: number, last: number): readonly Side[] {
  if (outline.drawn === 0.5 || !edge.side) return both;
  if (edge.side === 'other' && edge.stretch !== undefined) {
    const sides = oneSided(outline, (row) => row >= first && row <= last);
    if (sides) return [sides];
  }
  const stepped = underarmOf(outline);
  if (!stepped) return both;
  return [edge.side === 'stepped' ? stepped : otherSide[stepped]];
}

/** The only edge at which rows are shaped; undefined where none or both are. */
function oneSided({ shaped }: Outline, isIn: (row: number) => boolean): Side | undefined {
  const rows = shaped.filter(({ row, across }) => !across && isIn(row));
  const sides = both.filter((one) => rows.some((row) => row[one]));
  return sides.length === 1 ? sides[0] : undefined;
}

function underarmOf(outline: Outline): Side | undefined {
  const called = (stretch: number): string => outline.plan?.stretches[stretch]?.label ?? '';
  const isNeck = (stretch: number): boolean => /\bneck/iu.test(called(stretch));
  const steps = outline.steps.filter(({ stretch }) => !isNeck(stretch));
  const [step] = steps;
  if (step) {
    const edges = new Set(steps.filter(({ stretch }) => stretch === step.stretch).map(({ edge }) => edge));
    return edges.size === 1 ? step.edge : undefined;
  }
  const stretchOf = (row: number): number => outline.rows[row]!.stretch;
  const armhole = oneSided(outline, (row) => /\barmhole/iu.test(called(stretchOf(row))));
  if (armhole) return armhole;
  const neckStep = new Set(outline.steps.map(({ edge }) => edge));
  const neck = neckStep.size === 1 ? [...neckStep][0] : oneSided(outline, (row) => isNeck(stretchOf(row)));
  return neck && otherSide[neck];
}
