/**
 * The rows that may have to be looked at again when some have changed, in an order in which each comes after all
 * those it uses.
 *
 * @param changed where to begin
 * @param usersOf the rows whose formulas use a row and depend on its unit
 * @param passesOn whether a change in a row can change its unit, and so its users
 */
export function affected(
  changed: Iterable<number>,
  usersOf: (row: number) => readonly number[],
  passesOn: (row: number) => boolean,
): number[] {
  const seen = new Set<number>();
  const finished: number[] = [];
  for (const start of changed) {
    if (seen.has(start)) continue;
    seen.add(start);
    const path = [{ row: start, users: passesOn(start) ? usersOf(start) : [], next: 0 }];
    while (path.length > 0) {
      const at = path.at(-1)!;
      const user = at.users[at.next++];
      if (user === undefined) {
        finished.push(at.row);
        path.pop();
      } else if (!seen.has(user)) {
        seen.add(user);
        path.push({ row: user, users: passesOn(user) ? usersOf(user) : [], next: 0 });
      }
    }
  }
  return finished.reverse();
}
