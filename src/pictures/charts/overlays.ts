import type { Row } from '../../craft';
import { edgesOf, isWorked, type DrawnSize } from './series';
import type { Overlay, OverlayEntry, PlotSpec } from './types';

/** A size as an overlay has it, ready to be drawn in the colour of that size. */
export interface OverlaidSize extends DrawnSize {
  readonly overlay: Overlay;
  /** What stands on its line, so that it is known without its dashes. */
  readonly letter: string;
  readonly dash: readonly number[];
}

const dashes: readonly (readonly number[])[] = [
  [1, 3],
  [7, 2, 1, 2],
  [1, 1.5],
  [4, 2],
  [12, 2, 1, 2, 1, 2],
  [1, 5],
];

/** Whether two sizes are the same, row for row, as far as a picture shows. */
export function sameRows(a: readonly Row[], b: readonly Row[]): boolean {
  if (a === b) return true;
  return (
    a.length === b.length &&
    a.every((row, i) => row.count === b[i]!.count && row.width === b[i]!.width && row.height === b[i]!.height)
  );
}

/**
 * What is drawn of the overlays, in their order. Of what was before: the drawn sizes that are no longer the same. Of a
 * what-if: the highlighted size where one is drawn, since all sizes of several what-ifs could not be told apart; else
 * all that are drawn.
 */
export function overlaidSizes(spec: PlotSpec, drawn: readonly DrawnSize[]): OverlaidSize[] {
  let whatIfs = 0;
  return (spec.overlays ?? []).flatMap((overlay) => {
    const turn = overlay.kind === 'what-if' ? whatIfs++ : -1;
    const one = turn >= 0 && drawn.some(({ id }) => id === spec.highlighted);
    return drawn.flatMap((size): OverlaidSize[] => {
      if (one && size.id !== spec.highlighted) return [];
      const other = overlay.sizes.find(({ id }) => id === size.id);
      if (!other || !isWorked(other)) return [];
      if (turn < 0 && sameRows(other.rows, size.rows)) return [];
      const { rows, plan } = other;
      const edges = edgesOf(rows, spec.which);
      return [{ ...size, rows, edges, plan, overlay, letter: letterOf(turn), dash: dashOf(turn) }];
    });
  });
}

function letterOf(turn: number): string {
  return turn < 0 ? '' : String.fromCharCode(65 + (turn % 26));
}

function dashOf(turn: number): readonly number[] {
  return turn < 0 ? [] : dashes[turn % dashes.length]!;
}

/** What the page writes of the overlays that are drawn, each once. */
export function overlayLegend(overlaid: readonly OverlaidSize[]): OverlayEntry[] {
  const entries = new Map<Overlay, OverlayEntry>();
  for (const { overlay, letter, dash, label } of overlaid) {
    const { id, kind } = overlay;
    const sizes = [...(entries.get(overlay)?.sizes ?? []), label];
    entries.set(overlay, { id, label: overlay.label, kind, letter, dash, sizes });
  }
  return [...entries.values()];
}
