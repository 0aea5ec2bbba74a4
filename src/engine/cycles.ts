/** How a row uses itself: the shortest way from the row back to it, where the circle is small enough to follow. */
export interface Cycle {
  readonly size: number;
  readonly path?: readonly number[];
}

/** In a larger tangle the ways round are not looked for: no one would read them. */
const mostToFollow = 60;

/**
 * The rows that use themselves, directly or through others, out of those given.
 *
 * @param rows where to look
 * @param uses the rows that a row uses, in the order of its formula
 * @example cycles([0, 1, 2], (row) => [[1], [0], [0]][row]).get(0).path // [0, 1, 0]; 2 uses a circle and is in none
 */
export function cycles(rows: Iterable<number>, uses: (row: number) => readonly number[]): Map<number, Cycle> {
  const found = new Map<number, Cycle>();
  for (const group of stronglyConnectedComponents(rows, uses)) {
    const size = group.length;
    for (const row of group) {
      const way = size > mostToFollow ? undefined : shortestCycle(row, uses);
      found.set(row, way ? { size, path: way } : { size });
    }
  }
  return found;
}

/** The shortest way from a row back to itself; of equals, the one whose names come first in the formulas. */
export function shortestCycle(start: number, uses: (row: number) => readonly number[]): number[] | undefined {
  const cameFrom = new Map<number, number>();
  const queue = [start];
  for (const at of queue) {
    for (const next of uses(at)) {
      if (next === start) {
        const way = [start];
        for (let back = at; back !== start; back = cameFrom.get(back)!) way.unshift(back);
        return [start, ...way];
      }
      if (!cameFrom.has(next)) {
        cameFrom.set(next, at);
        queue.push(next);
      }
    }
  }
  return undefined;
}

/** Groups of rows that all lead to each other (Tarjan's strongly connected components), without recursion. */
function stronglyConnectedComponents(
  rows: Iterable<number>,
  uses: (row: number) => readonly number[],
): number[][] {
  const order = new Map<number, number>();
  const lowest = new Map<number, number>();
  const open: number[] = [];
  const isOpen = new Set<number>();
  const groups: number[][] = [];
  const enter = (row: number): { row: number; next: number } => {
    order.set(row, order.size);
    lowest.set(row, order.get(row)!);
    open.push(row);
    isOpen.add(row);
    return { row, next: 0 };
  };
  for (const start of rows) {
    if (order.has(start)) continue;
    const path = [enter(start)];
    while (path.length > 0) {
      const at = path.at(-1)!;
      const next = uses(at.row)[at.next++];
      if (next !== undefined) {
        if (!order.has(next)) path.push(enter(next));
        else if (isOpen.has(next)) lowest.set(at.row, Math.min(lowest.get(at.row)!, order.get(next)!));
        continue;
      }
      path.pop();
      const above = path.at(-1);
      if (above) lowest.set(above.row, Math.min(lowest.get(above.row)!, lowest.get(at.row)!));
      if (lowest.get(at.row) !== order.get(at.row)) continue;
      const group = open.splice(open.lastIndexOf(at.row));
      for (const row of group) isOpen.delete(row);
      if (group.length > 1 || uses(at.row).includes(at.row)) groups.push(group);
    }
  }
  return groups;
}
