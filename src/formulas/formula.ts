import type { FunctionEntry } from './functions/signatures';

/**
 * The language of formulas: OpenFormula expressions (OASIS OpenDocument 1.3, part 4) over names, without
 * addresses, ranges and arrays. Stored with `.` for decimals and `;` between arguments.
 */
export type TokenKind =
  'number' | 'text' | 'name' | 'function' | 'operator' | 'open' | 'close' | 'separator' | 'space';

export interface Token {
  readonly kind: TokenKind;
  /** As stored, whatever was typed: `×` is `*`, a decimal comma is a point. */
  readonly text: string;
  /** Where it stands in the text it was read from. */
  readonly start: number;
  readonly end: number;
}

export interface FormulaProblem {
  readonly problem: string;
  readonly start: number;
  readonly end: number;
}

/** Finds a function by its name, in any case. */
export type KnownFunctions = (name: string) => FunctionEntry | undefined;

export type FormulaRead = { readonly tokens: readonly Token[] } | FormulaProblem;

/** The longest that a person writes; what a cell makes of its own parts is as long as they are many. */
export const longestFormula = 1000;
export const deepestBrackets = 64;

const letter = /[\p{L}]/u;
const patterns: [TokenKind, RegExp][] = [
  ['space', /\s+/uy],
  ['text', /"(?:[^"]|"")*"/uy],
  ['name', /[\p{L}_][\p{L}\p{M}\p{N}_]*/uy],
  ['operator', /<>|<=|>=|[-+*/^&=<>%×÷−≤≥≠·]/uy],
  ['open', /\(/uy],
  ['close', /\)/uy],
];
const spelling: Record<string, string> = {
  '×': '*',
  '·': '*',
  '÷': '/',
  '−': '-',
  '≤': '<=',
  '≥': '>=',
  '≠': '<>',
};
const numbers = {
  '.': /(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][-+]?\d+)?/y,
  ',': /(?:\d+(?:,\d*)?|,\d+)(?:[eE][-+]?\d+)?/y,
};

/** A unit behind its number, as in "10 cm": here it stands before, as a function. */
const unitAfter = /\s*(?:cm|mm|in|sts|rows|grams)(?![\p{L}\p{M}\p{N}_]|\s*\()/iuy;

/**
 * Reads a formula as stored (`decimal` left out) or as a person typed it. The tokens cover the text whole,
 * spaces included. A leading `=` is passed over. This is the grammar alone: any name before a bracket is a function
 * that takes any number of arguments. `readCheckedFormula` knows which functions there are.
 *
 * @param known finds a function by its name; where it is given, a call of another one, or with too few or too many
 *   arguments, is a problem
 * @example readFormula('bust × 1,1', ',') // tokens bust, space, *, space, 1.1
 * @example readFormula('bust +') // { problem: 'Something is missing after +.', … }
 */
export function readFormula(
  formula: string,
  decimal: '.' | ',' = '.',
  longest: number = longestFormula,
  known?: KnownFunctions,
): FormulaRead {
  const begin = formula.match(/^\s*=?/)?.[0].length ?? 0;
  if (formula.length - begin > longest) {
    return problem(
      `A formula has at most ${longest} characters; split this one over two cells.`,
      0,
      formula.length,
    );
  }
  const tokens: Token[] = [];
  for (let at = begin; at < formula.length;) {
    const token = tokenAt(formula, at, decimal, known);
    if ('problem' in token) return token;
    tokens.push(token);
    at = token.end;
  }
  return grammar(tokens, formula, known) ?? { tokens };
}

function tokenAt(
  formula: string,
  at: number,
  decimal: '.' | ',',
  known?: KnownFunctions,
): Token | FormulaProblem {
  const number = match(numbers[decimal], formula, at);
  if (number) {
    const unit = match(unitAfter, formula, at + number.length);
    if (unit) {
      const called = unit.trim();
      return problem(
        `Write ${called.toUpperCase()}(${number}) for ${number} ${called}.`,
        at,
        at + number.length + unit.length,
      );
    }
    const after = formula[at + number.length];
    if (after !== undefined && (letter.test(after) || after === '_')) {
      return problem(
        `"${number}${after}" is neither a number nor a name: a name begins with a letter.`,
        at,
        at + number.length + 1,
      );
    }
    return { kind: 'number', text: number.replace(',', '.'), start: at, end: at + number.length };
  }
  for (const [kind, pattern] of patterns) {
    const text = match(pattern, formula, at);
    if (!text) continue;
    const end = at + text.length;
    if (kind === 'operator') return { kind, text: spelling[text] ?? text, start: at, end };
    if (kind !== 'name') return { kind, text, start: at, end };
    return wordAt(formula, { text, start: at, end }, known);
  }
  const character = String.fromCodePoint(formula.codePointAt(at)!);
  const end = at + character.length;
  if (character === ';' || (character === ',' && decimal === '.'))
    return { kind: 'separator', text: ';', start: at, end };
  if (character === '"')
    return problem('A text begins here and does not end: put " after it.', at, formula.length);
  if (character === '{' || character === '}')
    return problem('Lists in { } are not used here: give one value, or one for each size.', at, end);
  if (character === ':')
    return problem('A range is not used here: name each cell, as in SUM(left; right).', at, end);
  if (character === '$' || character === '!')
    return problem('Cells are called by their names here, not by an address.', at, end);
  return problem(`"${character}" has no place in a formula.`, at, end);
}

function wordAt(
  formula: string,
  { text, start, end }: Omit<Token, 'kind'>,
  known?: KnownFunctions,
): Token | FormulaProblem {
  const called = /^\s*\(/.test(formula.slice(end));
  if (!called) return { kind: 'name', text: text.normalize('NFC'), start, end };
  if (known && !known(text)) {
    return problem(
      `There is no function ${text} here; the list of functions shows what there is.`,
      start,
      end,
    );
  }
  return { kind: 'function', text: text.toUpperCase(), start, end };
}

function match(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] || undefined;
}

function problem(sentence: string, start: number, end: number): FormulaProblem {
  return { problem: sentence, start, end };
}

/** One pass that knows only whether a value or an operator is due; and the brackets that are open. */
function grammar(
  tokens: readonly Token[],
  formula: string,
  known?: KnownFunctions,
): FormulaProblem | undefined {
  const open: { token: Token; call?: Token; count: number }[] = [];
  let due: 'value' | 'operator' = 'value';
  let before: Token | undefined;
  const significant = tokens.filter((token) => token.kind !== 'space');
  for (const token of significant) {
    const bracket = open.at(-1);
    switch (token.kind) {
      case 'number':
      case 'text':
      case 'name':
      case 'function':
        if (due === 'operator')
          return problem(
            `An operator such as + or * is missing before ${token.text}.`,
            token.start,
            token.end,
          );
        if (token.kind !== 'function') due = 'operator';
        break;
      case 'open':
        if (due === 'operator')
          return problem('An operator such as * is missing before the bracket.', token.start, token.end);
        open.push({ token, count: 0, ...(before?.kind === 'function' ? { call: before } : {}) });
        if (open.length > deepestBrackets) {
          return problem(
            `Brackets go at most ${deepestBrackets} deep; split the formula over two cells.`,
            token.start,
            token.end,
          );
        }
        break;
      case 'separator':
        if (!bracket?.call)
          return problem(
            formula[token.start] === ','
              ? 'A comma stands only between the arguments of a function; decimals have a point here, as in 1.5.'
              : '";" stands only between the arguments of a function.',
            token.start,
            token.end,
          );
        if (due === 'value')
          return problem(`An argument of ${bracket.call.text} is missing here.`, token.start, token.end);
        bracket.count++;
        due = 'value';
        break;
      case 'close': {
        if (!bracket) return problem('This bracket was never opened.', token.start, token.end);
        const empty = before === bracket.token;
        if (due === 'value' && !(empty && bracket.call)) {
          return problem('Something is missing before this bracket.', token.start, token.end);
        }
        const entry = bracket.call && known?.(bracket.call.text);
        if (bracket.call && entry) {
          const wrong = wrongCount(entry, empty ? 0 : bracket.count + 1);
          if (wrong) return problem(wrong, bracket.call.start, token.end);
        }
        open.pop();
        due = 'operator';
        break;
      }
      case 'operator':
        if (due === 'value') {
          if (token.text !== '-' && token.text !== '+') {
            return problem(`A value is missing before ${token.text}.`, token.start, token.end);
          }
        } else if (token.text !== '%') due = 'value';
        break;
    }
    before = token;
  }
  if (!before)
    return problem('The formula is empty: write something such as bust + CM(10).', 0, formula.length);
  if (due === 'value') return problem(`Something is missing after ${before.text}.`, before.start, before.end);
  const left = open.at(-1);
  if (left) return problem('This bracket is not closed: add ).', left.token.start, left.token.end);
  return undefined;
}

function wrongCount(entry: FunctionEntry, count: number): string | undefined {
  const least = entry.arguments.filter((argument) => !argument.optional).length;
  const most = entry.repeats ? Infinity : entry.arguments.length;
  if (count >= least && count <= most) return undefined;
  if (entry.lacks && count === least - 1) return entry.lacks;
  const wanted = entry.arguments.map((argument) => argument.label).join('; ');
  return `${entry.name} takes ${wanted || 'nothing'}${entry.repeats ? ' …' : ''} in its brackets; here ${count === 1 ? 'is 1 argument' : `are ${count} arguments`}.`;
}

/** The formula as it is stored: standard operators, `.` and `;`. */
export function storedFormula(tokens: readonly Token[]): string {
  return tokens
    .map((token) => token.text)
    .join('')
    .trim();
}

/** A stored formula as a person writes it, with their decimal sign and × ÷ for the operators. */
export function shownFormula(formula: string, decimal: '.' | ','): string {
  const read = readFormula(formula);
  if ('problem' in read) return formula;
  const shown: Record<string, string> = { '*': '×', '/': '÷', '-': '−', '<=': '≤', '>=': '≥', '<>': '≠' };
  return read.tokens
    .map((token) => {
      if (token.kind === 'operator') return shown[token.text] ?? token.text;
      return token.kind === 'number' ? token.text.replace('.', decimal) : token.text;
    })
    .join('');
}

/** Names are the same whatever their case: `Bust` finds `bust`. */
export function sameName(name: string): string {
  return name.normalize('NFC').toLowerCase();
}

/** The names a stored formula uses, each once. A formula that cannot be read uses none. */
export function namesIn(formula: string): string[] {
  const read = readFormula(formula);
  if ('problem' in read) return [];
  const names = read.tokens.filter((token) => token.kind === 'name').map((token) => sameName(token.text));
  return [...new Set(names)];
}

/** The formula with names exchanged: `renames` maps a name, in `sameName`'s form, to its new spelling. */
export function renameIn(formula: string, renames: ReadonlyMap<string, string>): string {
  const read = readFormula(formula);
  if ('problem' in read) return formula;
  return storedFormula(
    read.tokens.map((token) =>
      token.kind === 'name' ? { ...token, text: renames.get(sameName(token.text)) ?? token.text } : token,
    ),
  );
}
