import type { Piece, Row } from '../../craft';
import type { SideStatement } from '../verify';
import type { Mismatch } from './mismatch';

/** A stretch of an edge that a piece is picked up along. */
export interface EdgeStretch {
  readonly label: string;
  readonly stitches: number;
}

/** What a piece is meant to be, beside its plan and its rows. */
export interface Meant {
  /** The labels of its stretches, which may name the edge they shape. */
  readonly labels: readonly string[];
  /** The stretches it is picked up along, in their order; undefined where it is picked up along none. */
  readonly edge: readonly EdgeStretch[] | undefined;
}

/**
 * Differences in shaping that leave the counts right: a reader who follows the text would have the right number of
 * stitches and another piece.
 */
export function compareShaping(
  says: readonly SideStatement[],
  plan: Piece,
  rows: readonly Row[],
  { labels, edge }: Meant,
): Mismatch[] {
  return [
    ...says.flatMap((message) => differences(message, plan, rows, labels)),
    ...sideUntold(says, rows),
    ...endsDiffer(says, plan, rows),
    ...(edge ? edgeDiffer(says, edge) : []),
  ];
}

function differences(
  message: SideStatement,
  plan: Piece,
  rows: readonly Row[],
  labels: readonly string[],
): Mismatch[] {
  const { line, row } = message;
  const worked = rows[row - 1];
  switch (message.kind) {
    case 'side':
      if (worked?.side === message.side) return [];
      return [
        {
          line,
          problem: `It calls row ${row} ${message.side}, and in the notebook that row is worked on the other side.`,
        },
      ];
    case 'unit': {
      const unit = plan.worked === 'round' ? 'round' : 'row';
      if (message.unit === unit) return [];
      return [{ line, problem: `It speaks of ${message.unit}s, and the piece is worked in ${unit}s.` }];
    }
    case 'edge': {
      const label = (worked && labels[worked.stretch]) ?? '';
      const meant = edges.filter((edge) => new RegExp(`\\b${edge}`, 'iu').test(label));
      // Where the stretch names no edge, whoever writes knows better.
      if (meant.length === 0 || !edges.includes(message.edge) || meant.includes(message.edge)) return [];
      return [
        {
          line,
          problem: `It shapes at the ${message.edge} edge, and “${label}” is shaped at the ${meant[0]!} edge.`,
        },
      ];
    }
    default:
      return [];
  }
}

function sideUntold(says: readonly SideStatement[], rows: readonly Row[]): Mismatch[] {
  if (rows[0]?.side !== 'WS' || says.some(({ kind, row }) => kind === 'side' && row === 1)) return [];
  return [
    {
      problem:
        'It does not say that row 1 is on the wrong side, and a piece begins on the right side unless it does.',
    },
  ];
}

/** Edges of a piece as the trade calls them. */
const edges = ['neck', 'armhole', 'side', 'underarm', 'hem'];

/** Stitches left or added at the other end of a row than is meant, or on another row. */
function endsDiffer(says: readonly SideStatement[], plan: Piece, rows: readonly Row[]): Mismatch[] {
  const meant = new Ends();
  let done = 0;
  plan.stretches.forEach((stretch, at) => {
    if (stretch.kind === 'leave') meant.add(done + 1, -stretch.atStart, -stretch.atEnd);
    if (stretch.kind === 'add') meant.add(done + 1, stretch.atStart, stretch.atEnd);
    done += rows.filter((row) => row.stretch === at).length;
  });
  const stated = new Ends();
  const lines = new Map<number, number>();
  for (const message of says) {
    if (message.kind !== 'ends') continue;
    stated.add(message.row, message.start, message.end);
    lines.set(message.row, message.line);
  }
  return [...new Set([...meant.rows.keys(), ...stated.rows.keys()])].flatMap((row) => {
    const [as, text] = [meant.at(row), stated.at(row)];
    if (as.start === text.start && as.end === text.end) return [];
    const line = lines.get(row);
    return [
      {
        ...(line === undefined ? {} : { line }),
        problem: `On row ${row} it has ${ends(text)}, and the notebook ${ends(as)}.`,
      },
    ];
  });
}

interface AtEnds {
  readonly start: number;
  readonly end: number;
}

class Ends {
  readonly rows = new Map<number, AtEnds>();

  at(row: number): AtEnds {
    return this.rows.get(row) ?? { start: 0, end: 0 };
  }

  add(row: number, start: number, end: number): void {
    const before = this.at(row);
    this.rows.set(row, { start: before.start + start, end: before.end + end });
  }
}

function ends({ start, end }: AtEnds): string {
  const change = (by: number): string => (by === 0 ? 'none' : `${Math.abs(by)} ${by < 0 ? 'left' : 'added'}`);
  return `${change(start)} at its start and ${change(end)} at its end`;
}

/** Stretches of an edge told in another order, or by another name. */
function edgeDiffer(says: readonly SideStatement[], edge: readonly EdgeStretch[]): Mismatch[] {
  const stated = says.flatMap((message) =>
    message.kind === 'stretch' && message.stitches > 0 ? [message] : [],
  );
  const meant = edge.filter(({ stitches }) => stitches > 0);
  const at = meant.findIndex(({ label, stitches }, sizeIndex) => {
    const message = stated[sizeIndex];
    return !message || !message.label.includes(label) || message.stitches !== stitches;
  });
  const [one, message] = [meant[at], stated[at]];
  if (!one) {
    if (stated.length <= meant.length) return [];
    return [
      { line: stated[meant.length]!.line, problem: 'It picks up along more stretches than the edge has.' },
    ];
  }
  return [
    {
      ...(message ? { line: message.line } : {}),
      problem: `The edge goes on along ${one.label}, with ${one.stitches} stitches, and that is not what it says there.`,
    },
  ];
}
