import { fitCount } from './fit-count';
import { cm, oneOf, perCm, rowsOver, whole } from './numbers';
import type { Rule } from './types';

/**
 * The rows of a rib worked sideways along an edge, as crochet ribs are: its rows run up the edge, so it is the row
 * gauge that measures the edge.
 *
 * rows = edge length × row gauge, made even so that the rib ends on a full ridge. Along its row ends it takes
 * `pickUp({ rows, stitches })` stitches, or is joined to them.
 *
 * @param o.length the length of the edge, cm
 * @param o.rowsPerCm the rib's row gauge
 * @param o.rule to the nearest even number (unless told), up or down
 * @returns `rows`; the `exact` rows the edge asks for; `off` = rows − exact
 * @throws CraftError where the length or the gauge is not more than 0, and where 'down' finds fewer than 2 rows
 * @example
 * sidewaysRib({ length: 92, rowsPerCm: 1.5 }) // { rows: 138, exact: 138, off: 0 }
 *
 * Source: common practice.
 */
export function sidewaysRib(o: { length: number; rowsPerCm: number; rule?: Rule }): {
  rows: number;
  exact: number;
  off: number;
} {
  const length = cm(o.length, 'The length of the edge');
  const gauge = perCm(o.rowsPerCm, "The rib's row gauge");
  const rule = oneOf(o.rule ?? 'nearest', ['nearest', 'up', 'down'], 'The rule for making the rows even');
  const exact = whole(rowsOver(length, gauge));
  const { count, off } = fitCount(exact, [], rule, 'even');
  return { rows: count, exact, off };
}
