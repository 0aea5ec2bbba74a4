import { functionNamed, functions } from './signatures';
import type { FunctionEntry } from './function-entry';
import { counts } from './counts.docs';
import { doubt } from './doubt.docs';
import { edges } from './edges.docs';
import { lengths } from './lengths.docs';
import { pieces } from './pieces.docs';
import { shaping } from './shaping.docs';
import { standard } from './standard.docs';
import type { Told } from './function-docs';
import { yarn } from './yarn.docs';

export type { Told } from './function-docs';

/** A function with what is told of it. Apart from its entry, so that a page can load it when it is read. */
export type ToldFunction = FunctionEntry & Told;

const told: Readonly<Record<string, Told>> = {
  ...lengths,
  ...counts,
  ...shaping,
  ...edges,
  ...pieces,
  ...yarn,
  ...doubt,
  ...standard,
};

/** Every function with what is told of it, family by family. */
export const toldFunctions: readonly ToldFunction[] = functions.map((entry) => ({
  ...entry,
  ...told[entry.name]!,
}));

/** What is told of a function, by its name in any case; undefined where it is not offered. */
export function toldOf(name: string): Told | undefined {
  const entry = functionNamed(name);
  return entry && told[entry.name];
}
