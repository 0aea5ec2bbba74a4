/** A run of a step as it is shown. */
export interface Run {
  readonly text: string;
  readonly cancels?: boolean;
  /** It is a name that stands for a number. */
  readonly named?: boolean;
}

const operator = /(?:^|[\s(])[×÷+−=≠<>≤≥±^/]$/u;
const number = /[\d∞]$/u;
const unit = /^(?:sts?|rows?|mm|cm|m|in|yd|g)(?![\p{L}])/u;

/** Whether a line may end where a space stands: between what is before it and what is behind it. */
function mayBreak(before: string, behind: string): boolean {
  if (operator.test(before)) return false;
  // "14 sts / 10 cm" is one number, and what a step begins from keeps its arrow.
  if (/^[/→]/u.test(behind)) return false;
  return !(number.test(before) && unit.test(behind));
}

/**
 * A step in what stays together on a line, as far as the line is wide enough: an operator with what it works on, a
 * number with its unit, a name. A space belongs between any two of them.
 *
 * @example unbroken([{ text: '54 rows × 10 sts / 7 rows' }])
 * // [[{ text: '54 rows' }], [{ text: '× 10 sts / 7 rows' }]]
 */
export function unbroken(runs: readonly Run[]): Run[][] {
  const text = runs.map((run) => run.text).join('');
  const groups: Run[][] = [[]];
  let start = 0;
  for (const run of runs) {
    let from = 0;
    const add = (to: number): void => {
      if (to > from) groups.at(-1)!.push({ ...run, text: run.text.slice(from, to) });
    };
    for (let at = 0; at < run.text.length && !run.named; at++) {
      if (run.text[at] !== ' ' || !mayBreak(text.slice(0, start + at), text.slice(start + at + 1))) continue;
      add(at);
      groups.push([]);
      from = at + 1;
    }
    add(run.text.length);
    start += run.text.length;
  }
  return groups.filter((group) => group.length > 0);
}

/**
 * A formula in what stays together on a line: what is given to its functions, one by one, a function inside another
 * whole. A space belongs between any two of them.
 *
 * @example unbrokenFormula('PIECE("flat"; 43; EVENROWS(44; body); EVENROWS(9; body))')
 * // ['PIECE("flat";', '43;', 'EVENROWS(44; body);', 'EVENROWS(9; body))']
 */
export function unbrokenFormula(formula: string): string[] {
  const groups = [''];
  let depth = 0;
  // What is written between quotes is text, whatever stands in it.
  for (const [token] of formula.matchAll(/"(?:[^"]|"")*"|;\s+|[^]/gu)) {
    if (token === '(') depth++;
    if (token === ')') depth--;
    if (depth === 1 && token.startsWith(';')) {
      groups[groups.length - 1] += ';';
      groups.push('');
    } else groups[groups.length - 1] += token;
  }
  return groups;
}
