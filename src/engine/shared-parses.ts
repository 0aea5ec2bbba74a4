import { HyperFormula, type ConfigParams } from 'hyperformula';
import { nextCell } from './between-cells';

/*
 * Every size has an engine of its own, and every engine would read every formula again: half the time a notebook
 * takes to open. The engines are laid out alike and all references are absolute, so a formula means the same in each
 * of them, and is read once. HyperFormula has no door for that; where its parser is not found as it is in the version
 * that package.json asks for, each engine reads for itself, which is slower and right.
 */

interface Parser {
  parse(text: string, address: unknown): unknown;
}

const mostKept = 20_000;

/** Lets all engines of this thread share what they have read. Gives the number of formulas read so far. */
export function shareParses(settings: Partial<ConfigParams>): () => number {
  let read = 0;
  const engine = HyperFormula.buildEmpty(settings) as unknown as { _parser?: unknown };
  const prototype: unknown = Object.getPrototypeOf(engine._parser ?? {});
  if (!isParser(prototype)) return () => read;
  const alone = prototype.parse;
  let known = new Map<string, unknown>();
  prototype.parse = function (this: Parser, text, address) {
    const shared = known.get(text);
    if (shared) return shared;
    nextCell();
    const parsed = alone.call(this, text, address);
    read++;
    if (known.size >= mostKept) known = new Map();
    known.set(text, parsed);
    return parsed;
  };
  return () => read;
}

function isParser(found: unknown): found is Parser {
  return typeof found === 'object' && found !== null && 'parse' in found && typeof found.parse === 'function';
}
