import { ownLine } from './by-size';
import { readInstruction } from './instruction';
import { readShaping } from './shaping';
import { forSize } from './size-numbers';
import { longestLine } from './tokens';
import { workInstruction } from './work-instruction';

/** What a text comes to when it is followed. */
export interface Recounted {
  /** The count after every row, as far as it could be followed. */
  readonly counts: readonly number[];
  /** What could not be read or does not come out, each at its line (from 0). */
  readonly problems: readonly { readonly line: number; readonly problem: string }[];
  /** Which side the lines say that single rows (from 1) are worked on. */
  readonly sides: readonly { readonly line: number; readonly row: number; readonly side: 'RS' | 'WS' }[];
  /** Whether the text says what becomes of the last stitches. */
  readonly ended: boolean;
}

/** The sizes of a text and the one that is followed, by its place among them. */
export interface Following {
  readonly sizes: readonly string[];
  readonly place: number;
}

const mostRows = 100_000;
const mostStitches = 10_000_000;
const n = String.raw`(\d+|–)`;
const st = '(?:sts?|stitch(?:es)?)';
const row = '(?:rows?|rounds?|rnds?)';
const pattern = (source: string): RegExp => new RegExp(`^${source}$`, 'iu');

const even = pattern(String.raw`work\s+${n}\s+(?:more\s+)?${row}\s+even(?:ly)?`);
const castOn = pattern(String.raw`(?:cast on|co)\s+${n}\s+${st}`);
const chain = pattern(String.raw`(?:ch|chain)\s+${n}`);
const intoChain = pattern(
  String.raw`.*?in the\s+(\d+)(?:st|nd|rd|th)\s+ch from hook(\s*\(the skipped ch count as .*?\)|\s*\(the missed ch count as .*?\))?(?:\s+and in each ch across)?`,
);
const eachChain = pattern(String.raw`\S+\s+in each ch around`);
const took = /^take up\s+(?:the\s+)?(.*?)(?:\s+of the\s+\d.*?)?\s+left at the end of\s/iu;
const alongLast = /^pick up\s+(.*?)\s+along the last row of\s/iu;
const picked = pattern(
  String.raw`with the right side facing,.*?\bpicks? up\s+${n}\s+${st}\s+(evenly round the armhole|round the armhole, as follows|along the edge, as follows)`,
);
const worked = pattern(
  String.raw`with the right side facing,.*\bwork\s+\S+\s+(evenly round the armhole|round the armhole, as follows|along the edge, as follows)`,
);
const ended = pattern(
  String.raw`(?:fasten off|(?:bind|cast) off all(?:\s+${n})?(?:\s+${st})?|do not (?:bind|cast) off: keep the\s+${n}\s+${st} on the needle|do not fasten off: keep the last\s+${n}\s+${st} open)`,
);
const leaveStart = new RegExp(
  String.raw`(?:(?:sl st|ss) across|(?:bind|cast) off)\s+the first\s+${n}\s+${st}`,
  'iu',
);
const leaveEnd = new RegExp(String.raw`leave the last\s+${n}\s+${st}`, 'iu');
const leaving = String.raw`(?:sl st|ss) across|(?:bind|cast) off`;
const adding = String.raw`cast on|add a foundation of`;
const leftOnRow = pattern(
  String.raw`(?:(?:${leaving})\s+the first\s+${n}\s+${st},\s+then\s+)?work even(?: to the end|,\s+leaving the last\s+${n}\s+${st}\s+(?:unworked|on a holder))`,
);
const addedOnRow = pattern(
  String.raw`(?:(?:${adding})\s+${n}\s+${st},\s+then\s+)?work even to the end(?:,\s+then\s+(?:${adding})\s+${n}\s+${st})?`,
);
const onEachRow = pattern(
  String.raw`(?:(${leaving})|${adding})\s+${n}\s+${st}\s+at the (?:start|beginning) of (?:each of )?the next\s+${n}\s+${row}(?:,\s+working the others even)?`,
);
const addStart = new RegExp(String.raw`${n}\s+${st}\s+at the start`, 'iu');
const addEnd = new RegExp(String.raw`${n}\s+${st}\s+at the end`, 'iu');
const rowLine = new RegExp(
  String.raw`^(?:(next|same)(?:\s+(\d+))?\s+${row}|${row}\s+(\d+)(?:\s*[–-]\s*(\d+))?)\s*(?:\((RS|WS)\))?\s*:\s*(.*)$`,
  'isu',
);
const inRepeats = pattern(
  String.raw`(dec|inc)\s+${n}\s+${st}\s+in\s+(?:each of the\s+${n}\s+repeats|the repeat)`,
);
const spread = pattern(String.raw`(dec|inc)\s+${n}\s+${st}\s+evenly(?:\s+(?:across|around))?`);
const named = new RegExp(
  String.raw`^((?:dec|inc)\s.*?)\s+(?:on|of)\s+${row}\s+(\d[\d\s,–-]*(?:and\s+[\d–\s]+)?)$`,
  'iu',
);
const stated = /\s*\[\s*(\d+|–)\s+sts?\s*\]\s*\.?$/iu;

type Waiting =
  | { readonly kind: 'row'; readonly stated: number | null }
  | { readonly kind: 'rows'; readonly over: number; readonly stated: number | null }
  | { readonly kind: 'named'; readonly over: number; readonly stated: number | null }
  | { readonly kind: 'groups' }
  | { readonly kind: 'nothing' };

const amount = (digits: string | undefined): number =>
  digits === undefined || digits === '–' ? 0 : Number(digits);

/** An edge that is picked up along, stretch by stretch. */
interface Edge {
  readonly total: number;
  readonly sum: number;
  /** The stretch at hand. */
  readonly at: { readonly rows: number; readonly share: number; readonly spread: boolean } | undefined;
}

/** Follows the lines of one piece, stitch by stitch, with nothing but the lines. */
class Follower {
  readonly counts: number[] = [];
  readonly problems: { line: number; problem: string }[] = [];
  readonly sides: { line: number; row: number; side: 'RS' | 'WS' }[] = [];
  ended = false;
  #line = 0;
  #count: number | undefined;
  #chains: number | undefined;
  #waiting: Waiting | undefined;
  #answered = false;
  /** Whether the line before told how a row begins, and what is worked on it comes next. */
  #begun = false;
  #edge: Edge | undefined;
  #taper: { before: number; after: number } | undefined;

  constructor(readonly following: Following) {}

  follow(lines: readonly string[]): void {
    lines.forEach((line, at) => {
      this.#line = at;
      const text = line.trim();
      if (text === '') return;
      if (text.length > longestLine * 4) this.#wrong('It is too long to be read.');
      else this.#read(text);
    });
    this.#line = lines.length - 1;
    this.#endWaiting();
    this.#endEdge();
  }

  #wrong(problem: string): void {
    if (this.problems.length < 200) this.problems.push({ line: this.#line, problem });
  }

  #read(raw: string): void {
    const { sizes, place } = this.following;
    if (this.#waiting) {
      const own = ownLine(raw, sizes);
      if (own) {
        const index = own.places.indexOf(place);
        if (index < 0) return;
        if (this.#answered) {
          this.#wrong('This size was told already what to do here.');
          return;
        }
        this.#answered = true;
        const text = forSize(own.text, index, own.places.length);
        if (typeof text !== 'string') this.#wrong(text.problem);
        else this.#own(this.#waiting, text.replace(/\.$/u, '').trim());
        return;
      }
      this.#endWaiting();
    }
    if (this.#edge && this.#edgeLine(raw)) return;
    const label = took.exec(raw) ?? alongLast.exec(raw);
    if (label) {
      const text = forSize(label[1]!, place, sizes.length);
      if (typeof text !== 'string') this.#wrong(text.problem);
      else this.#begin(amount(/\d+/u.exec(text)?.[0]));
      return;
    }
    const text = forSize(raw, place, sizes.length);
    if (typeof text !== 'string') {
      this.#wrong(text.problem);
      return;
    }
    const count = stated.exec(text);
    // With an en dash for its count the line is not for this size, nor are those it announces.
    if (count?.[1] === '–') {
      this.#begun = false;
      if (/as follows for your size/iu.test(text)) this.#wait({ kind: 'nothing' });
      return;
    }
    const body = (count ? text.slice(0, count.index) : text).replace(/\s+/gu, ' ').replace(/[.\s]+$/u, '');
    this.#statement(body, count ? Number(count[1]) : null);
  }

  #statement(body: string, count: number | null): void {
    const begun = this.#begun;
    this.#begun = false;
    if (this.ended) return this.#wrong('The piece has ended already.');
    let found: RegExpExecArray | null;
    if ((found = castOn.exec(body))) return this.#begin(amount(found[1]));
    if ((found = chain.exec(body))) {
      if (this.#chains !== undefined || this.#count !== undefined)
        return this.#wrong('The piece has begun already.');
      this.#chains = amount(found[1]);
      return;
    }
    if ((found = picked.exec(body))) {
      this.#begin(amount(found[1]));
      if (/follows$/iu.test(found[2]!)) this.#edge = { total: amount(found[1]), sum: 0, at: undefined };
      return;
    }
    if (/^the next round is worked into the chain$/iu.test(body)) return this.#begin(this.#chains);
    if (/^the next row is worked into the chain/iu.test(body)) {
      const into = intoChain.exec(body.replace('beginning in', 'in'));
      if (!into) return this.#wrong('It does not say in which chain to begin.');
      this.#intoChain(amount(into[1]), into[2] !== undefined);
      return this.#check(count);
    }
    if ((found = even.exec(body))) {
      this.#rows(amount(found[1]));
      return this.#check(count);
    }
    if (ended.test(body)) {
      this.ended = true;
      const said = /\d+/u.exec(body)?.[0];
      if (said !== undefined) this.#check(Number(said));
      return;
    }
    if ((found = /^on the (next|same) (?:row|round),/iu.exec(body))) {
      this.#sameRow(found[1]!, begun);
      return this.#ends(body);
    }
    if ((found = onEachRow.exec(body))) {
      const by = (found[1] === undefined ? 1 : -1) * amount(found[2]);
      for (let rows = Math.min(amount(found[3]), mostRows); rows > 0; rows--) {
        if (this.#have() === undefined) return;
        this.#to(this.#count! + by);
        this.#rows(1);
      }
      return this.#check(count);
    }
    if (/^to come out even(?::|, as follows)/iu.test(body)) {
      if (/follows for your size:?$/iu.test(body)) this.#wait({ kind: 'groups' });
      else this.#groups(body.slice(body.indexOf(':') + 1).trim());
      return;
    }
    if (
      (found = new RegExp(String.raw`^shape the next ${n} ${row} as follows for your size$`, 'iu').exec(body))
    ) {
      return this.#wait({ kind: 'rows', over: amount(found[1]), stated: count });
    }
    if (
      (found = new RegExp(String.raw`^work ${n} ${row}, shaping as follows for your size; .*$`, 'iu').exec(
        body,
      ))
    ) {
      return this.#wait({ kind: 'named', over: amount(found[1]), stated: count });
    }
    if ((found = new RegExp(String.raw`^work ${n} ${row}; of these, (.*)$`, 'iu').exec(body))) {
      this.#namedRows(amount(found[1]), found[2]!);
      return this.#check(count);
    }
    if (
      (found =
        /^the first of these rounds: (.*?)\. each one after it has 1 st (fewer between the decreases|more between the increases)$/iu.exec(
          body,
        ))
    ) {
      return this.#firstOfThese(found[1]!, found[2]!);
    }
    if (/^(?:dec|inc)(?:rease)?\s/iu.test(body)) {
      this.#shaping(body);
      return this.#check(count);
    }
    if ((found = rowLine.exec(body))) {
      if (found[1] !== undefined) this.#sameRow(found[1], begun);
      return this.#rowLine(found, count);
    }
    this.#wrong(`“${body.slice(0, 120)}” could not be read.`);
  }

  #begin(count: number | undefined): void {
    if (count === undefined || count < 1) return this.#wrong('It does not say how many stitches there are.');
    if (this.#count !== undefined) return this.#wrong('The piece has begun already.');
    this.#count = count;
  }

  #intoChain(first: number, counts: boolean): void {
    if (this.#chains === undefined) return this.#wrong('There is no chain to work into.');
    this.#begin(this.#chains - (first - 1) + (counts ? 1 : 0));
  }

  #have(): number | undefined {
    if (this.#count === undefined)
      this.#wrong('The piece has not begun: no line says how many stitches there are.');
    return this.#count;
  }

  #rows(rows: number, count = this.#have()): void {
    if (count === undefined) return;
    if (this.counts.length + rows > mostRows)
      return this.#wrong(`More than ${mostRows} rows are not followed.`);
    for (let row = 0; row < rows; row++) this.counts.push(count);
  }

  #to(count: number): void {
    if (count < 1) this.#wrong(`That leaves ${count} stitches.`);
    else if (count > mostStitches) this.#wrong('That is more stitches than can be counted.');
    else this.#count = count;
  }

  /** Compares with what the line says; goes on with what was counted. */
  #check(count: number | null): void {
    if (count === null || this.#count === undefined || this.#count === count) return;
    this.#wrong(`It says ${count} stitches, and following it gives ${this.#count}.`);
  }

  #wait(waiting: Waiting): void {
    this.#waiting = waiting;
    this.#answered = false;
  }

  #endWaiting(): void {
    const waiting = this.#waiting;
    const idle = waiting?.kind === 'nothing' || (waiting?.kind === 'groups' && this.#edge?.at?.share === 0);
    if (waiting && !idle && !this.#answered) this.#wrong('No line says what this size does here.');
    this.#waiting = undefined;
  }

  #own(waiting: Waiting, text: string): void {
    switch (waiting.kind) {
      case 'nothing':
        return this.#wrong('This size has nothing to do here, and a line tells it what.');
      case 'groups':
        return this.#groups(text);
      case 'row':
        this.#row(text, 1);
        return this.#check(waiting.stated);
      case 'named':
        this.#namedRows(waiting.over, text);
        return this.#check(waiting.stated);
      case 'rows': {
        const before = this.counts.length;
        for (const step of text.split(/\s*;\s*/u)) this.#statement(step, null);
        const rows = this.counts.length - before;
        if (rows !== waiting.over)
          this.#wrong(`It says ${waiting.over} rows, and following it gives ${rows}.`);
        return this.#check(waiting.stated);
      }
    }
  }

  #rowLine([, next, many, from, to, side, content = '']: RegExpExecArray, count: number | null): void {
    if (side !== undefined) {
      const told = side.toUpperCase() === 'RS' ? 'RS' : 'WS';
      this.sides.push({ line: this.#line, row: this.counts.length + 1, side: told });
    }
    const rows = next ? amount(many ?? '1') : to === undefined ? 1 : amount(to) - amount(from) + 1;
    if (!next && amount(from) !== this.counts.length + 1) {
      return this.#wrong(`It is called row ${from ?? ''}, and it is row ${this.counts.length + 1}.`);
    }
    if (rows < 1 || rows > mostRows) return this.#wrong('It does not say how many rows it is for.');
    if (/as follows for your size$/iu.test(content)) return this.#wait({ kind: 'row', stated: count });
    const into = intoChain.exec(content);
    if (into && this.#count === undefined) {
      this.#intoChain(amount(into[1]), into[2] !== undefined);
      this.#rows(1);
      return this.#check(count);
    }
    if (eachChain.test(content) && this.#count === undefined) {
      this.#begin(this.#chains);
      this.#rows(1);
      return this.#check(count);
    }
    const edge = worked.exec(content);
    if (edge) {
      if (count === null) return this.#wrong('It does not say how many stitches there are.');
      this.#begin(count);
      this.#rows(1);
      if (/follows$/iu.test(edge[1]!)) this.#edge = { total: count, sum: 0, at: undefined };
      return;
    }
    this.#row(content, rows);
    this.#check(count);
  }

  /** What one row, or each of several, does. */
  #row(content: string, rows: number): void {
    for (let done = 0; done < rows; done++) {
      const before = this.#have();
      if (before === undefined) return;
      const after = this.#after(content, before);
      if (typeof after !== 'number') {
        this.#wrong(after.problem);
        return;
      }
      this.#to(after);
      this.#rows(1);
    }
  }

  #after(content: string, before: number): number | { problem: string } {
    const repeats = inRepeats.exec(content);
    if (repeats) return before + sign(repeats[1]!) * amount(repeats[2]) * amount(repeats[3] ?? '1');
    const ends = leftOnRow.exec(content);
    if (ends) return before - amount(ends[1]) - amount(ends[2]);
    const more = addedOnRow.exec(content);
    if (more) return before + amount(more[1]) + amount(more[2]);
    const evenly = spread.exec(content);
    if (evenly) return before + sign(evenly[1]!) * amount(evenly[2]);
    const parts = readInstruction(content);
    if ('problem' in parts) return parts;
    const counted = workInstruction(parts, before);
    return 'problem' in counted ? counted : counted.count;
  }

  #shaping(text: string): void {
    const shaping = readShaping(text);
    if ('problem' in shaping) return this.#wrong(shaping.problem);
    const before = this.#have();
    if (before === undefined) return;
    const by = shaping.way === 'dec' ? -shaping.perRow : shaping.perRow;
    const shaped = (): boolean => {
      const after = this.#count! + by;
      if (after < 1) {
        this.#wrong(`It takes away more stitches than there are: ${this.#count!} are left.`);
        return false;
      }
      this.#to(after);
      this.#rows(1);
      return this.counts.length < mostRows;
    };
    if (shaping.next && !shaped()) return;
    this.#taper = { before, after: before + by };
    for (const { every, times } of shaping.intervals) {
      for (let time = 0; time < times; time++) {
        this.#rows(every - 1);
        if (!shaped()) return;
      }
    }
  }

  #firstOfThese(content: string, each: string): void {
    const taper = this.#taper;
    this.#taper = undefined;
    if (!taper) return this.#wrong('There is no shaping before it.');
    const after = this.#after(content, taper.before);
    if (typeof after !== 'number') return this.#wrong(after.problem);
    const [says, does] = [/^fewer/iu.test(each), taper.after < taper.before];
    if (says !== does) {
      this.#wrong(
        `It speaks of ${says ? 'decreases' : 'increases'}, and the shaping before it ${does ? 'decreases' : 'increases'}.`,
      );
    }
    if (after !== taper.after) {
      this.#wrong(`It gives ${after} stitches, and the shaping before it ${taper.after}.`);
    }
  }

  #namedRows(over: number, text: string): void {
    const before = this.#have();
    if (before === undefined) return;
    if (/^work even$/iu.test(text)) return this.#rows(over);
    const found = named.exec(text);
    if (!found) return this.#wrong(`“${text.slice(0, 120)}” could not be read.`);
    const shaping = readShaping(`${found[1]!} on the next row`);
    if ('problem' in shaping) return this.#wrong(shaping.problem);
    const rows = new Set<number>();
    for (const part of found[2]!.split(/\s*(?:,|and)\s*/u)) {
      const [from, to = from] = part.split(/\s*[–-]\s*/u).map(Number);
      if (!from || !to || to > over || to < from)
        return this.#wrong(`There is no row ${part.trim()} among ${over}.`);
      for (let row = from; row <= to; row++) rows.add(row);
    }
    if (over > mostRows) return this.#wrong(`More than ${mostRows} rows are not followed.`);
    for (let row = 1; row <= over; row++) {
      if (rows.has(row)) this.#to(this.#count! + sign(shaping.way) * shaping.perRow);
      this.#rows(1);
    }
  }

  #ends(body: string): void {
    const before = this.#have();
    if (before === undefined) return;
    const said =
      /working (?:the other )?(\d+|–) sts? (?:in all )?as follows(?:, that (?:row|round) included)?$/iu.exec(
        body,
      );
    if (!said) return this.#wrong('It does not say how many stitches are worked.');
    this.#begun = true;
    if (said[1] === '–') return;
    if (/add a foundation of|cast on/iu.test(body)) {
      this.#to(before + amount(addStart.exec(body)?.[1]) + amount(addEnd.exec(body)?.[1]));
    } else {
      this.#to(before - amount(leaveStart.exec(body)?.[1]) - amount(leaveEnd.exec(body)?.[1]));
    }
    this.#check(Number(said[1]));
  }

  /** "Next row" and "same row" are one row apart, where the line above has told how a row begins. */
  #sameRow(which: string, begun: boolean): void {
    const same = /^same$/iu.test(which);
    if (same && !begun) this.#wrong('It goes on with a row, and no line before it begins one.');
    if (!same && begun) {
      this.#wrong(
        'The row that the line before it begins is worked first: say “same row” where that is meant.',
      );
    }
  }

  /** A stretch of the edge that is picked up: what stands before the last colon is its label. */
  #edgeLine(raw: string): boolean {
    const { sizes, place } = this.following;
    if (/^to come out even[:,]/iu.test(raw)) return false;
    const tail = raw.slice(raw.lastIndexOf(': ') + 2);
    const text = forSize(tail, place, sizes.length);
    const found =
      typeof text === 'string'
        ? new RegExp(
            String.raw`^${n} ${st}(?: over ${n} row ends?, about .*|, one in each st| over .* repeats?, about .*|, spread evenly along .*)\.$`,
            'iu',
          ).exec(text)
        : null;
    if (!found || !raw.includes(': ')) {
      this.#endEdge();
      return false;
    }
    const { total, sum, at } = this.#edge!;
    const [share, rows] = [amount(found[1]), amount(found[2])];
    if (/in the same way: /iu.test(raw) && at && (at.share !== share || at.rows !== rows)) {
      this.#wrong(
        `It is said to be like the stretch before it, and it has ${share} stitches over ${rows} row ends where that one has ${at.share} over ${at.rows}.`,
      );
    }
    this.#edge = { total, sum: sum + share, at: { rows, share, spread: false } };
    return true;
  }

  #endEdge(): void {
    const edge = this.#edge;
    this.#edge = undefined;
    if (edge && edge.sum !== edge.total) {
      this.#wrong(
        `The stretches of the edge add up to ${edge.sum} stitches, and ${edge.total} are picked up.`,
      );
    }
  }

  /** "(pick up 3, skip 1) 10 times": over as many row ends, and as many stitches, as the line above says. */
  #groups(text: string): void {
    const edge = this.#edge;
    if (!edge) return this.#wrong('There is no edge to pick up along.');
    const stretch = edge.at;
    if (!stretch) return this.#wrong('No stretch of the edge stands before it.');
    // An en dash on the line above: this size picks up nothing here.
    if (stretch.share === 0) return;
    if (stretch.spread) {
      return this.#wrong('It was told already how this stretch of the edge comes out even.');
    }
    this.#edge = { ...edge, at: { ...stretch, spread: true } };
    // A row end is used where it is picked up once, and where it is skipped.
    const words = text
      .replace(/(?<!\d)(\d+|–) in each of the next (\d+|–) row ends/giu, '($1 in the next row end) $2 times')
      .replace(/(?<!\d)(\d+|–) in the next row end/giu, '$1 sc in next st')
      .replace(/pick up (\d+)/giu, 'sc $1');
    const parts = readInstruction(words);
    if ('problem' in parts) return this.#wrong(parts.problem);
    const counted = workInstruction(parts, stretch.rows);
    if ('problem' in counted) return this.#wrong(counted.problem);
    if (counted.count !== stretch.share) {
      this.#wrong(`It picks up ${counted.count} stitches, and the line above says ${stretch.share}.`);
    }
  }
}

const sign = (way: string): number => (way.toLowerCase().startsWith('dec') ? -1 : 1);

/**
 * Follows the lines of a piece in one size and counts every row.
 *
 * @param lines as they are printed, of one piece, in either craft's words, US or UK
 * @example
 * recountPiece(['Cast on 20 (24) sts.', 'Work 2 rows even.', 'Next row (RS): k2tog, k to end [19 (23) sts].'],
 *   { sizes: ['S', 'M'], place: 1 })
 * // { counts: [24, 24, 23], problems: [], sides: [{ line: 2, row: 3, side: 'RS' }], ended: false }
 */
export function recountPiece(lines: readonly string[], following: Following): Recounted {
  const follower = new Follower(following);
  follower.follow(lines);
  const { counts, problems, sides, ended } = follower;
  return { counts, problems, sides, ended };
}
