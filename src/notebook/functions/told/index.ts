import { functionNamed, functions } from '..';
import type { FunctionEntry } from '../function-entry';
import { counts } from './counts';
import { doubt } from './doubt';
import { edges } from './edges';
import { lengths } from './lengths';
import { pieces } from './pieces';
import { shaping } from './shaping';
import { standard } from './standard';
import type { Told } from './told';
import { yarn } from './yarn';

export type { Told } from './told';

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
