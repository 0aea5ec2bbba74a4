import { extentOf, figuresAcross, frameOf, insetsFor, type Extent, type Frame } from './frame';
import { straightLine, tapersIn, type WorkedTaper } from './ideal-line';
import { overlaidSizes, type OverlaidSize } from './overlays';
import { rowWord, unitWord } from './in-words';
import { ruledStretches, type RuledStretch } from './rulings';
import { cornersOf, drawnSizes, ruledSize, thinned, type Corner, type DrawnSize } from './series';
import { lengthTicks, rowTicks, stitchTicks, type Tick } from './ticks';
import type { PlotSpec, Plotted } from './types';

/** A line of a drawing: the stair a size is worked in, the straight line of one of its tapers, or an overlay's stair. */
export interface Line {
  readonly size: DrawnSize | OverlaidSize;
  readonly kind: Plotted['lines'][number]['kind'];
  readonly points: readonly Corner[];
}

/** All of a plot that its rows decide, before it is known how large it will be. */
export interface Drawing {
  readonly spec: PlotSpec;
  readonly drawn: readonly DrawnSize[];
  /** The size in whose fabrics the paper is ruled. */
  readonly ruled: DrawnSize | null;
  readonly stretches: readonly RuledStretch[];
  readonly extent: Extent;
  /** From the lowest to the uppermost. */
  readonly lines: readonly Line[];
  readonly overlaid: readonly OverlaidSize[];
  /** The tapers of the drawn sizes, where the plot is of a taper. */
  readonly tapers: readonly { readonly size: DrawnSize; readonly taper: WorkedTaper }[];
}

/** A drawing on a canvas of a size: its frame, and what stands along its four sides. */
export interface Laid {
  readonly frame: Frame;
  readonly bottom: readonly Tick[];
  readonly left: readonly Tick[];
  readonly top: readonly Tick[];
  readonly right: readonly Tick[];
  readonly captions: Readonly<Record<'left' | 'top' | 'right' | 'bottom', string>>;
}

/** What is drawn for a spec: the highlighted size last, on top of the others. */
export function drawingOf(spec: PlotSpec): Drawing {
  const drawn = drawnSizes(spec);
  const ruled = ruledSize(drawn, spec.highlighted);
  const inOrder = [...drawn].sort(
    (a, b) => Number(a.id === spec.highlighted) - Number(b.id === spec.highlighted),
  );
  const tapers =
    spec.which === 'taper'
      ? inOrder.flatMap((size) => tapersIn(size.rows, spec.stretches).map((taper) => ({ size, taper })))
      : [];
  const overlaid = overlaidSizes(spec, drawn);
  return {
    spec,
    drawn,
    ruled,
    overlaid,
    stretches: ruled ? ruledStretches(ruled, spec.which) : [],
    extent: extentOf(drawn, spec),
    lines: [
      ...overlaid.map((size): Line => {
        const points = thinned(cornersOf(size.rows, size.edges, spec.which));
        return { size, kind: size.overlay.kind, points };
      }),
      ...tapers.map(({ size, taper }): Line => {
        return { size, kind: 'straight', points: straightLine(size.rows, size.edges, taper) };
      }),
      ...inOrder.map((size): Line => {
        return { size, kind: 'worked', points: thinned(cornersOf(size.rows, size.edges, spec.which)) };
      }),
    ],
    tapers,
  };
}

/** Lays a drawing out on a canvas of so many px, with ticks of a font of so many px. */
export function arrange(drawing: Drawing, width: number, height: number, font: number): Laid {
  const { spec, extent, ruled, stretches } = drawing;
  const insets = insetsFor(spec, width, font, figuresAcross(extent, spec));
  const frame = frameOf(extent, insets, width, height);
  const { x, y, pxAlong, pxAcross } = frame;
  const apart = { along: font * 4, across: font * 2 };
  if (!ruled) {
    const captions = { left: '', top: '', right: '', bottom: '' };
    return { frame, bottom: [], left: [], top: [], right: [], captions };
  }
  const rows = rowTicks(ruled.edges, stretches, pxAlong, apart.along);
  const captions = captionsOf(drawing, frame);

  if (spec.which === 'stitches') {
    const left = stitchTicks(y, 1, pxAcross, apart.across);
    return { frame, bottom: rows, left, top: [], right: [], captions };
  }
  const main = mainStretch(drawing);
  const roomForStitches = insets.right > font * 2;
  return {
    frame,
    bottom: lengthTicks(x, pxAlong, apart.along, spec),
    left: lengthTicks(y, pxAcross, apart.across, spec),
    top: rows,
    right: main && roomForStitches ? stitchTicks(y, main.stitch, main.stitch * pxAcross, apart.across) : [],
    captions: roomForStitches ? captions : { ...captions, right: '' },
  };
}

/** The fabric that most of the rows are worked in: the scale of stitches at the right is in its stitches. */
function mainStretch({ stretches }: Drawing): RuledStretch | undefined {
  const worked = new Map<number, number>();
  const rowsIn = (stretch: RuledStretch) => worked.get(stretch.stitch) ?? 0;
  for (const stretch of stretches) worked.set(stretch.stitch, rowsIn(stretch) + stretch.end - stretch.first);
  return [...stretches].sort((a, b) => rowsIn(b) - rowsIn(a))[0];
}

function captionsOf(drawing: Drawing, { stretched }: Frame): Laid['captions'] {
  const { spec, ruled, stretches, drawn } = drawing;
  const word = `${rowWord(ruled?.rows ?? [])}s`;
  const rows = ruled && drawn.some((size) => !sameRows(size, ruled)) ? `${word}, size ${ruled.label}` : word;
  const times = Math.round(Math.max(stretched, 1 / stretched));
  const large =
    stretched > 1 ? `${word} drawn ${times} times as high` : `stitches drawn ${times} times as wide`;
  const note = stretched === 1 ? '' : `; ${large}`;
  if (spec.which === 'stitches') return { left: 'stitches', top: '', right: '', bottom: rows + note };
  const main = mainStretch(drawing);
  const several = new Set(stretches.map(({ stitch }) => stitch)).size > 1;
  const name = main && several ? ruled?.rows[main.first]?.fabric.name : undefined;
  return {
    left: `${unitWord(spec.unit)} ${word === 'rounds' ? 'around' : 'wide'}`,
    top: rows,
    right: name ? `sts, ${name}` : 'sts',
    bottom: `${unitWord(spec.unit)} along${note}`,
  };
}

/** Whether a row of one size is as far along as the same row of the other, as far as both go. */
function sameRows(a: DrawnSize, b: DrawnSize): boolean {
  const shorter = a.edges.length < b.edges.length ? a.edges : b.edges;
  return shorter.every((_, k) => Math.abs(a.edges[k]! - b.edges[k]!) <= 1e-9 * b.edges[k]!);
}

/** What a plot of this drawing shows, as plain data. */
export function plottedOf(drawing: Drawing, { frame }: Laid): Plotted {
  return {
    lines: drawing.lines.map(({ size, kind, points }) => ({
      id: size.id,
      label: size.label,
      kind,
      ...('overlay' in size ? { overlay: size.overlay.id } : {}),
      points,
    })),
    toScale: frame.stretched === 1,
    stretched: frame.stretched,
    ruledFor: drawing.ruled?.id ?? null,
  };
}
