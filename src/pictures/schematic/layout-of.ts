import {
  allCells,
  type Notebook,
  type PickUpCell,
  type PieceCell,
  usesMainly,
  type JoinEdge,
  type NotebookJoin,
} from '../../notebook';

/** How the pieces of a notebook lie on a schematic, by id. */
export function layoutOf(
  notebook: Notebook,
  joins: readonly NotebookJoin[],
): Map<string, { lies: 'middle' | 'beside' | 'along'; hangs: boolean }> {
  const pickUps = allCells(notebook).filter((cell): cell is PickUpCell => cell.kind === 'pickUp');
  const pieces = allCells(notebook).filter((cell): cell is PieceCell => cell.kind === 'piece');
  return new Map(
    pieces.map((piece) => {
      const own = pickUps.find(({ name }) => usesMainly(piece.start, name));
      const strip =
        own !== undefined && !hemmed(piece, pieces, joins.find(({ id }) => id === own.id)?.edges ?? []);
      const grows = joins.some(({ id }) => id === piece.id) || strip;
      // What grows in the round from other pieces is a sleeve, or something that hangs as one does.
      const lies = strip ? 'along' : grows && piece.worked === 'round' ? 'beside' : 'middle';
      return [piece.id, { lies, hangs: grows && (strip || piece.worked === 'round') }] as const;
    }),
  );
}

/**
 * Whether the edge a piece is picked up along is a hem or a cuff worked sideways, on which it stands: all row ends of one
 * straight piece, and nothing else. A piece that is straight itself is a band: it may as well be the border of the other.
 */
function hemmed(piece: PieceCell, pieces: readonly PieceCell[], edges: readonly JoinEdge[]): boolean {
  if (isStraight(piece)) return false;
  const [only, ...others] = edges.filter(({ edge }) => edge !== 'start');
  if (only?.edge !== 'side' || only.stretch !== undefined || others.length > 0) return false;
  return isStraight(pieces.find(({ id }) => id === only.piece)!);
}

const isStraight = ({ stretches }: PieceCell): boolean => stretches.every(({ kind }) => kind === 'even');
