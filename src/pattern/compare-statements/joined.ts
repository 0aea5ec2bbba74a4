import { allCells, upstream, type CheckCell } from '../../notebook';
import { namesIn, sameName } from '../../formulas';
import { syntaxOf, type Syntax } from '../../explain';
import { beginningOf, givenTo, middleOf } from './begins';
import { asRead, printed, type Expected } from './expected';
import type { Garment } from './garment';

/**
 * The making up: the joins that the notebook checks between two pieces, and what becomes of stitches that are held between
 * two sides and that no piece goes on with.
 */
export function makingUpMeant(garment: Garment): Expected[] {
  if (garment.pieces.length === 0) return [];
  return [
    ...allCells(garment.source.notebook).flatMap((cell) =>
      cell.kind === 'check' ? joinMeant(garment, cell) : [],
    ),
    ...heldMeant(garment),
    { name: 'finish', of: '', facts: {} },
  ];
}

/** Common practice in knitting: stitches held between two sides are bound off, or worked into the edging of the neck. */
function heldMeant(garment: Garment): Expected[] {
  const { craft, terms } = garment.source.notebook.settings;
  if (craft !== 'knitting') return [];
  return garment.pieces.flatMap((piece): Expected[] => {
    const begins = beginningOf(garment, piece.cell);
    const middle = middleOf(garment, piece);
    if (begins.from !== 'piece' || !middle) return [];
    return [
      {
        name: 'stitches in the middle',
        of: asRead(begins.piece.label),
        facts: { off: terms === 'UK' ? 'cast' : 'bind', count: printed(middle) },
      },
    ];
  });
}

function joinMeant(garment: Garment, cell: CheckCell): Expected[] {
  const read = syntaxOf(cell.condition.trim().replace(/^=\s*/u, ''));
  if ('problem' in read || read.tree.is !== 'call' || read.tree.name.toUpperCase() !== 'JOINS') return [];
  const { pieces, names, source } = garment;
  const named = namesIn(cell.condition).flatMap((name) => names.get(sameName(name)) ?? []);
  const written = new Set(pieces.map(({ cell: { id } }) => id));
  const joins = new Set(
    named.flatMap(({ cell: from }) => (written.has(from) ? [from] : upstream(source.notebook, from))),
  );
  // A count that is compared on its way through one piece is no seam.
  if ([...joins].filter((id) => written.has(id)).length < 2) return [];
  const counts = garment.sizes.map(
    ({ id }) =>
      givenTo(garment, id, cell.condition, 'JOINS')
        ?.map(wholeOf)
        .find((side) => side !== null) ?? null,
  );
  if (counts.every((count) => count === null) || isGrownOn(garment, read.tree.given)) return [];
  const rows = named.some(({ key }) => /rows$/u.test(key));
  return [
    {
      name: 'join',
      of: asRead(cell.label),
      facts: {
        by: rows ? 'row to row' : 'stitch to stitch',
        count: printed(counts),
        unit: rows ? 'row' : 'st',
      },
    },
  ];
}

function wholeOf(side: number | undefined): number | null {
  return side !== undefined && Math.abs(side - Math.round(side)) < 1e-9 ? Math.round(side) : null;
}

/** Whether a side is the start of a piece that is worked on the other: it is joined to it already. */
function isGrownOn(garment: Garment, sides: readonly Syntax[]): boolean {
  return garment.pieces.some(
    ({ cell }) =>
      sides.some((side) => {
        if (side.is !== 'name') return false;
        const named = garment.names.get(sameName(side.name));
        return named?.cell === cell.id && named.key === 'start';
      }) && beginningOf(garment, cell).from !== 'new',
  );
}
