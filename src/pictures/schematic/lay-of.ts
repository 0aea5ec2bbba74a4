import { allCells, type Notebook, type PickUpCell, type PieceCell } from '../../notebook/document';
import { usesMainly, type ToldJoin } from '../../notebook/joins-told';

/** How the pieces of a notebook lie on a schematic, by id. */
export function layOf(
  notebook: Notebook,
  joins: readonly ToldJoin[],
): Map<string, { lies: 'middle' | 'beside' | 'along'; hangs: boolean }> {
  const pickUps = allCells(notebook).filter((cell): cell is PickUpCell => cell.kind === 'pickUp');
  const pieces = allCells(notebook).filter((cell): cell is PieceCell => cell.kind === 'piece');
  return new Map(
    pieces.map((piece) => {
      const strip = pickUps.some(({ name }) => usesMainly(piece.start, name));
      const grows = joins.some(({ id }) => id === piece.id) || strip;
      // What grows in the round from other pieces is a sleeve, or something that hangs as one does.
      const lies = strip ? 'along' : grows && piece.worked === 'round' ? 'beside' : 'middle';
      return [piece.id, { lies, hangs: grows && (strip || piece.worked === 'round') }] as const;
    }),
  );
}
