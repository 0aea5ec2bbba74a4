import { counts } from './counts';
import { doubt } from './doubt';
import { edges } from './edges';
import type { Family, FunctionEntry, Listed } from './function-entry';
import { lengths } from './lengths';
import { pieces } from './pieces';
import { shaping } from './shaping';
import { standard } from './standard';
import { yarn } from './yarn';

export { families } from './function-entry';
export type { Argument, Family, FunctionEntry } from './function-entry';

const listed: Readonly<Record<Family, readonly Listed[]>> = {
  Lengths: lengths,
  'Counts and repeats': counts,
  Shaping: shaping,
  'Edges and joins': edges,
  Pieces: pieces,
  'Yarn and time': yarn,
  'Give or take': doubt,
  "The standard's": standard,
};

/** The functions a formula may use, family by family. */
export const functions: readonly FunctionEntry[] = (Object.keys(listed) as Family[]).flatMap((family) =>
  listed[family].map((entry) => ({
    ...entry,
    family,
    of: family === "The standard's" ? ('the standard' as const) : ('the trade' as const),
  })),
);

const byName = new Map(functions.map((entry) => [entry.name, entry]));

/** The entry of a function by its name, in any case; undefined where it is not offered. */
export function functionNamed(name: string): FunctionEntry | undefined {
  return byName.get(name.toUpperCase());
}
