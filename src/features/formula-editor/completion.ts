import {
  deepestBrackets,
  longestFormula,
  sameName,
  unitInWords,
  type FunctionEntry,
  readCheckedFormula,
  functionNamed,
  functions,
  docsOf,
} from '../../formulas';
import { nameTable, type Named, type Notebook } from '../../notebook';
import { partsOf } from './formula-parts';

/** Something that could stand where a word of a formula is being typed. */
export interface Completion {
  readonly text: string;
  readonly about: string;
  /** What it is, or gives, in words: "a length". Empty where that is not known, or depends. */
  readonly unit: string;
  readonly kind: 'name' | 'function';
}

/** Farther back than any name reaches. */
const farthest = 256;

/** The word that ends at the caret, and where it begins; empty where the caret stands after no word. */
export function wordBefore(text: string, caret: number): { word: string; start: number } {
  const near = text.slice(Math.max(0, caret - farthest), caret);
  const word = near.match(/[\p{L}_][\p{L}\p{M}\p{N}_]*$/u)?.[0] ?? '';
  return { word, start: caret - word.length };
}

const most = 8;

/**
 * Names and functions that a word may become: those that begin with it before those that only contain it, and
 * names by their labels too, so that "waist" finds what is called back_waist_length. `unitOf` tells what a name is,
 * in words.
 */
export function completions(
  notebook: Notebook,
  word: string,
  unitOf: (named: Named) => string = () => '',
): Completion[] {
  if (!word) return [];
  const wanted = sameName(word);
  const found: { made: () => Completion; rank: number; length: number }[] = [];
  const offer = (made: () => Completion, keys: readonly string[]): void => {
    const ranks = keys.map((key) => sameName(key).indexOf(wanted)).filter((at) => at >= 0);
    if (ranks.length === 0) return;
    const exact = sameName(keys[0]!) === wanted;
    const rank = exact ? -1 : Math.min(...ranks) > 0 ? 1 : 0;
    found.push({ made, rank, length: keys[0]!.length });
  };
  for (const named of nameTable(notebook).values()) {
    const { name, label } = named;
    offer(() => ({ text: name, about: label, unit: unitOf(named), kind: 'name' }), [name, label]);
  }
  for (const { name, gives } of functions) {
    const unit = gives === 'any' ? '' : `gives ${unitInWords(gives)}`;
    offer(() => ({ text: `${name}(`, about: docsOf(name)?.about ?? '', unit, kind: 'function' }), [name]);
  }
  return found
    .toSorted((a, b) => a.rank - b.rank || a.length - b.length)
    .slice(0, most)
    .map(({ made }) => made());
}

/** The function whose brackets the caret stands in, and which of its arguments is being typed. */
export function callAround(
  text: string,
  caret: number,
  decimal: '.' | ',',
): { entry: FunctionEntry; argument: number } | undefined {
  if (text.length > longestFormula) return undefined;
  const calls: { entry: FunctionEntry | undefined; argument: number }[] = [];
  let word: string | undefined;
  for (const part of partsOf(text.slice(0, caret), decimal)) {
    if (part.kind === 'open') {
      calls.push({ entry: word === undefined ? undefined : functionNamed(word), argument: 0 });
    } else if (part.kind === 'close') calls.pop();
    else if (part.kind === 'separator' && calls.length > 0) calls.at(-1)!.argument++;
    if (part.kind !== 'space') word = part.kind === 'function' ? part.text : undefined;
  }
  const inner = calls.findLast((call) => call.entry !== undefined);
  return inner?.entry ? { entry: inner.entry, argument: inner.argument } : undefined;
}

/** A formula that is worth asking the sheet about: one that can be read whole. */
export function readable(text: string, decimal: '.' | ','): boolean {
  return 'tokens' in readCheckedFormula(text, decimal);
}

/**
 * Why a formula cannot be, where going on with it would not put it right: one that is too long or too deep, or goes
 * wrong before its end. Nothing is said of one that is only not finished.
 */
export function wrongAlready(text: string, decimal: '.' | ','): string | undefined {
  const read = readCheckedFormula(text, decimal);
  if ('tokens' in read) return undefined;
  if (text.length > longestFormula) return read.problem;
  const open = depthOf(text, decimal);
  if (open > deepestBrackets) return read.problem;
  const closed = readCheckedFormula(text + ')'.repeat(Math.max(open, 0)), decimal);
  return 'problem' in closed && closed.end < text.trimEnd().length ? closed.problem : undefined;
}

/** Brackets that are open at the end of a text. */
function depthOf(text: string, decimal: '.' | ','): number {
  return partsOf(text, decimal).reduce(
    (open, { kind }) => open + Number(kind === 'open') - Number(kind === 'close'),
    0,
  );
}
