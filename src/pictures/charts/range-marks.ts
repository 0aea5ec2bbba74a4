import { markPositionsIn } from './mark-positions';

/** A result over a range as it is drawn: a value for each step, null where there is none. */
export interface RangedLine {
  readonly steps: readonly number[];
  readonly values: readonly (number | null)[];
  readonly stairs: boolean;
}

/**
 * The value of the drawn line between two steps too: a stair changes midway from one step to the next; other lines go
 * straight. Undefined where no line is drawn.
 *
 * @example lineAt({ steps: [0, 10], values: [4, 8], stairs: true }, 6) // 8
 * @example lineAt({ steps: [0, 10], values: [4, 8], stairs: false }, 5) // 6
 */
export function lineAt({ steps, values, stairs }: RangedLine, at: number): number | undefined {
  const next = steps.findIndex((step) => step >= at);
  if (next < 0) return undefined;
  const [after, afterIs] = [steps[next]!, values[next] ?? undefined];
  if (after === at) return afterIs;
  const [before, beforeIs] = [steps[next - 1], values[next - 1] ?? undefined];
  if (before === undefined || beforeIs === undefined || afterIs === undefined) return undefined;
  const part = (at - before) / (after - before);
  if (stairs) return part < 0.5 ? beforeIs : afterIs;
  return beforeIs + part * (afterIs - beforeIs);
}

/**
 * Where the marks stand that tell the line of a size without its colour and its dashes.
 *
 * @param sizeIndex of the size among the notebook's sizes, from 0
 * @param stepAt the place of a pixel along the range, in the units of its steps
 */
export function rangeMarks(
  line: RangedLine,
  sizeIndex: number,
  [left, right]: readonly [number, number],
  stepAt: (x: number) => number,
): { readonly x: number; readonly value: number }[] {
  return markPositionsIn(left, right, sizeIndex).flatMap((x) => {
    const value = lineAt(line, stepAt(x));
    return value === undefined ? [] : [{ x, value }];
  });
}
