import type { PerSize } from '../read';
import { asMade } from '../../notebook';
import type { Adapting } from './adapting';
import type { Fabric } from './fabrics';
import type { MadePart } from './making';
import { addLists, type Parts } from './parts';
import type { Wish } from './wish';
import type { Wishes } from './wishes';

/** Bands and overlaps that are in the pattern's measurement and not in its pieces: beyond it, widths do not add up to it. */
const mostApart = 2.5;

/** A width of the garment: the pieces that make it, with their counts in the pattern's sizes. */
interface Width {
  readonly label: string;
  readonly name: string;
  readonly wish: Wish | undefined;
  readonly pieces: readonly WidthPiece[];
}

interface WidthPiece {
  readonly count: string;
  readonly times: number;
  readonly printed: PerSize;
  /** The count whose repeat says how near the wish can be met. */
  readonly start: MadePart['start'];
}

/**
 * What the pieces, fitted again, come to at the bust and the upper arm, in every column: the wish is only the maker's,
 * and the pattern's own sizes are made too. Where the pattern's measurement has something in it that its pieces have
 * not, such as bands, nothing is put: the sum would be another measurement.
 */
export function putAsMade(
  { collector, sections, pattern }: Adapting,
  parts: Parts,
  made: readonly MadePart[],
  wishes: Wishes,
  main: Fabric,
): void {
  const gauge = pattern.gauges[0]?.stitches;
  if (!gauge) return;
  for (const { label, name, wish, pieces } of [bust(parts, made, wishes), arm(parts, made, wishes)].flat()) {
    const counted = addLists(
      pieces.map(({ printed, times }) => printed.map((count) => (count === null ? null : count * times))),
      pattern.sizes.length,
    );
    const meets = (cm: number | null, size: number): boolean => {
      const count = counted[size] ?? null;
      return cm === null || (count !== null && Math.abs(count / gauge - cm) <= mostApart);
    };
    if (!wish?.values.every(meets)) continue;
    const within = `MAX(CM(1); (${pieces.map(stepOf).join(' + ')}) / ${main.mine}_sts / 2)`;
    collector.put(
      sections.joins,
      asMade(
        label,
        wish.wanted,
        pieces.map(({ count, times }) => [`${count} / ${main.mine}_sts`, times] as const),
        within,
        { name },
      ),
    );
  }
}

/** Each piece is fitted by itself, so each may be half a repeat off. */
function stepOf({ start, times }: WidthPiece): string {
  return `${times} * STS(${start.kind === 'fit' ? `${start.name}_multiple` : '1'})`;
}

function bust(parts: Parts, made: readonly MadePart[], { bust: wish }: Wishes): Width[] {
  const body = made.find(({ part }) => part === parts.body);
  if (!body) return [];
  const front = made.find(
    ({ part }) => !part.base && /^(?:(?:left|right) )?fronts?\b/iu.test(part.piece.label),
  );
  const all = /^back\b/iu.test(body.part.piece.label) && front ? [body, front] : [body];
  return [
    {
      label: 'Finished bust',
      name: 'bust_as_made',
      wish,
      pieces: all.map(({ mine, part: { piece } }, at) => ({
        count: `${mine.name}_start`,
        times: at === 0 ? 1 : piece.make,
        printed: piece.start.count,
        start: all[at]!.start,
      })),
    },
  ];
}

function arm(parts: Parts, made: readonly MadePart[], { arm: wish }: Wishes): Width[] {
  const sleeve = made.find(({ part }) => part === parts.sleeve);
  if (!sleeve) return [];
  const { piece, shapes } = sleeve.part;
  // Picked up at the armhole it is widest where it starts; worked from the cuff, where it ends.
  const end = piece.start.kind === 'picked up' ? 'start' : 'end';
  const printed = end === 'start' ? piece.start.count : shapes.at(-1)?.ends;
  if (!printed) return [];
  return [
    {
      label: 'Finished upper arm',
      name: 'upper_arm_as_made',
      wish,
      pieces: [{ count: `${sleeve.mine.name}_${end}`, times: 1, printed, start: sleeve.start }],
    },
  ];
}
