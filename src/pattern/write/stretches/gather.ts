import { gather } from '../../../craft';
import type { PieceWriter } from '../piece-writer';
import { shapedRow, type ShapedRow } from './shaped-row';
import type { StretchBySize } from './stretch';

/** Gathering, round by round: "Next round: *sc 3, sc2tog; rep from * around [80 sts]." */
export function gatherLines(writer: PieceWriter, stretch: StretchBySize): void {
  const rounds = Math.max(...stretch.sizes.map(({ counts }) => counts.length));
  const plans = stretch.sizes.map(({ stretch: plan, from }) =>
    plan.kind === 'gather' ? gather({ from, to: plan.to, rounds: plan.rounds }).steps : [],
  );
  for (let round = 0; round < rounds; round++) {
    shapedRow(writer, `${stretch.name} ${round + 1}`, stretch, {
      rows: stretch.sizes.map(({ from, counts }, sizeIndex): ShapedRow | null => {
        const step = plans[sizeIndex]![round];
        if (!step) return null;
        const before = round === 0 ? from : counts[round - 1]!;
        const group = step.plain + 2;
        const gaps = new Array<number>(Math.floor(before / group)).fill(step.plain);
        return { kind: 'spaced', plan: { kind: 'decrease', gaps, last: before % group } };
      }),
      counts: stretch.sizes.map(({ counts }) => counts[round] ?? null),
      sides: stretch.sizes.map(({ side }) => turned(side, round)),
    });
  }
}

/** The side of the row that is so many after one. */
export function turned(side: 'RS' | 'WS' | 'round', rows: number): 'RS' | 'WS' | 'round' {
  if (side === 'round' || rows % 2 === 0) return side;
  return side === 'RS' ? 'WS' : 'RS';
}
