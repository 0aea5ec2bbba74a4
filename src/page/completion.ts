import {
  functionNamed,
  functions,
  nameTable,
  readFormula,
  sameName,
  type FunctionEntry,
  type Notebook,
} from '../notebook';

/** Something that could stand where a word of a formula is being typed. */
export interface Completion {
  readonly text: string;
  readonly about: string;
  readonly kind: 'name' | 'function';
}

/** The word that ends at the caret, and where it begins; empty where the caret stands after no word. */
export function wordBefore(text: string, caret: number): { word: string; start: number } {
  const word = text.slice(0, caret).match(/[\p{L}_][\p{L}\p{M}\p{N}_]*$/u)?.[0] ?? '';
  return { word, start: caret - word.length };
}

const most = 8;

/**
 * Names and functions that a word may become: those that begin with it before those that only contain it, and
 * names by their labels too, so that "waist" finds what is called back_waist_length.
 */
export function completions(notebook: Notebook, word: string): Completion[] {
  if (!word) return [];
  const wanted = sameName(word);
  const found: { completion: Completion; rank: number }[] = [];
  const offer = (completion: Completion, ...keys: string[]): void => {
    const ranks = keys.map((key) => sameName(key).indexOf(wanted)).filter((at) => at >= 0);
    if (ranks.length === 0) return;
    const exact = sameName(keys[0]!) === wanted;
    found.push({ completion, rank: exact ? -1 : Math.min(...ranks) > 0 ? 1 : 0 });
  };
  for (const { name, label } of nameTable(notebook).values()) {
    offer({ text: name, about: label, kind: 'name' }, name, label);
  }
  for (const entry of functions) {
    offer({ text: `${entry.name}(`, about: entry.about, kind: 'function' }, entry.name);
  }
  return found
    .toSorted((a, b) => a.rank - b.rank || a.completion.text.length - b.completion.text.length)
    .slice(0, most)
    .map(({ completion }) => completion);
}

/** The function whose brackets the caret stands in, and which of its arguments is being typed. */
export function callAround(
  text: string,
  caret: number,
  decimal: '.' | ',',
): { entry: FunctionEntry; argument: number } | undefined {
  // Closing what is open makes an unfinished formula readable as far as its tokens go.
  const calls: { entry: FunctionEntry | undefined; argument: number }[] = [];
  const words = /"(?:[^"]|"")*"?|[\p{L}_][\p{L}\p{M}\p{N}_]*\s*\(|[();,]/gu;
  for (const [part] of text.slice(0, caret).matchAll(words)) {
    if (part.endsWith('(')) calls.push({ entry: functionNamed(part.slice(0, -1).trim()), argument: 0 });
    else if (part === ')') calls.pop();
    else if (part === ';' || (part === ',' && decimal === '.')) {
      const call = calls.at(-1);
      if (call) call.argument++;
    }
  }
  const inner = calls.findLast((call) => call.entry !== undefined);
  return inner?.entry ? { entry: inner.entry, argument: inner.argument } : undefined;
}

/** A formula that is worth asking the sheet about: one that can be read whole. */
export function readable(text: string, decimal: '.' | ','): boolean {
  return 'tokens' in readFormula(text, decimal);
}
