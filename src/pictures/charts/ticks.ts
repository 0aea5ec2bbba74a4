import { figure, fromUnit, inUnit } from './in-words';
import { everyFor, type RuledStretch } from './rulings';
import type { Shown } from './types';

export interface Tick {
  readonly value: number;
  readonly label: string;
}

/** Where an axis of lengths is marked: whole cm or inches (halves where there is room), `least` px apart or more. */
export function lengthTicks(
  [low, high]: readonly [number, number],
  pxPerCm: number,
  least: number,
  { unit, decimal }: Shown,
): Tick[] {
  const px = pxPerCm * fromUnit(1, unit);
  const halves = px / 2 >= least * 1.5;
  const step = halves ? 0.5 : everyFor(px, least);
  const ticks: Tick[] = [];
  for (let k = Math.ceil(inUnit(low, unit) / step - 1e-9); k * step <= inUnit(high, unit) + 1e-9; k++) {
    ticks.push({ value: fromUnit(k * step, unit), label: figure(k * step, halves ? 1 : 0, decimal) });
  }
  return ticks;
}

/** Where an axis of stitches is marked; `stitch` is the width of one in the units of the axis. */
export function stitchTicks(
  [low, high]: readonly [number, number],
  stitch: number,
  pxPerStitch: number,
  least: number,
): Tick[] {
  const every = everyFor(pxPerStitch, least);
  const ticks: Tick[] = [];
  for (let k = Math.ceil(low / stitch / every - 1e-9) * every; k * stitch <= high * (1 + 1e-9); k += every) {
    ticks.push({ value: k * stitch, label: String(k) });
  }
  return ticks;
}

/**
 * Where an axis along the piece is marked with row numbers: at the end of every 5th, 10th, 20th … row, where that row's
 * rule stands on the paper. Fabrics with lower rows have their ticks closer together; the step suits the closest.
 */
export function rowTicks(
  edges: Float64Array,
  stretches: readonly RuledStretch[],
  pxAlong: number,
  least: number,
): Tick[] {
  const rows = edges.length - 1;
  let closest = Infinity;
  for (const { first, end } of stretches) {
    // A stretch too short for two ticks cannot crowd them.
    const every = everyFor(((edges[end]! - edges[first]!) / (end - first)) * pxAlong, least);
    if (end - first >= every || stretches.length === 1) {
      closest = Math.min(closest, (edges[end]! - edges[first]!) / (end - first));
    }
  }
  if (closest === Infinity) closest = edges[rows]! / rows;
  const every = everyFor(closest * pxAlong, least);
  const ticks: Tick[] = [];
  for (let k = every; k <= rows; k += every) ticks.push({ value: edges[k]!, label: String(k) });
  if (ticks.length === 0) ticks.push({ value: edges[rows]!, label: String(rows) });
  return ticks;
}
