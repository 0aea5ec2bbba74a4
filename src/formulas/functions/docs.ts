import { functionNamed, functions } from './signatures';
import type { FunctionEntry } from './function-entry';
import { counts } from './counts.docs';
import { uncertainty } from './uncertainty.docs';
import { edges } from './edges.docs';
import { lengths } from './lengths.docs';
import { pieces } from './pieces.docs';
import { shaping } from './shaping.docs';
import { standard } from './standard.docs';
import type { FunctionDocs } from './function-docs';
import { yarn } from './yarn.docs';

export type { FunctionDocs } from './function-docs';

/** A function with what is told of it. Apart from its entry, so that a page can load it when it is read. */
export type DocumentedFunction = FunctionEntry & FunctionDocs;

const docs: Readonly<Record<string, FunctionDocs>> = {
  ...lengths,
  ...counts,
  ...shaping,
  ...edges,
  ...pieces,
  ...yarn,
  ...uncertainty,
  ...standard,
};

/** Every function with what is told of it, family by family. */
export const documentedFunctions: readonly DocumentedFunction[] = functions.map((entry) => ({
  ...entry,
  ...docs[entry.name]!,
}));

/** What is told of a function, by its name in any case; undefined where it is not offered. */
export function docsOf(name: string): FunctionDocs | undefined {
  const entry = functionNamed(name);
  return entry && docs[entry.name];
}
