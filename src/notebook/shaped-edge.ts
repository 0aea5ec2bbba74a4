import type { PieceCell, TaperStretch } from './document';

type Side = 'left' | 'right';
const otherSide = { left: 'right', right: 'left' } as const;

/**
 * Which edge of the fabric a taper is shaped at, where the labels say so: the piece is called a left or a right front
 * or back, which is the wearer's, and the stretch a neck or an armhole. The right side facing, a left front has its
 * neck at the left edge and its armhole at the right; a left back the other way round.
 *
 * @returns undefined where they do not say; `RowEdges` of `craft` then finds it from the rows before
 * @example shapedEdge({ label: 'Right front', … }, { label: 'Neck to shoulder', … }) // 'right'
 *
 * Source: common practice.
 */
export function shapedEdge({ label, worked }: PieceCell, stretch: TaperStretch): Side | undefined {
  const [left, right] = [/\bleft\b/iu.test(label), /\bright\b/iu.test(label)];
  const [front, back] = [/\bfront\b/iu.test(label), /\bback\b/iu.test(label)];
  const [neck, armhole] = [/\bneck/iu.test(stretch.label), /\barmhole/iu.test(stretch.label)];
  if (worked === 'round' || left === right || front === back || neck === armhole) return undefined;
  const wearers: Side = left ? 'left' : 'right';
  return front === neck ? wearers : otherSide[wearers];
}
