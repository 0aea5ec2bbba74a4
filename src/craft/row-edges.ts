import type { EdgeStep, Row, Side, Stretch } from './types';

const otherSide = { left: 'right', right: 'left' } as const;
/** Most rows change nothing, and a piece has thousands: they share it. */
const unchanged: Row['edges'] = { left: 0, right: 0 };

/**
 * Finds at which edge each row of a piece grows or shrinks. Seen from the right side, a right-side row is worked from
 * the right edge to the left, a wrong-side row from the left to the right (right-handed work).
 *
 * - Stitches left or added at the start or the end of a row are taken from that edge.
 * - A taper takes half of each step from either edge; a stitch left over, or a taper by one stitch, comes from one edge
 *   alone: the one its plan names. Where it names none, that is the edge where the row before it was shaped at one
 *   side, as an underarm's curve goes on; after plain rows the other edge, as a neck lies opposite the armhole; with
 *   neither before it, the left edge.
 * - All other shaping is spread across the row and is at neither edge. Nor is any in the round.
 *
 * Source: common practice; the rule for a taper by one stitch is our own.
 */
export class RowEdges {
  readonly #steps: EdgeStep[] = [];
  /** The edge shaped last at one side alone, and whether plain rows came since. */
  #oneSided: Side | null = null;
  #plainSince = false;

  /** Stitches left or added before the next row, which is on `side`. */
  step(stretch: Stretch & { kind: 'leave' | 'add' }, index: number, side: Row['side']): void {
    if (side === 'round') return;
    const { atStart, atEnd, kind } = stretch;
    const [left, right] = side === 'WS' ? [atStart, atEnd] : [atEnd, atStart];
    if (left > 0 || right > 0) this.#steps.push({ stretch: index, kind, left, right });
  }

  /** The next row, whose own shaping changes its count by `own`. */
  row(stretch: Stretch, own: number, side: Row['side']): Pick<Row, 'edges' | 'steps'> {
    if (side === 'round') return { edges: unchanged };
    const steps = this.#steps.splice(0);
    const edges = { left: 0, right: 0 };
    for (const { kind, left, right } of steps) {
      const sign = kind === 'add' ? 1 : -1;
      edges.left += sign * left;
      edges.right += sign * right;
    }
    if (edges.left !== edges.right) {
      this.#oneSided = Math.abs(edges.left) > Math.abs(edges.right) ? 'left' : 'right';
      this.#plainSince = false;
    }
    if (stretch.kind === 'taper') this.#taper(edges, own, stretch.edge);
    else if (own === 0) this.#plainSince = true;
    if (steps.length > 0) return { edges, steps };
    return { edges: edges.left === 0 && edges.right === 0 ? unchanged : edges };
  }

  #taper(edges: Record<Side, number>, own: number, ownSide: Side | undefined): void {
    const each = Math.trunc(own / 2);
    const odd = own - 2 * each;
    edges.left += each;
    edges.right += each;
    if (odd === 0) return;
    const edge = ownSide ?? this.#edgeOfOne();
    edges[edge] += odd;
    this.#oneSided = edge;
    this.#plainSince = false;
  }

  #edgeOfOne(): Side {
    if (this.#oneSided === null) return 'left';
    return this.#plainSince ? otherSide[this.#oneSided] : this.#oneSided;
  }
}
