import { pickUpRatio } from '../../craft';
import { readFormula, sameName, type Token } from '../../formulas';
import { tableOf } from '../../notebook';
import type { PatternSource } from '../source';

/** Functions that only say what their argument counts. */
const units = new Set(['STS', 'ROWS', 'CM']);

/** The arguments of a function that is all of a formula, as tokens; undefined where it is not all of it. */
export function argumentTokens(formula: string, called: string): Token[][] | undefined {
  const read = readFormula(formula);
  if ('problem' in read) return undefined;
  const tokens = read.tokens.filter(({ kind }) => kind !== 'space');
  const [head, open] = tokens;
  if (
    head?.text.toUpperCase() !== called ||
    open?.kind !== 'open' ||
    closingOf(tokens, 1) !== tokens.length - 1
  )
    return undefined;
  return split(tokens.slice(2, -1));
}

/**
 * The arguments of a function that is all of a formula, worked out in one size as far as names, the four operations
 * and pick-up ratios go: enough for what a pattern has to say of how a count came about. Anything else is undefined.
 *
 * @example argumentsOf(source, 'm', 'JOINARMHOLE(armhole_rows; 3; 4; 2 * underarm_sts; STS(0))', 'JOINARMHOLE')
 * // [24, 3, 4, 16, 0]
 */
export function argumentsOf(
  source: PatternSource,
  size: string,
  formula: string,
  called: string,
): (number | undefined)[] | undefined {
  return argumentTokens(formula, called)?.map((argument) => value(source, size, argument));
}

/** Where the bracket that opens at a place closes again; -1 where it does not. */
function closingOf(tokens: readonly Token[], opens: number): number {
  let depth = 0;
  return tokens.findIndex(({ kind }, at) => {
    if (at < opens) return false;
    if (kind === 'open') depth++;
    if (kind === 'close') depth--;
    return depth === 0;
  });
}

/** Tokens between separators that stand outside of all brackets. */
function split(tokens: readonly Token[]): Token[][] {
  const parts: Token[][] = [[]];
  let depth = 0;
  for (const token of tokens) {
    if (token.kind === 'open') depth++;
    if (token.kind === 'close') depth--;
    if (token.kind === 'separator' && depth === 0) parts.push([]);
    else parts.at(-1)!.push(token);
  }
  return parts;
}

/** The place of the last of some operators outside of all brackets, with something before it. */
function lastOperator(tokens: readonly Token[], operators: string): number {
  let depth = 0;
  for (let at = tokens.length - 1; at > 0; at--) {
    const { kind, text } = tokens[at]!;
    if (kind === 'close') depth++;
    if (kind === 'open') depth--;
    if (
      depth === 0 &&
      kind === 'operator' &&
      operators.includes(text) &&
      tokens[at - 1]!.kind !== 'operator'
    ) {
      return at;
    }
  }
  return -1;
}

function value(source: PatternSource, size: string, tokens: readonly Token[]): number | undefined {
  const of = (part: readonly Token[]): number | undefined => value(source, size, part);
  for (const operators of ['+-', '*/']) {
    const at = lastOperator(tokens, operators);
    if (at < 0) continue;
    const [left, right] = [of(tokens.slice(0, at)), of(tokens.slice(at + 1))];
    if (left === undefined || right === undefined) return undefined;
    switch (tokens[at]!.text) {
      case '+':
        return left + right;
      case '-':
        return left - right;
      case '*':
        return left * right;
      default:
        return right === 0 ? undefined : left / right;
    }
  }
  const [first, second] = tokens;
  if (!first) return undefined;
  if (tokens.length === 1) {
    if (first.kind === 'number') return Number(first.text);
    const named = first.kind === 'name' ? tableOf(source.notebook).get(sameName(first.text)) : undefined;
    return named && source.number(size, named.cell, named.key);
  }
  if (tokens.at(-1)!.kind !== 'close') return undefined;
  if (first.kind === 'open') return of(tokens.slice(1, -1));
  if (second?.kind !== 'open') return undefined;
  const inside = split(tokens.slice(2, -1)).map(of);
  const [a, b] = inside;
  const name = first.text.toUpperCase();
  if (units.has(name) && inside.length === 1) return a;
  if (
    (name === 'PICKUPSTITCHES' || name === 'PICKUPROWS') &&
    inside.length === 2 &&
    a &&
    b &&
    a > 0 &&
    b > 0
  ) {
    const ratio = pickUpRatio({ rowsPerCm: a, stitchesPerCm: b });
    return name === 'PICKUPSTITCHES' ? ratio.pick : ratio.of;
  }
  return undefined;
}
