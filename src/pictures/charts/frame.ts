import { inUnit } from './in-words';
import { tapersIn } from './ideal-line';
import { overlaidSizes } from './overlays';
import { acrossOf, drawnSizes, ruledSize, type DrawnSize } from './series';
import type { PlotSpec } from './types';

/** What is drawn, in the units of the axes, with the size of a cell of the paper. */
export interface Extent {
  readonly along: number;
  readonly lowest: number;
  readonly highest: number;
  /** Height of a row and width of a stitch. */
  readonly row: number;
  readonly stitch: number;
}

/** Room in px round the plot for ticks and captions. */
export interface Insets {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Room at the foot of the plot itself, for the labels of stretches. */
  readonly foot: number;
}

/** Where the plot lies on its canvas, and what each axis spans. */
export interface Frame {
  readonly insets: Insets;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  /** px for one unit along and one across. */
  readonly pxAlong: number;
  readonly pxAcross: number;
  /** How many times as long as to scale the piece is drawn: 1 to scale, 3 three times as long, 1/3 three times as wide. */
  readonly stretched: number;
}

const noExtent: Extent = { along: 20, lowest: 0, highest: 20, row: 1, stitch: 1 };

/** What the sizes of a spec reach. Of no rows at all: a blank bit of paper. */
export function extentOf(drawn: readonly DrawnSize[], spec: PlotSpec): Extent {
  const ruled = ruledSize(drawn, spec.highlighted);
  if (!ruled) return noExtent;
  let along = 0;
  let lowest = Infinity;
  let highest = 0;
  for (const { rows, edges } of [...drawn, ...overlaidSizes(spec, drawn)]) {
    along = Math.max(along, edges[rows.length]!);
    for (const row of rows) {
      const across = acrossOf(row, spec.which);
      if (across < lowest) lowest = across;
      if (across > highest) highest = across;
    }
    if (spec.which !== 'taper') continue;
    for (const { first, from } of tapersIn(rows, spec.stretches)) {
      const start = from / rows[first]!.fabric.stitches;
      lowest = Math.min(lowest, start);
      highest = Math.max(highest, start);
    }
  }
  const { fabric } = ruled.rows[0]!;
  const stitch = spec.which === 'stitches' ? 1 : 1 / fabric.stitches;
  return { along, lowest, highest, row: ruled.edges[ruled.rows.length]! / ruled.rows.length, stitch };
}

/** Room for the ticks: `font` is their size in px, `widest` the number of figures of the longest tick at the left. */
export function insetsFor(
  { which, stretches }: Pick<PlotSpec, 'which' | 'stretches'>,
  width: number,
  font: number,
  widest: number,
): Insets {
  const line = Math.round(font * 1.5);
  const second = which !== 'stitches';
  return {
    left: Math.round(font * 0.62 * widest + 10),
    // On a narrow screen the plot needs the room more than the stitches do.
    right: Math.round(second && width >= 480 ? font * 0.62 * 3 + 14 : font),
    top: Math.round(line * (second ? 2 : 1.3) + 4),
    bottom: line * 2 + 4,
    foot: stretches?.some(({ label }) => label) ? line : 0,
  };
}

/** Figures of the longest tick at the left. */
export function figuresAcross(
  { highest, stitch }: Extent,
  { which, unit }: Pick<PlotSpec, 'which' | 'unit'>,
) {
  const top = highest + 10 * stitch;
  return String(Math.ceil(which === 'stitches' ? top : inUnit(top, unit))).length;
}

/** Beside the lines: a little paper, and at the least two stitches. */
function spanAcross({ lowest, highest, stitch }: Extent): [number, number] {
  const room = Math.max(2 * stitch, (highest - lowest) * 0.06);
  const short = Math.max(0, 10 * stitch - (highest - lowest + 2 * room)) / 2;
  const low = Math.max(0, lowest - room - short);
  return [low, Math.max(highest + room + short, low + 10 * stitch)];
}

const factors = [2, 3, 4, 5, 10, 20, 30, 40, 50, 100, 200, 300, 400, 500, 1000];

/** Where to scale would leave the lines less than this part of an axis, the axis is stretched. */
const least = 1 / 4;
/** A stretched axis shows no stitch or row larger than this, in px. */
const largest = 20;

/**
 * Fits what is drawn into a canvas, to scale: a unit along is as long on the screen as a unit across, so that a cell
 * of the paper has the proportions of a stitch. What room is left over is more paper. A piece so long or so wide that
 * it would be a sliver is stretched across the sliver, by a whole number, and says so.
 *
 * @example
 * // 50 cm long and 24 to 54 cm wide, on 600 × 400 px
 * frameOf(extent, insets, 600, 400).stretched // 1
 */
export function frameOf(extent: Extent, insets: Insets, width: number, height: number): Frame {
  const across = Math.max(40, height - insets.top - insets.bottom);
  const along = Math.max(40, width - insets.left - insets.right);
  const length = Math.max(extent.along, 10 * extent.row);
  const [low, high] = spanAcross(extent);
  const roomAlong = along / length;
  const roomAcross = (across - insets.foot) / (high - low);
  const scale = Math.min(roomAlong, roomAcross);

  let pxAlong = scale;
  let pxAcross = scale;
  let stretched = 1;
  if (scale < roomAlong * least) {
    const times = stretch(roomAlong / scale, largest / (extent.row * scale));
    pxAlong = scale * times;
    stretched = times;
  } else if (scale < roomAcross * least && extent.highest > extent.lowest) {
    const times = stretch(roomAcross / scale, largest / (extent.stitch * scale));
    pxAcross = scale * times;
    stretched = 1 / times;
  }

  const foot = insets.foot / pxAcross;
  const spare = across / pxAcross - foot - (high - low);
  const bottom = Math.max(0, low - foot - spare / 2);
  return {
    insets,
    x: [0, along / pxAlong],
    y: [bottom, bottom + across / pxAcross],
    pxAlong,
    pxAcross,
    stretched,
  };
}

function stretch(room: number, most: number): number {
  return factors.findLast((factor) => factor <= Math.min(room, most)) ?? 1;
}

/** Lower than this no plot can be read. */
const lowestPlot = 220;

/**
 * The height in px at which a plot of this spec fills a canvas of a width: to scale without spare paper where that
 * is neither too low to read nor too tall for a screen. `font` is the size of the ticks in px.
 */
export function heightFor(spec: PlotSpec, width: number, font = 12): number {
  const drawn = drawnSizes(spec);
  if (drawn.length === 0) return lowestPlot;
  // What lies over it comes and goes: the plot keeps its height.
  const extent = extentOf(drawn, { ...spec, overlays: [] });
  const insets = insetsFor(spec, width, font, figuresAcross(extent, spec));
  const [low, high] = spanAcross(extent);
  const along = Math.max(extent.along, 10 * extent.row);
  const wanted = ((width - insets.left - insets.right) * (high - low)) / along;
  const tallest = Math.min(640, Math.max(280, width * 0.9));
  return Math.round(
    Math.min(tallest, Math.max(lowestPlot, wanted + insets.top + insets.bottom + insets.foot)),
  );
}
