import { counts } from './counts.signature';
import { uncertainty } from './uncertainty.signature';
import { edges } from './edges.signature';
import type { Family, FunctionEntry, FunctionSignature } from './function-entry';
import { lengths } from './lengths.signature';
import { pieces } from './pieces.signature';
import { shaping } from './shaping.signature';
import { standard } from './standard.signature';
import { yarn } from './yarn.signature';

export { families } from './function-entry';
export type { Argument, Family, FunctionEntry } from './function-entry';

const byGroup: Readonly<Record<Family, readonly FunctionSignature[]>> = {
  Lengths: lengths,
  'Counts and repeats': counts,
  Shaping: shaping,
  'Edges and joins': edges,
  Pieces: pieces,
  'Yarn and time': yarn,
  'Give or take': uncertainty,
  "The standard's": standard,
};

/** The functions a formula may use, family by family. */
export const functions: readonly FunctionEntry[] = (Object.keys(byGroup) as Family[]).flatMap((family) =>
  byGroup[family].map((entry) => ({
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
