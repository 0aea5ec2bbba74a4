import {
  allCells,
  type Cell,
  type Notebook,
  type PickUpCell,
  type PieceCell,
  type RepeatFit,
} from './document';
import { namesIn, sameName } from '../formulas';
import { inputsOf } from './kinds';
import { tableOf } from './name-table';

/** Where the first stitches of a piece come from. */
export type Start =
  | { readonly kind: 'new'; readonly fit?: RepeatFit }
  | { readonly kind: 'edge'; readonly pickUp: PickUpCell }
  /** Along both sides of an armhole and its underarm, as `JOINARMHOLE` counts. */
  | { readonly kind: 'armhole'; readonly formula: string }
  | {
      readonly kind: 'stitches';
      /** The piece they were left by, and its label. */
      readonly piece: string;
      readonly of: string;
      readonly held: boolean;
      /** Whether they are a part of its last row. */
      readonly isPart: boolean;
      /** Whether they are one of two like sides of it, with other stitches between them. */
      readonly isSide: boolean;
    };

/**
 * Where the first stitches of a piece come from, read off the formula of its count: a pick-up, an armhole, the last
 * row of another piece, or new ones. A formula cell that only passes a count on is followed.
 */
export function startOf(notebook: Notebook, piece: PieceCell): Start {
  const table = tableOf(notebook);
  const byId = new Map<string, Cell>(allCells(notebook).map((cell) => [cell.id, cell]));
  let formula = 'formula' in piece.start ? piece.start.formula : '';
  for (let followed = 0; followed < 8; followed++) {
    if (/^\s*=?\s*JOINARMHOLE\s*\(/iu.test(formula)) return { kind: 'armhole', formula };
    const names = namesIn(formula);
    // A part of another piece's last row: its end, less what is left out.
    const left = names.length > 1 ? endNamed(names, table, byId, piece.id) : undefined;
    if (left) return stitchesOf(left, true, halfOfRest.test(formula));
    const only = formula.trim().replace(/^=\s*/u, '');
    const named = names.length === 1 ? table.get(sameName(names[0]!)) : undefined;
    const cell = named && byId.get(named.cell);
    if (!named || !cell || sameName(only) !== sameName(names[0]!)) break;
    if (cell.kind === 'pickUp' && named.key === 'total') return { kind: 'edge', pickUp: cell };
    if (
      cell.kind === 'piece' &&
      cell.id !== piece.id &&
      (named.key === 'end' || named.key.endsWith('.last'))
    ) {
      return stitchesOf(cell, false);
    }
    if (cell.kind === 'fit') return { kind: 'new', fit: cell };
    const input = inputsOf(cell).find((one) => one.key === named.key);
    const next =
      cell.kind === 'formula' ? cell.formula : input && 'formula' in input.entry ? input.entry.formula : '';
    if (next === '') break;
    formula = next;
  }
  return { kind: 'new' };
}

/** `(front_end - neck_sts) / 2`: half of what is beside the stitches in the middle. */
const halfOfRest = /^\s*=?\s*\(\s*[\p{L}_][\p{L}\p{N}_]*\s*-\s*[\p{L}_][\p{L}\p{N}_]*\s*\)\s*\/\s*2\s*$/u;

function stitchesOf({ id, label, ends }: PieceCell, isPart: boolean, isSide = false): Start {
  return { kind: 'stitches', piece: id, of: label, held: ends === 'held', isPart, isSide };
}

/** The other piece whose end a formula begins with. */
function endNamed(
  names: readonly string[],
  table: ReturnType<typeof tableOf>,
  byId: ReadonlyMap<string, Cell>,
  own: string,
): PieceCell | undefined {
  const named = table.get(sameName(names[0]!));
  const cell = named && byId.get(named.cell);
  return cell?.kind === 'piece' && cell.id !== own && named?.key === 'end' ? cell : undefined;
}

/**
 * The side of the first row of a piece, where it does not say so itself. In knitting the right side faces while stitches
 * are picked up, so the row that comes back over them is a wrong-side row. In crochet the pick-up is row 1 itself; new
 * stitches, and held ones that are gone on with, begin on the right side; in the round all rows are right-side rows.
 *
 * @example firstSide(notebook, { startsOn: 'RS', … }) // 'RS', whatever it begins on
 *
 * Source: common practice.
 */
export function firstSide(notebook: Notebook, piece: PieceCell): 'RS' | 'WS' {
  if (piece.startsOn !== undefined) return piece.startsOn;
  if (piece.worked === 'round' || notebook.settings.craft !== 'knitting') return 'RS';
  // A count that is typed was picked up nowhere; most pieces need no looking up.
  if (!('formula' in piece.start)) return 'RS';
  const start = startOf(notebook, piece);
  const isPickedUp =
    start.kind === 'edge' || start.kind === 'armhole' || (start.kind === 'stitches' && !start.held);
  return isPickedUp ? 'WS' : 'RS';
}

const fromWrongSide = new WeakMap<PieceCell, PieceCell>();

/** A cell as it is worked: a piece whose first row is on the wrong side by default says so. */
export function asWorked<C extends Cell>(notebook: Notebook, cell: C): C {
  if (cell.kind !== 'piece' || cell.startsOn !== undefined || firstSide(notebook, cell) === 'RS') return cell;
  // The same cell each time, since what differs between two notebooks is found by identity.
  const known = fromWrongSide.get(cell) ?? { ...(cell as PieceCell), startsOn: 'WS' };
  fromWrongSide.set(cell, known);
  return known as C;
}
