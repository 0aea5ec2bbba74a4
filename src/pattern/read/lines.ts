import type { TextRange } from './types';

/** A line to be read: one of the text, or several where a bracket was left open at the end of one. */
export interface LogicalLine {
  readonly text: string;
  /** The first of its lines, from 1. */
  readonly line: number;
  /** How many lines of the text it takes; none where it is of a table whose lines are told by another. */
  readonly lines: number;
  /** What it was read as before any reader saw it. */
  readonly as?: string;
  /** A cell of a table stands for the whole row. */
  range(from: number, to: number): TextRange;
}

const mostJoined = 4;

function openBrackets(text: string): number {
  let depth = 0;
  for (const sign of text) {
    if ('([{'.includes(sign)) depth++;
    else if (')]}'.includes(sign)) depth = Math.max(0, depth - 1);
  }
  return depth;
}

/** The lines of a text, a size list that was broken over two of them put together again. */
export function logicalLines(text: string): LogicalLine[] {
  const printed = text.split(/\r\n|\r|\n/u);
  const found: LogicalLine[] = [];
  for (let at = 0; at < printed.length;) {
    let many = 1;
    let joined = printed[at]!;
    while (openBrackets(joined) > 0 && many < mostJoined && at + many < printed.length) {
      const more = printed[at + many]!;
      if (more.trim() === '' || !/^[\s\d½⅓⅔¼¾⅛⅜⅝⅞,;:.()[\]{}–—-]/u.test(more)) break;
      joined += ` ${more.trim()}`;
      many++;
    }
    if (openBrackets(joined) > 0 && many > 1) {
      many = 1;
      joined = printed[at]!;
    }
    found.push(joinedLine(printed, at, many, joined));
    at += many;
  }
  return found;
}

function joinedLine(printed: readonly string[], at: number, lines: number, text: string): LogicalLine {
  const first = printed[at]!.length;
  const range = (from: number, to: number): TextRange =>
    from < first || lines === 1
      ? { line: at + 1, from, to: Math.min(to, first) }
      : { line: at + 2, from: 0, to: printed[at + 1]!.length };
  return { text, line: at + 1, lines, range };
}
