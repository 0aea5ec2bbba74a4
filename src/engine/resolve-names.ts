import { readCheckedFormula, sameName, type FormulaProblem, type Token } from '../formulas';
import { own } from './own-functions';
import type { Names } from './names';

/** A stored formula, taken apart once. */
export interface Reading {
  readonly tokens: readonly Token[];
  /** The names in it, as they are compared, each once, in order. */
  readonly names: readonly string[];
}

/** Takes a stored formula apart, or tells what is wrong with it; one a cell made itself may be of any length. */
export function reading(formula: string, made = false): Reading | FormulaProblem {
  const read = readCheckedFormula(formula, '.', made ? Infinity : undefined);
  if ('problem' in read) return read;
  const tokens = read.tokens.filter((token) => token.kind !== 'space');
  const wrong = unreadable(tokens);
  if (wrong) return wrong;
  const names = tokens.filter((token) => token.kind === 'name').map((token) => sameName(token.text));
  return { tokens, names: [...new Set(names)] };
}

/** What the tokenizer lets pass and HyperFormula cannot take. */
function unreadable(tokens: readonly Token[]): FormulaProblem | undefined {
  for (const [index, { kind, text, start, end }] of tokens.entries()) {
    if (text === '%' && tokens[index - 1]?.text === '%') {
      return { problem: 'One % is enough here.', start, end };
    }
    if (kind === 'number' && !Number.isFinite(Number(text))) {
      return { problem: 'This number is too large to be worked.', start, end };
    }
  }
  return undefined;
}

/** A formula with its names found. */
export interface Linked {
  /** As HyperFormula reads it, without the `=`. */
  readonly text: string;
  /** The rows it uses, each once, in order. */
  readonly uses: readonly number[];
}

/** Turns the names of a formula into absolute references; or tells which name stands for nothing. */
export function linked({ tokens, names }: Reading, table: Names): Linked | FormulaProblem {
  const rows = new Map<string, number>();
  for (const name of names) {
    const row = table.find(name);
    if (typeof row !== 'number') {
      const token = tokens.find(({ kind, text }) => kind === 'name' && sameName(text) === name)!;
      return { problem: row.problem, start: token.start, end: token.end };
    }
    rows.set(name, row);
  }
  let text = '';
  for (const token of tokens) text += engineText(token, rows);
  return { text, uses: [...new Set(rows.values())] };
}

function engineText({ kind, text }: Token, rows: ReadonlyMap<string, number>): string {
  switch (kind) {
    case 'name':
      return `$A$${rows.get(sameName(text))! + 1}`;
    case 'number':
      return String(Number(text));
    case 'text': {
      const inner = text.slice(1, -1).replaceAll('""', '"');
      if (!/["\\]/.test(inner)) return text;
      // HyperFormula takes \ for the beginning of something else and cannot hold a quote at all.
      return `${own.spelt}("${[...inner].map((character) => character.codePointAt(0)).join(' ')}")`;
    }
    default:
      return text;
  }
}
