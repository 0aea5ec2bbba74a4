import {
  alongOf,
  begunAlong,
  begunFromPiece,
  endOf,
  holesIn,
  paragraphSays,
  positionOf,
  stitchesNamed,
  waysOfEnds,
} from './read-side-statements';
import { ownLine } from './by-size';
import { Edge } from './edge';
import * as forms from './forms';
import { amount } from './forms';
import type { PrintedText } from './printed';
import { edgeOf, unitsOf, type SideStatement } from './side-statements';
import { endsOf, problemsOfFirst, rowAfter, shapeNamedRows, shapeRows, sign, type Taper } from './shape-rows';
import { forSize } from './size-numbers';
import { mostRows, Tally } from './tally';
import { longestLine } from './tokens';

/** What a text comes to when it is followed. */
export interface VerifiedPiece {
  /** The count after every row, as far as it could be followed. */
  readonly counts: readonly number[];
  /** What could not be read or does not come out, each at its line (from 0). */
  readonly problems: readonly { readonly line: number; readonly problem: string }[];
  /** What the lines say of single rows beside their counts, in the order in which they say it. */
  readonly says: readonly SideStatement[];
  /** Whether the text says what becomes of the last stitches. */
  readonly ended: boolean;
}

/** The sizes of a text and the one that is followed, by its place among them. */
export interface Following {
  readonly sizes: readonly string[];
  readonly sizeIndex: number;
}

/** What the lines for some sizes only, after "as follows for your size", tell of. */
type Waiting =
  | { readonly kind: 'row'; readonly stated: number | null }
  | { readonly kind: 'rows'; readonly over: number; readonly stated: number | null }
  | { readonly kind: 'named'; readonly over: number; readonly stated: number | null }
  | { readonly kind: 'groups' }
  | { readonly kind: 'nothing' };

/** What a sentence of one form does; `stated` is the count that stands after it. */
type Step = (found: RegExpExecArray, stated: number | null, sentence: string) => void;

/** What is said, without where. */
type SideStatementOf<S> = S extends SideStatement ? Omit<S, 'line' | 'row'> : never;

const withoutEnd = (text: string): string => text.replace(/[.\s]+$/u, '');

/** Follows the lines of one piece, stitch by stitch, with nothing but the lines. */
class LineReader {
  readonly tally = new Tally();
  readonly says: SideStatement[] = [];
  ended = false;
  readonly #following: Following;
  #chains: number | undefined;
  #waiting: Waiting | undefined;
  #answered = false;
  /** Whether the last sentence began a row that this one finishes. */
  #begun = false;
  #firstSideStated = false;
  /** Whether this sentence begins a row that the next one finishes. */
  #begins = false;
  #edge: Edge | undefined;
  #taper: Taper | undefined;

  constructor(following: Following) {
    this.#following = following;
  }

  /** The first form that fits a sentence is taken. */
  readonly #steps: readonly (readonly [form: RegExp, step: Step])[] = [
    [forms.castOn, ([, count]) => this.#castOn(amount(count))],
    [forms.chain, ([, count]) => this.#chain(amount(count))],
    [forms.picked, (found) => this.#picked(found)],
    [forms.roundIntoChain, () => this.tally.begin(this.#chains)],
    [forms.firstSide, ([, side]) => this.#firstSide(side!)],
    [forms.rowIntoChain, (_, stated, sentence) => this.#rowIntoChain(sentence, stated)],
    [forms.even, ([, rows], stated) => this.#then(stated, () => this.tally.rows(amount(rows)))],
    [forms.ended, ([sentence]) => this.#end(sentence)],
    [forms.ends, ([, which], _, sentence) => this.#ends(which!, sentence)],
    [forms.onEachRow, (found, stated) => this.#then(stated, () => this.#onEachRow(found))],
    [forms.groups, (_, __, sentence) => this.#toComeOutEven(sentence)],
    [forms.shapedOwn, ([, over], stated) => this.#wait({ kind: 'rows', over: amount(over), stated })],
    [forms.namedOwn, ([, over], stated) => this.#wait({ kind: 'named', over: amount(over), stated })],
    [
      forms.namedRows,
      ([, over, words], stated) => this.#then(stated, () => this.#namedRows(amount(over), words!)),
    ],
    [forms.firstOfThese, ([, words, each]) => this.#firstOfThese(words!, each!)],
    [forms.shaping, (_, stated, sentence) => this.#then(stated, () => this.#shaping(sentence))],
    [forms.rowLine, (found, stated) => this.#rowLine(found, stated)],
  ];

  follow(lines: readonly (string | PrintedText)[]): void {
    lines.forEach((line, at) => {
      this.tally.line = at;
      const text = (typeof line === 'string' ? line : line.text).trim();
      if (text === '') return;
      if (typeof line !== 'string' && line.kind === 'heading') return this.#say({ kind: 'heading', text });
      if (typeof line !== 'string' && line.kind === 'paragraph') return this.#paragraph(text);
      if (text.length > longestLine * 4) this.tally.wrong('It is too long to be read.');
      else this.#read(text);
    });
    this.tally.line = lines.length - 1;
    this.#endWaiting();
    this.#endEdge();
  }

  #paragraph(text: string): void {
    const stated = paragraphSays(text, this.#following.sizeIndex, this.#following.sizes.length);
    if (stated.kind === 'spaces') this.#sayUnits(text);
    this.#say(stated);
  }

  #read(line: string): void {
    if (this.#waiting) {
      const own = ownLine(line, this.#following.sizes);
      if (own) return this.#ownLine(this.#waiting, own.sizeIndices, own.text);
      this.#endWaiting();
    }
    if (this.#edge && this.#edgeLine(this.#edge, line)) return;
    const goesOn = forms.heldStitches.exec(line) ?? forms.alongLastRow.exec(line);
    const text = this.#mine(goesOn?.[1] ?? line);
    if (text === undefined) return;
    if (goesOn) {
      const begun = begunFromPiece(line, this.#following.sizeIndex, this.#following.sizes.length);
      if (begun) this.#say(begun);
      return this.tally.begin(amount(/\d+/u.exec(text)?.[0]));
    }
    const stated = forms.stated.exec(text);
    // With an en dash for its count the line is not for this size, nor are those it announces.
    if (stated?.[1] === '–') {
      this.#begins = false;
      if (/as follows for your size/iu.test(text)) this.#wait({ kind: 'nothing' });
      return;
    }
    const sentence = withoutEnd(stated ? text.slice(0, stated.index) : text);
    this.#follow(sentence.replace(/\s+/gu, ' '), stated ? Number(stated[1]) : null);
  }

  /** A text as the size that is followed reads it. */
  #mine(
    text: string,
    sizeIndex = this.#following.sizeIndex,
    of = this.#following.sizes.length,
  ): string | undefined {
    const mine = forSize(text, sizeIndex, of);
    if (typeof mine === 'string') return mine;
    this.tally.wrong(mine.problem);
    return undefined;
  }

  #follow(sentence: string, stated: number | null): void {
    [this.#begun, this.#begins] = [this.#begins, false];
    if (this.ended) return this.tally.wrong('The piece has ended already.');
    this.#sayUnits(sentence);
    for (const [form, step] of this.#steps) {
      const found = form.exec(sentence);
      if (found) return step(found, stated, sentence);
    }
    this.tally.wrong(`“${sentence.slice(0, 120)}” could not be read.`);
  }

  #say(stated: SideStatementOf<SideStatement>, row = this.tally.counts.length + 1): void {
    if (this.says.length < mostRows) this.says.push({ line: this.tally.line, row, ...stated });
  }

  #sayUnits(text: string): void {
    for (const unit of unitsOf(text)) this.#say({ kind: 'unit', unit });
  }

  #sayEdge(text: string, row: number): void {
    const edge = edgeOf(text);
    if (edge !== undefined) this.#say({ kind: 'edge', edge }, row);
  }

  #sayEnds(start: number, end: number, sentence: string): void {
    if (start !== 0 || end !== 0) this.#say({ kind: 'ends', start, end });
    const by = waysOfEnds(sentence);
    if (start !== 0 && by.start) this.#say({ kind: 'way of ends', at: 'start', by: by.start });
    if (end !== 0 && by.end) this.#say({ kind: 'way of ends', at: 'end', by: by.end });
  }

  #sayStitches(content: string, row?: number): void {
    const names = stitchesNamed(content);
    if (names.length > 0) this.#say({ kind: 'stitches', names }, row);
  }

  /** Where a taper shapes, by the first row that it shapes. */
  #sayWhere(text: string, row: number): void {
    this.#sayEdge(text, row);
    const spacing = positionOf(text);
    if (spacing) this.#say({ kind: 'position', ...spacing }, row);
  }

  #castOn(count: number): void {
    this.#say({ kind: 'begun', how: 'cast on' });
    this.tally.begin(count);
  }

  #then(stated: number | null, step: () => void): void {
    step();
    this.tally.check(stated);
  }

  #chain(count: number): void {
    if (this.#chains !== undefined || this.tally.count !== undefined) {
      return this.tally.wrong('The piece has begun already.');
    }
    this.#say({ kind: 'begun', how: 'chain' });
    this.#chains = count;
  }

  #alongEdge(count: number, along: string): void {
    this.tally.begin(count);
    if (/follows/iu.test(along)) this.#edge = new Edge(count);
  }

  /** Picking up is the next row itself, where it says so: then the side that faces is the side of that row. */
  #picked([sentence, facing, count, along]: RegExpExecArray): void {
    if (/the next row picks up/iu.test(sentence)) this.#onSide(facing!);
    this.#say(begunAlong(sentence));
    this.#alongEdge(amount(count), along!);
  }

  #firstSide(side: string): void {
    if (this.tally.counts.length > 0) return this.tally.wrong('Row 1 is worked already.');
    if (this.#firstSideStated) return this.tally.wrong('The side of row 1 is told twice.');
    this.#firstSideStated = true;
    this.#onSide(side);
  }

  /** The side that the row to come is worked on. */
  #onSide(stated: string): void {
    this.#say({ kind: 'side', side: /^(?:RS|right)$/iu.test(stated) ? 'RS' : 'WS' });
  }

  #rowIntoChain(sentence: string, stated: number | null): void {
    const into = forms.intoChain.exec(sentence.replace('beginning in', 'in'));
    if (!into) return this.tally.wrong('It does not say in which chain to begin.');
    this.#sayStitches(sentence);
    this.#then(stated, () => this.#intoChain(into));
  }

  #intoChain([, first, counts]: RegExpExecArray): void {
    if (this.#chains === undefined) return this.tally.wrong('There is no chain to work into.');
    this.tally.begin(this.#chains - (amount(first) - 1) + (counts === undefined ? 0 : 1));
  }

  #end(sentence: string): void {
    this.#say({ kind: 'end', how: endOf(sentence) });
    this.ended = true;
    const stated = /\d+/u.exec(sentence)?.[0];
    if (stated !== undefined) this.tally.check(Number(stated));
  }

  #wait(waiting: Waiting): void {
    this.#waiting = waiting;
    this.#answered = false;
  }

  #endWaiting(): void {
    const waiting = this.#waiting;
    const idle = waiting?.kind === 'nothing' || this.#edge?.isIdle;
    if (waiting && !idle && !this.#answered) this.tally.wrong('No line says what this size does here.');
    this.#waiting = undefined;
  }

  #ownLine(waiting: Waiting, sizeIndices: readonly number[], line: string): void {
    const index = sizeIndices.indexOf(this.#following.sizeIndex);
    if (index < 0) return;
    if (this.#answered) return this.tally.wrong('This size was told already what to do here.');
    this.#answered = true;
    const text = this.#mine(line, index, sizeIndices.length);
    if (text !== undefined) this.#own(waiting, withoutEnd(text));
  }

  #own(waiting: Waiting, text: string): void {
    this.#sayUnits(text);
    switch (waiting.kind) {
      case 'nothing':
        return this.tally.wrong('This size has nothing to do here, and a line tells it what.');
      case 'groups':
        return this.#groups(text);
      case 'row':
        return this.#then(waiting.stated, () => this.#row(text, 1));
      case 'named':
        return this.#then(waiting.stated, () => this.#namedRows(waiting.over, text));
      case 'rows': {
        const before = this.tally.counts.length;
        for (const step of text.split(/\s*;\s*/u)) this.#follow(step, null);
        const rows = this.tally.counts.length - before;
        if (rows !== waiting.over)
          this.tally.wrong(`It says ${waiting.over} rows, and following it gives ${rows}.`);
        return this.tally.check(waiting.stated);
      }
    }
  }

  #rowLine([, next, many, from, to, side, content = '']: RegExpExecArray, stated: number | null): void {
    const { tally } = this;
    if (next !== undefined) this.#sameRow(next);
    if (side !== undefined) this.#onSide(side);
    const rows = next ? amount(many ?? '1') : to === undefined ? 1 : amount(to) - amount(from) + 1;
    if (!next && amount(from) !== tally.counts.length + 1) {
      return tally.wrong(`It is called row ${from ?? ''}, and it is row ${tally.counts.length + 1}.`);
    }
    if (rows < 1 || rows > mostRows) return tally.wrong('It does not say how many rows it is for.');
    if (/as follows for your size$/iu.test(content)) return this.#wait({ kind: 'row', stated });
    if (tally.count === undefined && this.#firstIntoChain(content)) {
      return this.#then(stated, () => tally.rows(1));
    }
    const along = forms.workedAlong.exec(content);
    if (!along) return this.#then(stated, () => this.#row(content, rows));
    if (stated === null) return tally.wrong('It does not say how many stitches there are.');
    if (side !== undefined) this.#onSide(along[1]!);
    this.#say(begunAlong(content));
    this.#sayStitches(content);
    this.#alongEdge(stated, along[2]!);
    tally.rows(1);
  }

  /** Begins the piece where its first row is worked into the chain. @returns whether it is */
  #firstIntoChain(content: string): boolean {
    const into = forms.intoChain.exec(content);
    if (into) this.#intoChain(into);
    else if (forms.eachChain.test(content)) this.tally.begin(this.#chains);
    else return false;
    this.#sayStitches(content);
    return true;
  }

  /** What one row, or each of several, does. */
  #row(content: string, rows: number): void {
    for (let done = 0; done < rows; done++) {
      const before = this.tally.have();
      if (before === undefined) return;
      const after = rowAfter(content, before);
      if (typeof after !== 'number') return this.tally.wrong(after.problem);
      const ends = endsOf(content);
      if (ends) this.#sayEnds(ends.start, ends.end, content);
      this.#sayStitches(content);
      this.#sayRepeats(content);
      const chains = holesIn(content);
      if (chains.length > 0) this.#say({ kind: 'holes', chains });
      this.tally.to(after);
      this.tally.rows(1);
    }
  }

  #sayRepeats(content: string): void {
    const found = forms.inRepeats.exec(content);
    if (!found) return;
    const by = sign(found[1]!) * amount(found[2]);
    this.#say({ kind: 'repeats', repeats: amount(found[3] ?? '1'), by });
  }

  #shaping(text: string): void {
    this.#taper =
      shapeRows(text, this.tally, (row) => {
        this.#sayWhere(text, row);
        if (!this.#waiting) this.#say({ kind: 'taper' }, row);
      }) ?? this.#taper;
  }

  #firstOfThese(content: string, each: string): void {
    const taper = this.#taper;
    this.#taper = undefined;
    if (!taper) return this.tally.wrong('There is no shaping before it.');
    this.#say({ kind: 'first round' }, taper.row);
    this.#sayStitches(content, taper.row);
    for (const problem of problemsOfFirst(content, each, taper)) this.tally.wrong(problem);
  }

  #namedRows(over: number, text: string): void {
    shapeNamedRows(over, text, this.tally, (row) => this.#sayWhere(text, row));
  }

  /** As many stitches left or added at the start of each of several rows. */
  #onEachRow([sentence, leaving, stitches, rows]: RegExpExecArray): void {
    const by = (leaving === undefined ? 1 : -1) * amount(stitches);
    for (let left = Math.min(amount(rows), mostRows); left > 0; left--) {
      const before = this.tally.have();
      if (before === undefined) return;
      this.#sayEnds(by, 0, sentence);
      this.tally.to(before + by);
      this.tally.rows(1);
    }
  }

  #ends(which: string, sentence: string): void {
    this.#sameRow(which);
    const before = this.tally.have();
    if (before === undefined) return;
    const stated = forms.worksInAll.exec(sentence);
    if (!stated) return this.tally.wrong('It does not say how many stitches are worked.');
    this.#begins = true;
    if (stated[1] === '–') return;
    const at = (form: RegExp): number => amount(form.exec(sentence)?.[1]);
    const [start, end] = forms.adds.test(sentence)
      ? [at(forms.addStart), at(forms.addEnd)]
      : [-at(forms.leaveStart), -at(forms.leaveEnd)];
    this.#sayEnds(start, end, sentence);
    this.#then(Number(stated[1]), () => this.tally.to(before + start + end));
  }

  /** "Next row" and "same row" are one row apart, where the line above has told how a row begins. */
  #sameRow(which: string): void {
    const same = /^same$/iu.test(which);
    if (same && !this.#begun) this.tally.wrong('It goes on with a row, and no line before it begins one.');
    if (!same && this.#begun) {
      this.tally.wrong(
        'The row that the line before it begins is worked first: say “same row” where that is meant.',
      );
    }
  }

  /** A line that tells of a stretch of the edge: what stands before its last colon is its label. */
  #edgeLine(edge: Edge, line: string): boolean {
    if (forms.groups.test(line)) return false;
    const { sizes, sizeIndex } = this.#following;
    const colon = line.lastIndexOf(': ');
    const words = forSize(line.slice(colon + 2), sizeIndex, sizes.length);
    if (colon >= 0 && typeof words === 'string' && edge.read(words)) {
      const along = alongOf(line.slice(colon + 1), sizeIndex, sizes.length);
      this.#say({ kind: 'stretch', label: line.slice(0, colon), stitches: edge.share, along });
      if (/in the same way: /iu.test(line)) this.#report(edge.problemOfLikeness());
      this.#report(edge.problemOfRatio());
      return true;
    }
    this.#endEdge();
    return false;
  }

  #endEdge(): void {
    this.#report(this.#edge?.problemAtEnd());
    this.#edge = undefined;
  }

  #toComeOutEven(sentence: string): void {
    if (/follows for your size:?$/iu.test(sentence)) this.#wait({ kind: 'groups' });
    else this.#groups(sentence.slice(sentence.indexOf(':') + 1));
  }

  #groups(text: string): void {
    if (!this.#edge) return this.tally.wrong('There is no edge to pick up along.');
    this.#say({ kind: 'groups' });
    this.#report(this.#edge.problemOfGroups(text));
  }

  #report(problem: string | undefined): void {
    if (problem !== undefined) this.tally.wrong(problem);
  }
}

/**
 * Follows the lines of a piece in one size and counts every row.
 *
 * @param lines as they are printed, of one piece, in either craft's words, US or UK; with headings and paragraphs, what
 * they say is among what is said
 * @example
 * verifyPiece(['Cast on 20 (24) sts.', 'Work 2 rows even.', 'Next row (RS): k2tog, k to end [19 (23) sts].'],
 *   { sizes: ['S', 'M'], sizeIndex: 1 })
 * // { counts: [24, 24, 23], problems: [], ended: false, says: [{ line: 0, row: 1, kind: 'begun', how: 'cast on' },
 * //   { line: 1, row: 1, kind: 'unit', unit: 'row' }, { line: 2, row: 3, kind: 'unit', unit: 'row' },
 * //   { line: 2, row: 3, kind: 'side', side: 'RS' }, { line: 2, row: 3, kind: 'stitches', names: ['k'] }] }
 */
export function verifyPiece(lines: readonly (string | PrintedText)[], following: Following): VerifiedPiece {
  const reader = new LineReader(following);
  reader.follow(lines);
  const { says, ended } = reader;
  const { counts, problems } = reader.tally;
  return { counts, problems, says, ended };
}
