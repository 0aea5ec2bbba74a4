import { sameName } from '../../formulas';
import { allCells, type PieceCell } from '../../notebook';
import { syntaxOf } from '../../explain';
import { givenTo } from './begins';
import type { Garment } from './garment';

const called = 'BUTTONHOLES';

/**
 * The chains of a buttonhole on the first row of each stretch of a piece, in a size: as many as the stitches that
 * `BUTTONHOLES(band_holes_last; …)` gives to a hole. Common practice: a hole is chained over the stitches it skips.
 *
 * @returns by stretch; undefined where no formula places holes along it
 */
export function chainsMeant(garment: Garment, piece: PieceCell, size: string): (number | undefined)[] {
  const { notebook } = garment.source;
  if (notebook.settings.craft !== 'crochet') return piece.stretches.map(() => undefined);
  const placed = allCells(notebook).flatMap((cell) => {
    if (cell.kind !== 'formula') return [];
    const read = syntaxOf(cell.formula.trim().replace(/^=\s*/u, ''));
    if ('problem' in read || read.tree.is !== 'call' || read.tree.name.toUpperCase() !== called) return [];
    const [along] = read.tree.given;
    return along?.is === 'name' ? [{ along: along.name, formula: cell.formula }] : [];
  });
  return piece.stretches.map(({ name }) => {
    const last = sameName(`${piece.name}_${name}_last`);
    const found = placed.find(({ along }) => sameName(along) === last);
    return found && givenTo(garment, size, found.formula, called)?.[3];
  });
}
