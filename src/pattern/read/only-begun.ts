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
  return pieces.flatMap(({ label, start: { range }, stretches }, at): ImportDiagnostic[] => {
    const next = pieces[at + 1]?.start.range.line ?? Infinity;
    const isDiagnosed = diagnostics.some(({ range: { line } }) => line >= range.line && line < next);
    if (stretches.length > 0 || isDiagnosed) return [];
    return [
      {
        range,
        kind: 'unread',
        message: `${label} begins here, and no rows of it are read: paste its lines too, or add its rows in the notebook.`,
      },
    ];
  });
}
