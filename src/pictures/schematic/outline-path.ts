import { px } from './markup';
import type { Outline } from './outline';

/** Where cm of a piece lie on the drawing, in px. */
export interface Scale {
  readonly x: (cm: number) => number;
  readonly y: (cm: number) => number;
}

export interface Corner {
  readonly x: number;
  readonly y: number;
}

/** More corners than this are more than can be seen: then those closer than a tenth of a px to the last go. */
const mostCorners = 4000;

/**
 * The corners of an outline in cm, up the left edge and down the right: every row a step of its own width and height.
 * Rows as wide as the one before, at the same place, are one step with it.
 *
 * @example
 * cornersOf(outline) // for two rows of 10 cm, 1 cm high: (-5,0) (-5,2) (5,2) (5,0)
 */
export function cornersOf({ edges, left, right }: Outline): Corner[] {
  const count = left.length;
  const up: Corner[] = [];
  const down: Corner[] = [];
  for (let i = 0; i < count; i++) {
    let end = i;
    while (end + 1 < count && left[end + 1] === left[i] && right[end + 1] === right[i]) end++;
    up.push({ x: left[i]!, y: edges[i]! }, { x: left[i]!, y: edges[end + 1]! });
    down.push({ x: right[i]!, y: edges[i]! }, { x: right[i]!, y: edges[end + 1]! });
    i = end;
  }
  return [...up, ...down.reverse()];
}

/** The outline as the path of an SVG. */
export function outlinePath(outline: Outline, { x, y }: Scale): string {
  let corners = cornersOf(outline).map((corner) => ({ x: x(corner.x), y: y(corner.y) }));
  if (corners.length > mostCorners) corners = apart(corners);
  const [first, ...rest] = corners;
  if (!first) return '';
  let path = `M${px(first.x)} ${px(first.y)}`;
  let last = first;
  for (const corner of rest) {
    if (corner.x === last.x && corner.y === last.y) continue;
    if (corner.x === last.x) path += `V${px(corner.y)}`;
    else if (corner.y === last.y) path += `H${px(corner.x)}`;
    else path += `L${px(corner.x)} ${px(corner.y)}`;
    last = corner;
  }
  return `${path}Z`;
}

function apart(corners: readonly Corner[]): Corner[] {
  let last = corners[0]!;
  return corners.filter((corner, i) => {
    const far = Math.abs(corner.x - last.x) > 0.1 || Math.abs(corner.y - last.y) > 0.1;
    if (!far && i > 0 && i < corners.length - 1) return false;
    last = corner;
    return true;
  });
}
