import { workPiece, type Order, type Piece } from '../../craft';
import { offsOf, tapersIn } from './ideal-line';
import { isWorked } from './series';
import type { Overlay, PlotSpec, WorkedSize } from './types';

/** The three orders of a taper, as the page calls them. */
export const orderLabels: Readonly<Record<Order, string>> = {
  longFirst: 'longer intervals first',
  shortFirst: 'shorter intervals first',
  spread: 'intervals spread evenly',
};
const orders = Object.keys(orderLabels) as Order[];

/**
 * The same piece with its tapers in another order: as many shaping rows over as many rows, elsewhere.
 *
 * @example
 * workPiece(inOrder(sleeve, 'spread')).length === workPiece(sleeve).length // true
 */
export function inOrder<P extends Pick<Piece, 'stretches'>>(piece: P, order: Order): P {
  return {
    ...piece,
    stretches: piece.stretches.map((stretch) => (stretch.kind === 'taper' ? { ...stretch, order } : stretch)),
  };
}

/** The order of all the tapers of a piece; null where it has none, or they differ. */
export function orderOf({ stretches }: Pick<Piece, 'stretches'>): Order | null {
  const used = new Set(
    stretches.flatMap((stretch) => (stretch.kind === 'taper' ? [stretch.order ?? 'longFirst'] : [])),
  );
  return used.size === 1 ? [...used][0]! : null;
}

/** A size whose whole plan is at hand. */
export interface PlannedSize extends WorkedSize {
  readonly plan?: Piece | undefined;
}

/**
 * The other orders of a piece's tapers, to be drawn over it: two, or all three where its own tapers differ. A size that
 * cannot be worked in its own order has none.
 *
 * @example
 * otherOrders(sizes).map(({ id }) => id) // ['shortFirst', 'spread'], of a sleeve with its longer intervals first
 */
export function otherOrders(sizes: readonly PlannedSize[]): Overlay[] {
  const plan = sizes.find((size) => isWorked(size) && size.plan)?.plan;
  if (!plan || !plan.stretches.some(({ kind }) => kind === 'taper')) return [];
  const own = orderOf(plan);
  return orders.flatMap((order): Overlay[] => {
    if (order === own) return [];
    return [
      {
        id: order,
        label: orderLabels[order],
        kind: 'what-if',
        sizes: sizes.map(({ id, label, rows, plan }) => ({
          id,
          label,
          rows: rows && plan ? workPiece(inOrder(plan, order)) : null,
        })),
      },
    ];
  });
}

/** How far each row of the tapers among some rows is off its straight line, in stitches; null for rows of no taper. */
export function offsByRow(
  rows: NonNullable<WorkedSize['rows']>,
  stretches?: PlotSpec['stretches'],
): (number | null)[] {
  const offs: (number | null)[] = rows.map(() => null);
  for (const taper of tapersIn(rows, stretches)) {
    offsOf(rows, taper).forEach((off, i) => (offs[taper.first + i] = off));
  }
  return offs;
}
