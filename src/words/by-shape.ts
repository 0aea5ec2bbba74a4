import type { BySize } from './size-list';

/**
 * Sizes put together by the shape of what they do. A size that does nothing goes with the first group, where its
 * numbers are dashes.
 *
 * @example byShape(['a', 'b', null, 'a']) // [[0, 2, 3], [1]]
 */
export function byShape(shapes: BySize<string>): number[][] {
  const groups = new Map<string, number[]>();
  shapes.forEach((shape, place) => {
    if (shape === null) return;
    const group = groups.get(shape);
    if (group) group.push(place);
    else groups.set(shape, [place]);
  });
  const list = [...groups.values()];
  const [first] = list;
  if (!first) return [];
  shapes.forEach((shape, place) => {
    if (shape === null) first.push(place);
  });
  first.sort((a, b) => a - b);
  return list;
}
