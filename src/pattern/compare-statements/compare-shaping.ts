import type { Piece, Row } from '../../craft';
import type { Said } from '../verify';

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

/** Something that a text says of a piece and that is otherwise; `line` where it says it. */
export interface Otherwise {
  readonly line?: number;
  readonly problem: string;
}

/**
 * What a text says of a piece beside its counts, and that is otherwise as the piece is meant: a reader who follows it
 * would have the right number of stitches and another piece.
 */
export function toldOtherwise(
  says: readonly Said[],
  plan: Piece,
  rows: readonly Row[],
  { labels, edge }: Meant,
): Otherwise[] {
  return [
    ...says.flatMap((said) => otherwise(said, plan, rows, labels)),
    ...sideUntold(says, rows),
    ...endsOtherwise(says, plan, rows),
    ...(edge ? edgeOtherwise(says, edge) : []),
  ];
}

function otherwise(said: Said, plan: Piece, rows: readonly Row[], labels: readonly string[]): Otherwise[] {
  const { line, row } = said;
  const worked = rows[row - 1];
  switch (said.kind) {
    case 'side':
      if (worked?.side === said.side) return [];
      return [
        {
          line,
          problem: `It calls row ${row} ${said.side}, and in the notebook that row is worked on the other side.`,
        },
      ];
    case 'unit': {
      const unit = plan.worked === 'round' ? 'round' : 'row';
      if (said.unit === unit) return [];
      return [{ line, problem: `It speaks of ${said.unit}s, and the piece is worked in ${unit}s.` }];
    }
    case 'edge': {
      const label = (worked && labels[worked.stretch]) ?? '';
      const meant = edges.filter((edge) => new RegExp(`\\b${edge}`, 'iu').test(label));
      // Where the stretch names no edge, whoever writes knows better.
      if (meant.length === 0 || !edges.includes(said.edge) || meant.includes(said.edge)) return [];
      return [
        {
          line,
          problem: `It shapes at the ${said.edge} edge, and “${label}” is shaped at the ${meant[0]!} edge.`,
        },
      ];
    }
    default:
      return [];
  }
}

function sideUntold(says: readonly Said[], rows: readonly Row[]): Otherwise[] {
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
function endsOtherwise(says: readonly Said[], plan: Piece, rows: readonly Row[]): Otherwise[] {
  const meant = new Ends();
  let done = 0;
  plan.stretches.forEach((stretch, at) => {
    if (stretch.kind === 'leave') meant.add(done + 1, -stretch.atStart, -stretch.atEnd);
    if (stretch.kind === 'add') meant.add(done + 1, stretch.atStart, stretch.atEnd);
    done += rows.filter((row) => row.stretch === at).length;
  });
  const told = new Ends();
  const lines = new Map<number, number>();
  for (const said of says) {
    if (said.kind !== 'ends') continue;
    told.add(said.row, said.start, said.end);
    lines.set(said.row, said.line);
  }
  return [...new Set([...meant.rows.keys(), ...told.rows.keys()])].flatMap((row) => {
    const [as, text] = [meant.at(row), told.at(row)];
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
function edgeOtherwise(says: readonly Said[], edge: readonly EdgeStretch[]): Otherwise[] {
  const told = says.flatMap((said) => (said.kind === 'stretch' && said.stitches > 0 ? [said] : []));
  const meant = edge.filter(({ stitches }) => stitches > 0);
  const at = meant.findIndex(({ label, stitches }, place) => {
    const said = told[place];
    return !said || !said.label.includes(label) || said.stitches !== stitches;
  });
  const [one, said] = [meant[at], told[at]];
  if (!one) {
    if (told.length <= meant.length) return [];
    return [
      { line: told[meant.length]!.line, problem: 'It picks up along more stretches than the edge has.' },
    ];
  }
  return [
    {
      ...(said ? { line: said.line } : {}),
      problem: `The edge goes on along ${one.label}, with ${one.stitches} stitches, and that is not what it says there.`,
    },
  ];
}
