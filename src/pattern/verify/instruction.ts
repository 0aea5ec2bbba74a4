import { tokensOf, longestLine, type Token } from './tokens';

/** How far something is repeated. */
export type Until =
  | { readonly kind: 'times'; readonly times: number }
  /** To so many stitches before the end of the row. */
  | { readonly kind: 'to last'; readonly stitches: number };

/** A part of an instruction: what it uses of the row below, and what it makes. */
export type InstructionStep =
  | { readonly kind: 'work'; readonly uses: number; readonly makes: number }
  /** Each stitch that is left, up to the last so many, becomes `makes`. */
  | { readonly kind: 'rest'; readonly makes: number; readonly before: number }
  | { readonly kind: 'repeat'; readonly parts: readonly InstructionStep[]; readonly until: Until };

export interface Problem {
  readonly problem: string;
}

const stitchWords = new Set(
  `sc hdc dc tr dtr trtr htr esc fsc fdc fpdc bpdc fphdc bphdc fpsc bpsc fptr bptr rtrf rtrb k p knit purl
   kb pb ktbl ptbl st sts stitch stitches`.split(/\s+/u),
);
const decreases = new Map(
  Object.entries({
    ssk: 2,
    ssp: 2,
    skp: 2,
    skpo: 2,
    dec: 2,
    decrease: 2,
    invdec: 2,
    sssk: 3,
    sssp: 3,
    cdd: 3,
    sk2p: 3,
    sk2po: 3,
  }),
);
const made = new Set(['yo', 'yon', 'yrn', 'yfwd', 'yfrn']);
const nothing = new Set(['turn', 'pm', 'sm', 'rm', 'place', 'remove', 'join', 'mark', 'marker', 'st-marker']);
const numerals = new Map(
  Object.entries({
    once: 1,
    twice: 2,
    thrice: 3,
    one: 1,
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    seven: 7,
    eight: 8,
    nine: 9,
    ten: 10,
  }),
);
export const most = 100_000;
const deepest = 12;

export class Unread extends Error {}

/** Reads the words of one row. */
class Reader {
  #at = 0;
  readonly #tokens: readonly Token[];

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
  }

  get done(): boolean {
    return this.#at >= this.#tokens.length;
  }

  #peek(ahead = 0): Token {
    return this.#tokens[this.#at + ahead] ?? '';
  }

  #accept(...words: readonly Token[]): boolean {
    if (words.some((word, ahead) => this.#peek(ahead) !== word)) return false;
    this.#at += words.length;
    return true;
  }

  #any(...words: readonly Token[]): boolean {
    return words.some((word) => this.#accept(word));
  }

  /** A number in figures, or an en dash, which is none. */
  #number(): number | undefined {
    const token = this.#peek();
    if (token === '–') {
      this.#at++;
      return 0;
    }
    if (!/^\d+$/.test(token)) return undefined;
    this.#at++;
    const number = Number(token);
    if (number > most) throw new Unread(`${token} is more than ${most}, which no row has.`);
    return number;
  }

  #fail(): never {
    const near = this.#tokens.slice(Math.max(0, this.#at - 1), this.#at + 4).join(' ');
    throw new Unread(`“${near}” could not be read.`);
  }

  /** Parts up to one of the words that end them. */
  parts(ends: readonly Token[], depth: number): InstructionStep[] {
    if (depth > deepest) throw new Unread('Brackets stand too deep in one another to be read.');
    const parts: InstructionStep[] = [];
    while (!this.done && !ends.includes(this.#peek())) {
      if (this.#any(',', ';', '.', 'and', 'then', ':')) continue;
      parts.push(...this.#part(depth, depth === 0 && parts.length === 0));
    }
    return parts;
  }

  #part(depth: number, first: boolean): InstructionStep[] {
    if (this.#accept('*')) return [this.#starred(depth)];
    for (const [open, close] of [
      ['(', ')'],
      ['[', ']'],
      ['{', '}'],
    ] as const) {
      if (this.#accept(open)) return this.#bracketed(close, depth);
    }
    return this.#item(first);
  }

  /** After a *: up to "rep from *", and how far. */
  #starred(depth: number): InstructionStep {
    const parts = this.parts(['rep', 'repeat', '*'], depth + 1);
    if (parts.length === 0) this.#fail();
    const closed = this.#accept('*');
    this.#any(',', ';', '.');
    if (!this.#any('rep', 'repeat')) {
      if (!closed) throw new Unread('A * has no “rep from *” after it.');
      return { kind: 'repeat', parts, until: this.#until('in all') };
    }
    this.#any('from', 'between');
    if (this.#accept('*')) {
      if (this.#any('to', 'and') && !this.#accept('*')) this.#at--;
    }
    return { kind: 'repeat', parts, until: this.#until('again') };
  }

  #bracketed(close: Token, depth: number): InstructionStep[] {
    if (['counts', 'count', 'does', 'do', 'not', 'the', 'first'].includes(this.#peek())) {
      while (!this.done && !this.#accept(close)) this.#at++;
      return [];
    }
    const parts = this.parts([close], depth + 1);
    if (!this.#accept(close)) throw new Unread('A bracket is not closed.');
    if (this.#accept('in')) {
      const makes = sum(parts, 'makes');
      return [this.#into(makes)];
    }
    return [{ kind: 'repeat', parts, until: this.#until('once') }];
  }

  /** After "in": which stitches take what was worked. */
  #into(makes: number): InstructionStep {
    this.#any('the');
    if (this.#any('next', 'same', 'first', 'last')) {
      const stitches = this.#number() ?? 1;
      this.#stitchWord();
      return { kind: 'work', uses: stitches, makes: makes * stitches };
    }
    if (this.#any('each', 'every')) {
      this.#accept('of');
      this.#accept('the');
      if (this.#any('next')) {
        const stitches = this.#number() ?? 1;
        this.#stitchWord();
        return { kind: 'work', uses: stitches, makes: makes * stitches };
      }
      const stitches = this.#number();
      this.#stitchWord();
      if (stitches !== undefined) return { kind: 'work', uses: stitches, makes: makes * stitches };
      const until = this.#until('to end');
      if (until.kind === 'times') this.#fail();
      return { kind: 'rest', makes, before: until.stitches };
    }
    if (this.#any('ring', 'loop')) return { kind: 'work', uses: 0, makes };
    const stitches = this.#number();
    if (stitches !== undefined) {
      this.#stitchWord();
      return { kind: 'work', uses: stitches, makes: makes * stitches };
    }
    if (this.#any('st', 'ch', 'stitch')) return { kind: 'work', uses: 1, makes };
    this.#fail();
  }

  #stitchWord(): void {
    while (
      this.#any(
        'st',
        'sts',
        'stitch',
        'stitches',
        'ch',
        'chs',
        'sc',
        'hdc',
        'dc',
        'tr',
        'dtr',
        'htr',
        'remaining',
        'rem',
      )
    );
  }

  /** How far: "3 more times", "to last 3 sts", "around". `usual` says what a bare number and what nothing means. */
  #until(usual: 'again' | 'in all' | 'once' | 'to end'): Until {
    this.#any('all');
    if (this.#any('around', 'across')) {
      this.#rowWords();
      return { kind: 'to last', stitches: 0 };
    }
    if (this.#any('to', 'until')) {
      this.#any('within');
      this.#any('the');
      if (this.#any('end')) {
        this.#rowWords();
        return { kind: 'to last', stitches: 0 };
      }
      this.#any('last');
      const stitches = this.#number() ?? 1;
      this.#stitchWord();
      this.#any('remain', 'remains', 'left', 'before');
      this.#any('of', 'the');
      this.#any('end');
      this.#rowWords();
      return { kind: 'to last', stitches };
    }
    this.#accept('x');
    const word = numerals.get(this.#peek());
    if (word !== undefined) this.#at++;
    const times = word ?? this.#number();
    if (times === undefined) {
      if (usual === 'once') return { kind: 'times', times: 1 };
      return { kind: 'to last', stitches: 0 };
    }
    let more = this.#any('more', 'further', 'additional');
    this.#any('times', 'time', 'x');
    more = this.#any('more') || more;
    const isTotal = this.#accept('in', 'all') || this.#accept('in', 'total') || this.#accept('total');
    const all = isTotal || (usual !== 'again' && !more);
    return { kind: 'times', times: all ? times : times + 1 };
  }

  #rowWords(): void {
    while (this.#any('of', 'the', 'row', 'round', 'rnd', 'end'));
  }

  #item(first: boolean): InstructionStep[] {
    const leading = this.#number();
    const token = this.#peek();
    if (leading !== undefined) {
      const parts = this.#after(leading, token);
      // An en dash before a stitch: this size works none of it, and uses no stitch for it.
      return leading === 0 ? [] : parts;
    }
    this.#at++;
    if (token === 'skip' || token === 'miss' || token === 'sk') {
      this.#any('the');
      this.#any('next', 'first', 'last');
      const uses = this.#number() ?? numerals.get(this.#peek()) ?? 1;
      if (numerals.get(this.#peek()) !== undefined) this.#at++;
      this.#stitchWord();
      return [{ kind: 'work', uses, makes: 0 }];
    }
    if (token === 'ch' || token === 'chain') return this.#chain(first);
    if (token === 'sl' || token === 'slip' || token === 'ss') return this.#slip();
    if (token === 'bind' || token === 'cast' || token === 'bo' || token === 'co') return this.#edge(token);
    if (nothing.has(token)) {
      while (!this.done && ![',', ';', '.', ')', ']'].includes(this.#peek())) this.#at++;
      return [];
    }
    if (token === 'work' || token === 'even') return this.#plain(token);
    if (stitchWords.has(token)) return this.#plain(token);
    const together = /(\d+)tog/u.exec(token);
    const uses = together ? Number(together[1]) : decreases.get(token);
    if (uses !== undefined) {
      if (uses < 2 || uses > 20) this.#fail();
      if (this.#any('over', 'across')) {
        this.#any('the');
        this.#accept('next');
        this.#number();
        this.#stitchWord();
      }
      return [this.#often({ kind: 'work', uses, makes: 1 })];
    }
    if (token === 'inc' || token === 'increase' || /^[kp]f(?:&|and)?b/u.test(token)) {
      if (this.#accept('in')) return [this.#into(2)];
      return [this.#often({ kind: 'work', uses: 1, makes: 2 })];
    }
    if (token.startsWith('m1') || made.has(token)) return [this.#often({ kind: 'work', uses: 0, makes: 1 })];
    this.#at--;
    this.#fail();
  }

  /** "2 sc in next st", "6 sc" */
  #after(leading: number, token: Token): InstructionStep[] {
    if (token === 'ch') {
      this.#at++;
      return [{ kind: 'work', uses: 0, makes: leading }];
    }
    if (!stitchWords.has(token)) this.#fail();
    this.#at++;
    if (this.#any('in', 'into')) return [this.#into(leading)];
    return [{ kind: 'work', uses: leading, makes: leading }];
  }

  /** Stitches worked one into one: "k6", "sc in next 6 sts", "k to last 3 sts", "work even". */
  #plain(token: Token): InstructionStep[] {
    const count = this.#number();
    if (count !== undefined) {
      this.#stitchWord();
      return [{ kind: 'work', uses: count, makes: count }];
    }
    if (this.#any('in', 'into')) return [this.#into(1)];
    if (this.#any('next')) {
      const next = this.#number() ?? 1;
      this.#stitchWord();
      return [{ kind: 'work', uses: next, makes: next }];
    }
    const whole = ['work', 'even', 'knit', 'purl'].includes(token);
    this.#accept('even');
    if (whole || ['to', 'across', 'around', 'all', 'until'].includes(this.#peek())) {
      this.#any('every', 'each');
      this.#stitchWord();
      const until = this.#until('to end');
      if (until.kind === 'times') this.#fail();
      return [{ kind: 'rest', makes: 1, before: until.stitches }];
    }
    return [this.#often({ kind: 'work', uses: 1, makes: 1 })];
  }

  /** A chain in a row is stitches; at its beginning it is the turning chain, one stitch where it is said to count. */
  #chain(first: boolean): InstructionStep[] {
    const count = this.#number() ?? 1;
    const says = this.#peek() === '(' ? this.#peek(1) : '';
    if (says === 'counts') return [{ kind: 'work', uses: 1, makes: 1 }];
    if (says === 'does' || says === 'not') return [];
    if (first && (this.#peek() === 'turn' || this.#peek(1) === 'turn')) return [];
    if (first && count <= 1) return [];
    return [{ kind: 'work', uses: 0, makes: count }];
  }

  #slip(): InstructionStep[] {
    this.#any('st', 'stitch');
    if (this.#peek() === 'marker' || this.#peek() === 'm') {
      this.#at++;
      return [];
    }
    if (this.#any('in', 'to', 'into')) {
      this.#any('the');
      if (this.#any('first', 'top', 'join', 'beginning', 'beg')) {
        while (!this.done && ![',', ';', '.', ')', ']'].includes(this.#peek())) this.#at++;
        return [];
      }
      return [this.#into(1)];
    }
    const count = this.#number() ?? 1;
    this.#stitchWord();
    this.#any('purlwise', 'knitwise', 'pwise', 'kwise', 'wyif', 'wyib');
    return [{ kind: 'work', uses: count, makes: count }];
  }

  #edge(token: Token): InstructionStep[] {
    const on = token === 'co' || this.#peek() === 'on';
    if (token === 'bind' || token === 'cast') this.#at++;
    this.#any('the');
    this.#any('first', 'next', 'last');
    const count = this.#number();
    if (count === undefined) this.#fail();
    this.#stitchWord();
    return [{ kind: 'work', uses: on ? 0 : count, makes: on ? count : 0 }];
  }

  /** "k2tog twice", "inc 3 times", "m1 x 2" */
  #often(part: InstructionStep & { kind: 'work' }): InstructionStep {
    const [next, after] = [this.#peek(), this.#peek(1)];
    const times = /^\d+$/.test(next) && (after === 'times' || after === 'x') ? Number(next) : undefined;
    if (times !== undefined) {
      this.#at += 2;
      return scaled(part, times);
    }
    if (next === 'x' && /^\d+$/.test(after)) {
      this.#at += 2;
      return scaled(part, Number(after));
    }
    const word = next === 'once' || next === 'twice' || next === 'thrice' ? numerals.get(next) : undefined;
    if (word === undefined) return part;
    this.#at++;
    return scaled(part, word);
  }
}

function scaled(part: InstructionStep & { kind: 'work' }, times: number): InstructionStep {
  if (times > most) throw new Unread(`${times} times is more than ${most}, which no row has.`);
  return { kind: 'work', uses: part.uses * times, makes: part.makes * times };
}

/**
 * The stitches that parts use or make in all.
 *
 * @throws Unread where a part goes on to the end, and so takes as many as there are
 */
export function sum(parts: readonly InstructionStep[], of: 'uses' | 'makes'): number {
  return parts.reduce((total, part) => {
    if (part.kind === 'rest')
      throw new Unread('A part that goes on to the end cannot stand inside a repeat.');
    if (part.kind === 'work') return total + part[of];
    if (part.until.kind === 'to last') {
      throw new Unread('A part that goes on to the end cannot stand inside a repeat.');
    }
    return total + part.until.times * sum(part.parts, of);
  }, 0);
}

/**
 * The words of one row as parts.
 *
 * @example readInstruction('*k4, k2tog; rep from * to end')
 * // [{ kind: 'repeat', parts: [{ uses: 4, makes: 4, … }, { uses: 2, makes: 1, … }], until: { kind: 'to last', stitches: 0 } }]
 */
export function readInstruction(text: string): readonly InstructionStep[] | Problem {
  if (text.length > longestLine)
    return { problem: `A line of more than ${longestLine} characters is not read.` };
  try {
    const reader = new Reader(tokensOf(text));
    const parts = reader.parts([], 0);
    return parts.length === 0 ? { problem: 'There is no instruction in this line.' } : parts;
  } catch (error) {
    if (error instanceof Unread) return { problem: error.message };
    throw error;
  }
}
