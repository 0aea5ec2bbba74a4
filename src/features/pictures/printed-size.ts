/** A CSS px is a 96th of an inch, and printers are given 300 dots to one. */
const dotsPerPx = 300 / 96;

/** Browsers draw no larger canvas than this, on a side and in all. */
const most = { side: 16_000, area: 120e6 };

/**
 * How many dots wide and high a picture of so many px is printed: at 300 to the inch, or fewer where it would be too
 * large to draw.
 *
 * @example printedSize(96, 192) // { width: 300, height: 600, dpi: 300 }
 */
export function printedSize(width: number, height: number): { width: number; height: number; dpi: number } {
  const perPx = Math.min(
    dotsPerPx,
    most.side / width,
    most.side / height,
    Math.sqrt(most.area / (width * height)),
  );
  return { width: Math.round(width * perPx), height: Math.round(height * perPx), dpi: 96 * perPx };
}
