/**
 * Places of one row by the lines they are drawn on: a sentence that is wider than the grid goes over several, and so do
 * the counts of a swatch.
 *
 * @param items in the order they are read
 */
export function linesDrawn<T extends Pick<Element, 'getBoundingClientRect'>>(items: readonly T[]): T[][] {
  const lines: T[][] = [];
  let bottom = -Infinity;
  for (const item of items) {
    const box = item.getBoundingClientRect();
    if (lines.length === 0 || (box.top + box.bottom) / 2 > bottom) {
      lines.push([]);
      bottom = box.bottom;
    }
    lines.at(-1)!.push(item);
  }
  return lines;
}
