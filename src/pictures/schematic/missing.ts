import type { SchematicPiece, SchematicSpec } from './types';

/** Why a piece is not there in some sizes: each reason once, with the sizes it concerns. */
export interface Missing {
  readonly piece: string;
  readonly name: string;
  readonly sizes: readonly string[];
  readonly why: string;
}

/** The pieces that cannot be drawn in the sizes that are shown, and why not. */
export function missingOf(spec: SchematicSpec): Missing[] {
  return spec.pieces.flatMap((piece) => {
    const grouped = new Map<string, string[]>();
    for (const size of piece.sizes) {
      if (isDrawable(size) || (spec.size !== 'all' && spec.size !== size.id)) continue;
      const why = size.problem ?? (size.rows ? 'It has no rows yet.' : 'It has not been worked yet.');
      grouped.set(why, [...(grouped.get(why) ?? []), size.label]);
    }
    return [...grouped].map(([why, sizes]) => ({ piece: piece.id, name: piece.name, sizes, why }));
  });
}

/** Whether a piece has rows in a size: it cannot be drawn where it could not be worked. */
export function isDrawable(size: SchematicPiece['sizes'][number]): boolean {
  return size.rows !== null && size.rows.length > 0;
}

/** The size a piece is drawn in: the wished one, or of all sizes the middle one that can be worked. */
export function drawnSize(
  spec: SchematicSpec,
  piece: SchematicPiece,
): SchematicPiece['sizes'][number] | null {
  if (spec.size !== 'all') {
    const size = piece.sizes.find(({ id }) => id === spec.size);
    return size && isDrawable(size) ? size : null;
  }
  const middle = (piece.sizes.length - 1) / 2;
  const near = piece.sizes
    .map((size, at) => ({ size, off: Math.abs(at - Math.floor(middle)) }))
    .filter(({ size }) => isDrawable(size))
    .sort((a, b) => a.off - b.off);
  return near[0]?.size ?? null;
}
