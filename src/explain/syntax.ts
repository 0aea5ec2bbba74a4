import { type Token, readCheckedFormula } from '../formulas';

/** A formula as it is worked: what is done first stands furthest inside. */
export type Syntax =
  | { readonly is: 'number'; readonly value: number; readonly text: string }
  | { readonly is: 'text'; readonly text: string }
  | { readonly is: 'name'; readonly name: string }
  | { readonly is: 'call'; readonly name: string; readonly given: readonly Syntax[] }
  | { readonly is: 'minus' | 'percent'; readonly of: Syntax }
  | {
      readonly is: 'two';
      readonly operator: Operator;
      readonly left: Syntax;
      readonly right: Syntax;
    };

export type Operator = keyof typeof binds;

/** How closely each operator binds: OASIS OpenDocument 1.3, part 4 (OpenFormula), 5.5. Equals go from the left. */
const binds = {
  '=': 1,
  '<>': 1,
  '<': 1,
  '<=': 1,
  '>': 1,
  '>=': 1,
  '&': 2,
  '+': 3,
  '-': 3,
  '*': 4,
  '/': 4,
  '^': 5,
} as const;

/**
 * The tree of a stored formula, or the sentence that says why it has none.
 *
 * @example syntaxOf('bust / 2 * body_sts') // two(*, two(/, bust, 2), body_sts)
 */
export function syntaxOf(formula: string): { readonly tree: Syntax } | { readonly problem: string } {
  // What a piece makes of its stretches is as long as they are many.
  const read = readCheckedFormula(formula, '.', Infinity);
  if ('problem' in read) return { problem: read.problem };
  const tokens = read.tokens.filter(({ kind }) => kind !== 'space');
  return { tree: expression({ tokens, at: 0 }, 1) };
}

interface Reader {
  readonly tokens: readonly Token[];
  at: number;
}

// The grammar has been seen to by `readCheckedFormula`: what is due is there.
function expression(reader: Reader, least: number): Syntax {
  let left = operand(reader);
  for (;;) {
    const token = reader.tokens[reader.at];
    const closeness = token?.kind === 'operator' ? binds[token.text as Operator] : undefined;
    if (!token || closeness === undefined || closeness < least) return left;
    reader.at++;
    left = {
      is: 'two',
      operator: token.text as Operator,
      left,
      right: expression(reader, closeness + 1),
    };
  }
}

function operand(reader: Reader): Syntax {
  const token = reader.tokens[reader.at++]!;
  if (token.kind === 'operator') {
    const of = operand(reader);
    return token.text === '-' ? { is: 'minus', of } : of;
  }
  let found = one(reader, token);
  while (reader.tokens[reader.at]?.text === '%') {
    reader.at++;
    found = { is: 'percent', of: found };
  }
  return found;
}

function one(reader: Reader, token: Token): Syntax {
  switch (token.kind) {
    case 'number':
      return { is: 'number', value: Number(token.text), text: token.text };
    case 'text':
      return { is: 'text', text: token.text.slice(1, -1).replaceAll('""', '"') };
    case 'function':
      return { is: 'call', name: token.text, given: givenTo(reader) };
    case 'open': {
      const inside = expression(reader, 1);
      reader.at++;
      return inside;
    }
    default:
      return { is: 'name', name: token.text };
  }
}

function givenTo(reader: Reader): Syntax[] {
  reader.at++;
  const given: Syntax[] = [];
  while (reader.tokens[reader.at]?.kind !== 'close') {
    given.push(expression(reader, 1));
    if (reader.tokens[reader.at]?.kind === 'separator') reader.at++;
  }
  reader.at++;
  return given;
}
