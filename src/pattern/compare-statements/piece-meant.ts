import { sameName } from '../../formulas';
import { beginningOf, givenTo, middleOf, type Beginning } from './begins';
import { asRead } from './expected';
import { chainsMeant } from './chains-meant';
import { swatchOf, type Garment, type MeantPiece, type WorkedPiece } from './garment';
import { crochetStitches } from './terms-meant';
import { workedAs } from './tools-meant';

/** What a piece is meant to be in one size, beside the counts of its rows. */
export interface PieceMeant extends WorkedPiece {
  readonly craft: 'crochet' | 'knitting';
  readonly label: string;
  readonly note: string;
  readonly stretches: readonly StretchMeant[];
  readonly begins: Beginning;
  /** Where it goes on with another piece: the stitches that piece ends with. */
  readonly whole: number | undefined;
  /** Where it is one of two sides of that piece: the stitches between them. */
  readonly middle: number | undefined;
  /** The chains of a buttonhole on the first row of each stretch; undefined where it has none. */
  readonly chains: readonly (number | undefined)[];
  readonly edge: readonly EdgeMeant[] | undefined;
  readonly end: string;
}

export interface StretchMeant {
  readonly label: string;
  /** "Rib (4 mm needles)"; empty where its swatch is not in the notebook. */
  readonly fabric: string;
  /** The stitch of its fabric by its side, as the text names it. */
  readonly stitch: Readonly<Record<'RS' | 'WS' | 'round', string>>;
  /** Whether it has rows in any size, and whether in each size it has one at most. */
  readonly someRows: boolean;
  readonly oneRow: boolean;
  readonly isEnds: boolean;
  /** Whether it is a taper whose first round is told stitch by stitch, where one line tells its shaping. */
  readonly tellsFirstRound: boolean;
}

/** A stretch of an edge that a piece is picked up along. */
export interface EdgeMeant {
  readonly label: string;
  readonly stitches: number;
  readonly by: 'rows' | 'stitches' | 'motifs' | 'curve';
  /** Rows, stitches or repeats; the cm of a curve. */
  readonly amount: number | undefined;
  /** Whether it is told how it comes out even. */
  readonly groups: boolean;
}

/** What a piece is meant to be in the size at a place. */
export function pieceMeant(garment: Garment, piece: MeantPiece, sizeIndex: number): PieceMeant {
  const { cell, worked } = piece;
  const { craft } = garment.source.notebook.settings;
  const begins = beginningOf(garment, cell);
  const other =
    begins.from === 'piece' ? garment.pieces.find(({ cell: { id } }) => id === begins.piece.id) : undefined;
  const next = garment.pieces[garment.pieces.indexOf(piece) + 1];
  const one = worked[sizeIndex]!;
  return {
    ...one,
    craft,
    label: asRead(cell.label),
    note: asRead(cell.note ?? ''),
    stretches: cell.stretches.map((_stretch, at) => stretchMeant(garment, piece, at)),
    begins,
    whole: other?.worked[sizeIndex]?.rows.at(-1)!.count,
    middle: middleOf(garment, piece)?.[sizeIndex],
    chains: chainsMeant(garment, cell, garment.sizes[sizeIndex]!.id),
    edge: edgeMeant(garment, begins, garment.sizes[sizeIndex]!.id),
    end: endMeant(garment, piece, next),
  };
}

function endMeant(garment: Garment, { cell }: MeantPiece, next: MeantPiece | undefined): string {
  const crochet = garment.source.notebook.settings.craft === 'crochet';
  if (cell.ends === 'bound off') return crochet ? 'fastened off' : 'bound off';
  if (crochet) return 'open';
  const begins = next && beginningOf(garment, next.cell);
  // Another piece wants the needles before its held stitches are gone on with.
  return next && !(begins?.from === 'piece' && begins.piece.id === cell.id) ? 'on a holder' : 'on the needle';
}

function stretchMeant(garment: Garment, { cell, worked }: MeantPiece, at: number): StretchMeant {
  const stretch = cell.stretches[at]!;
  const swatch = swatchOf(garment, stretch.fabric);
  const { craft, terms } = garment.source.notebook.settings;
  const many = worked.map(({ rows }) => rows.filter((row) => row.stretch === at).length);
  const how = swatch ? workedAs(garment, swatch) : '';
  const basic = swatch?.stitch && sameName(swatch.stitch) in crochetStitches ? swatch.stitch : 'sc';
  const hook = crochetStitches[basic as keyof typeof crochetStitches][terms];
  return {
    label: asRead(stretch.label),
    fabric: swatch ? `${asRead(swatch.label)}${how === '' ? '' : ` (${how})`}` : '',
    stitch:
      craft === 'crochet'
        ? { RS: hook, WS: hook, round: hook }
        : { RS: 'k', WS: swatch?.stitch === 'stockinette' ? 'p' : 'k', round: 'k' },
    someRows: many.some((rows) => rows > 0),
    oneRow: many.every((rows) => rows <= 1),
    isEnds: stretch.kind === 'leave' || stretch.kind === 'add',
    tellsFirstRound: worked.every((one) => hasEqualWedges(one, at)),
  };
}

/**
 * Whether a taper in the round takes three or more wedges that are all alike, with more than one plain stitch in each,
 * and goes on so: then the other rounds follow from the first.
 */
function hasEqualWedges({ plan, rows }: WorkedPiece, at: number): boolean {
  const stretch = plan.stretches[at]!;
  if (plan.worked !== 'round' || stretch.kind !== 'taper' || stretch.perRow < 3) return false;
  const first = rows.findIndex((row) => row.stretch === at);
  if (first < 0) return false;
  const from = plan.stretches.reduce(
    (count, one, before) => {
      if (before > at || (one.kind !== 'leave' && one.kind !== 'add')) return count;
      // Those before an earlier row are in its count already.
      if (rows.slice(0, first).some((row) => row.stretch > before)) return count;
      return count + (one.kind === 'add' ? 1 : -1) * (one.atStart + one.atEnd);
    },
    rows[first - 1]?.count ?? plan.start,
  );
  const rounds = Math.abs(stretch.to - from) / stretch.perRow;
  const plain = from / stretch.perRow - (stretch.to < from ? 2 : 0);
  return rounds >= 2 && Number.isInteger(plain) && plain > 1;
}

function edgeMeant(garment: Garment, begins: Beginning, size: string): EdgeMeant[] | undefined {
  if (begins.from === 'armhole') return armholeMeant(garment, begins.formula, size);
  if (begins.from !== 'edge') return undefined;
  const { pickUp } = begins;
  return pickUp.edge.map(({ name, label, kind }) => {
    const at = (id: string, key: string) => garment.source.number(id, pickUp.id, `${name}.${key}`);
    const of = (key: string) => at(size, key);
    // One line tells it for all sizes, so it is told where any of them has other than one for one, or as many in each.
    const spread = garment.sizes.some(({ id }) => {
      const share = at(id, 'share') ?? 0;
      const wanted = kind === 'motifs' ? at(id, 'motifs')! * at(id, 'each')! : at(id, 'count');
      return share > 0 && share !== wanted;
    });
    const amount = { rows: 'rows', motifs: 'motifs', curve: 'length', stitches: 'count' }[kind];
    return {
      label: asRead(label),
      stitches: of('share') ?? 0,
      by: kind,
      amount: of(amount),
      groups: kind === 'rows' ? true : kind === 'curve' ? false : spread,
    };
  });
}

/** Up one side of an armhole, down the other, across the underarm, and the stitches of the seam. */
function armholeMeant(garment: Garment, formula: string, size: string): EdgeMeant[] | undefined {
  const given = givenTo(garment, size, formula, 'JOINARMHOLE') ?? [];
  const [rows, pick, of, underarm, seam] = given;
  if (rows === undefined || !pick || !of || underarm === undefined || seam === undefined) return undefined;
  if (given.some((one) => one === undefined || !Number.isInteger(one) || one < 0)) return undefined;
  // So many stitches in so many rows, as near as whole stitches come; a half goes up.
  const side = Math.floor((2 * rows * pick + of) / (2 * of));
  const along = (label: string, stitches: number, groups = false): EdgeMeant => ({
    label,
    stitches,
    by: 'rows',
    amount: rows,
    groups,
  });
  const one = (label: string, stitches: number): EdgeMeant => ({
    label,
    stitches,
    by: 'stitches',
    amount: undefined,
    groups: false,
  });
  return [
    along('Up one side', side, true),
    along('Down the other side', side),
    one('Across the underarm', underarm),
    one('For the seam', seam),
  ];
}
