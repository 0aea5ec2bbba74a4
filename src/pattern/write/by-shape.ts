import type { BySize } from './size-list';

/**
 * Sizes put together by the shape of what they do. A size that does nothing goes with the others where there is one
 * group, and its numbers are dashes there; where there are several, it is in none.
 *
 * @example byShape(['a', null, 'a'])      // [[0, 1, 2]]
 * @example byShape(['a', 'b', null, 'a']) // [[0, 3], [1]]
 */
export function byShape(shapes: BySize<string>): number[][] {
  const groups = new Map<string, number[]>();
  shapes.forEach((shape, sizeIndex) => {
    if (shape === null) return;
    const group = groups.get(shape);
    if (group) group.push(sizeIndex);
    else groups.set(shape, [sizeIndex]);
  });
  const list = [...groups.values()];
  return list.length === 1 ? [shapes.map((_shape, sizeIndex) => sizeIndex)] : list;
}
