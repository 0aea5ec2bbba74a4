import type { ImportDiagnostic, StatedPattern } from './types';

/**
 * A doubt for each piece that has stitches to begin on and nothing worked on them, where no other says why.
 *
 * @param diagnostics those there are already
 */
export function onlyBegun(
  { pieces }: StatedPattern,
  diagnostics: readonly ImportDiagnostic[],
): ImportDiagnostic[] {
  return pieces.flatMap(({ label, start: { place }, stretches }, at): ImportDiagnostic[] => {
    const next = pieces[at + 1]?.start.place.line ?? Infinity;
    const told = diagnostics.some(({ place: { line } }) => line >= place.line && line < next);
    if (stretches.length > 0 || told) return [];
    return [
      {
        place,
        kind: 'unread',
        message: `${label} begins here, and no rows of it are read: paste its lines too, or add its rows in the notebook.`,
      },
    ];
  });
}
