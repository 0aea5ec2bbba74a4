import type { SideStatement } from '../verify';
import { asRead } from './expected';
import type { PieceMeant } from './piece-meant';
import type { Mismatch } from './mismatch';

type Heading = Extract<SideStatement, { kind: 'heading' }>;

/** A heading that is due, and the rows it may stand above. */
interface Due {
  readonly text: string;
  readonly from: number;
  to: number;
  /** It may be left out: all that it is for can be told with what stands before it. */
  optional: boolean;
}

/** The headings of a piece in one size: every stretch stands under its label, in the order in which they are worked. */
export function headingsSay(message: readonly Heading[], meant: PieceMeant): Mismatch[] {
  const due = headingsDue(meant);
  let at = 0;
  for (const { text, from, to, optional } of due) {
    const one = message[at];
    if (one && asRead(one.text) === text && one.row >= from && one.row <= to) at++;
    else if (!optional) {
      return [
        {
          ...(one ? { line: one.line } : {}),
          problem: `“${text}” is to stand above row ${from}${one ? `, and “${one.text}” stands above row ${one.row}` : ''}.`,
        },
      ];
    }
  }
  const more = message[at];
  return more ? [{ line: more.line, problem: `The notebook has no “${more.text}” at row ${more.row}.` }] : [];
}

function headingsDue({ rows, plan, stretches }: PieceMeant): Due[] {
  const due: Due[] = [];
  let next = 1;
  let isFirst = true;
  stretches.forEach((stretch, at) => {
    const from = next;
    next += rows.filter((row) => row.stretch === at).length;
    const planned = plan.stretches[at]!;
    const noEnds =
      (planned.kind === 'leave' || planned.kind === 'add') && planned.atStart + planned.atEnd === 0;
    if (!stretch.someRows && !stretch.isEnds) return;
    // Its first row may be told with how the piece begins, or with the stitches left or added on it.
    const goesWith = isFirst || stretches[at - 1]!.isEnds;
    if (!stretch.isEnds) isFirst = false;
    const to = from + (goesWith && !stretch.isEnds ? 1 : 0);
    const optional = noEnds || (goesWith && stretch.oneRow && !stretch.isEnds);
    if (stretch.label === '') return;
    const last = due.at(-1);
    if (last?.text === stretch.label) {
      if (last.optional) [last.to, last.optional] = [to, optional];
      return;
    }
    due.push({ text: stretch.label, from, to, optional });
  });
  return due;
}
