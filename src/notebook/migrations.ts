type File = Record<string, unknown>;

/**
 * The steps from each version of the file to the next: `migrations[1]` makes a file of version 2 from one of version 1.
 * A step gets what was read, checked for nothing but its size, and gives back what the next version's reader checks.
 */
export const migrations: Readonly<Record<number, (file: File) => File>> = {
  // Version 2 adds a kind of cell, as made, and the checks `steady` and `meet`; nothing that was there is changed.
  1: (file) => file,
};

/** What was read from a file of a version, as a file of the version `to`, or of the newest. */
export function migrated(file: unknown, version: number, steps = migrations, to = Infinity): unknown {
  let now = file as File;
  for (let at = version; at < to && steps[at]; at++) now = { ...steps[at]!(now), version: at + 1 };
  return now;
}
