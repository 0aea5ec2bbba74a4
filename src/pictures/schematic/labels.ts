import { wrapped } from '../charts';

/** A box on the drawing, in px. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where a label would stand if it stood alone, and along which way it may give room to others. */
export interface Wish extends Box {
  readonly along: 'x' | 'y';
  /** May move only this way: 1 towards larger, -1 towards smaller; both unless told. */
  readonly only?: 1 | -1 | undefined;
}

export function overlap(a: Box, b: Box): boolean {
  return (
    a.x < b.x + b.width - 1e-6 &&
    b.x < a.x + a.width - 1e-6 &&
    a.y < b.y + b.height - 1e-6 &&
    b.y < a.y + a.height - 1e-6
  );
}

/**
 * Places labels so that no two overlap: each as near to where it wishes to stand as those before it leave room,
 * moving along its way only. What is `taken` stays where it is.
 *
 * @example
 * const label = { x: 0, y: 0, width: 20, height: 10, along: 'y' }
 * placed([label, label])[1] // { x: 0, y: -10, width: 20, height: 10 }, above the first
 */
export function placed(wishes: readonly Wish[], taken: readonly Box[] = []): Box[] {
  const there: Box[] = [...taken];
  return wishes.map((wish) => {
    const box = nearest(wish, there);
    there.push(box);
    return box;
  });
}

function nearest(wish: Wish, there: readonly Box[]): Box {
  const { along, only, x, y, width, height } = wish;
  const box: Box = { x, y, width, height };
  // The nearest free place touches where it wishes to be, or one of those in its way.
  const inLane = there.filter((other) =>
    along === 'y'
      ? other.x < x + width - 1e-6 && x < other.x + other.width - 1e-6
      : other.y < y + height - 1e-6 && y < other.y + other.height - 1e-6,
  );
  const at = along === 'x' ? x : y;
  const indices = [
    at,
    ...inLane.flatMap((other) =>
      along === 'x' ? [other.x - width, other.x + other.width] : [other.y - height, other.y + other.height],
    ),
  ]
    .filter((index) => only === undefined || (index - at) * only >= 0)
    .sort((a, b) => Math.abs(a - at) - Math.abs(b - at));
  for (const index of indices) {
    const moved = along === 'x' ? { ...box, x: index } : { ...box, y: index };
    if (!inLane.some((other) => overlap(moved, other))) return moved;
  }
  // Beyond the last of them is always room, as long as it may go there; `places` holds that place.
  return box;
}

/**
 * How wide a text is at most, in px: there is no page to measure on. Rather too wide, so that a label set in another
 * typeface still has the room that was kept for it.
 */
export function textWidth(text: string, size: number): number {
  let em = 0;
  for (const sign of text) em += widthOf(sign);
  return em * size;
}

function widthOf(sign: string): number {
  const code = sign.codePointAt(0)!;
  if ((code >= 0x2066 && code <= 0x2069) || (code >= 0x300 && code <= 0x36f)) return 0;
  if (code >= 0x1100 && (code <= 0x115f || code >= 0x2e80)) return 1.05;
  if (/\d/.test(sign)) return 0.6;
  if (' .,:;|()[]‘’\'"'.includes(sign)) return 0.36;
  if (/\p{Lu}/u.test(sign) || 'mwMW—…%'.includes(sign)) return 0.8;
  return 0.58;
}

/** A text in lines of so many px, as wide as it may be at that size; after `most` lines it ends in an ellipsis. */
export function labelLines(text: string, width: number, size: number, most = Infinity): string[] {
  const lines = wrapped(text, width, (part) => textWidth(part, size));
  if (lines.length <= most) return lines;
  const kept = lines.slice(0, most);
  let last = [...kept[most - 1]!];
  while (last.length > 1 && textWidth(`${last.join('')}…`, size) > width) last = last.slice(0, -1);
  kept[most - 1] = `${last.join('').trimEnd()}…`;
  return kept;
}
