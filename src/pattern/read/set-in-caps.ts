import type { ImportDiagnostic, StatedPattern, StatedPiece, StatedStretch } from './types';

const narrows = (one: StatedStretch): boolean => one.kind === 'taper' && one.way === 'dec';

/** The first stretch of the cap of a sleeve worked from its cuff: stitches bound off, then a taper that narrows it. */
function capOf({ label, start, stretches }: StatedPiece): StatedStretch | undefined {
  if (!/sleeve/iu.test(label) || start.kind === 'picked up') return undefined;
  return stretches.find(({ kind }, at) => kind === 'leave' && stretches.slice(at + 1).some(narrows));
}

/**
 * A sleeve cap is set into its armhole edge to edge. Its rows and counts are read as any others and nothing compares the
 * two curves, so that is said.
 */
export function setInCaps({ pieces }: StatedPattern): ImportDiagnostic[] {
  return pieces.flatMap((piece): ImportDiagnostic[] => {
    const cap = capOf(piece);
    if (!cap) return [];
    return [
      {
        range: cap.range,
        kind: 'to know',
        message: `The cap of ${piece.label} begins here. It is followed and fitted row by row, but nothing here compares its edge with that of the armhole it is sewn into: measure both, from underarm to underarm, before you sew.`,
      },
    ];
  });
}
