import type { Piece, Row, Stretch } from '../../craft';

/**
 * What a plot shows. `stitches`: the count of every row. `width`: the width of every row, to scale.
 * `taper`: the worked steps of the shaping against the straight line they stand for, to scale.
 */
export type Which = 'stitches' | 'width' | 'taper';

/** One size of the piece at hand. `rows` is null where the size cannot be worked; `trouble` then says why. */
export interface WorkedSize {
  readonly id: string;
  readonly label: string;
  readonly rows: readonly Row[] | null;
  readonly problem?: string | undefined;
  /** What the rows were worked from; with it a picture can say what is worked on a row. */
  readonly plan?: Pick<Piece, 'start' | 'stretches'> | undefined;
}

/**
 * The same piece as it was before a change, or as it is under a what-if, drawn as lines of its own beside the
 * notebook's: grey before a change; under a what-if with dashes and a letter of its own.
 */
export interface Overlay {
  readonly id: string;
  /** What its lines are called: "before the change", "7.5 mm hook". */
  readonly label: string;
  readonly kind: 'before' | 'what-if';
  /** Sizes of the notebook, found by their ids; those it has not are left out. */
  readonly sizes: readonly WorkedSize[];
}

/** How lengths are shown, and with which decimal sign. Rows themselves are always in cm. */
export interface Shown {
  readonly unit: 'cm' | 'in';
  readonly decimal: '.' | ',';
}

/** Everything a plot, its table and its sentence are made from. */
export interface PlotSpec extends Shown {
  readonly which: Which;
  /** The piece, as people call it: "Sleeve". */
  readonly name: string;
  /** All the notebook's sizes, in its order: a size's colour and line style come from its place here. */
  readonly sizes: readonly WorkedSize[];
  /** The stretches of the piece, for their labels and to tell a taper from other shaping; `piece.stretches` will do. */
  readonly stretches?: readonly Pick<Stretch, 'label' | 'kind'>[] | undefined;
  /** The size drawn strongest, in whose fabrics the paper is ruled; null for none. A taper shows it alone. */
  readonly highlighted: string | null;
  /** Whether a taper shows every size, the highlighted one only strongest. */
  readonly all?: boolean | undefined;
  readonly overlays?: readonly Overlay[] | undefined;
  readonly theme: 'light' | 'dark';
}

/** What a plot was drawn from, for tests and for whoever wants the numbers rather than the picture. */
export interface Plotted {
  /** The lines as drawn, corner by corner, in the units of the axes (cm, or stitches and stitch widths). */
  readonly lines: readonly {
    readonly id: string;
    readonly label: string;
    readonly kind: 'worked' | 'straight' | Overlay['kind'];
    /** The overlay a line belongs to. */
    readonly overlay?: string;
    readonly points: readonly { readonly x: number; readonly y: number }[];
  }[];
  /** Whether a cm along is as long on the screen as a cm across; otherwise how many times `along` is stretched (or, below 1, pressed). */
  readonly toScale: boolean;
  readonly stretched: number;
  /** The size in whose fabrics the paper is ruled. */
  readonly ruledFor: string | null;
  /** The row that is pointed at, by mouse or keys. */
  readonly pointed?: { readonly id: string; readonly row: number } | null;
}

/** A plot on a canvas. */
export interface Plot {
  /** Draws the new spec on the same canvas; nothing moves but what changed. It points at no row any more. */
  update(spec: PlotSpec): void;
  /**
   * Points at a row of a size (the highlighted one unless told) and returns what the plot says there, such as
   * "M, row 24: 62 sts, 41.3 cm"; `null` stops pointing. For arrow keys and screen readers.
   */
  pointAt(row: number | null, size?: string): string | null;
  data(): Plotted;
  /** Takes the plot off the canvas, with its listeners. */
  close(): void;
}

/** One entry of the legend, which the page writes in HTML. */
export interface LegendEntry {
  readonly id: string;
  readonly label: string;
  /** Colour of line and mark on the theme's paper. */
  readonly colour: string;
  /** Lengths of dashes and gaps in px; empty for an unbroken line. SVG: `stroke-dasharray={dash.join(' ')}`. */
  readonly dash: readonly number[];
  /** The mark as an SVG path in a box from -5 to 5, stroked in `colour` and filled with it if `filled`, else with the paper. */
  readonly mark: string;
  readonly filled: boolean;
  readonly highlighted: boolean;
  /** Why the size is not drawn. */
  readonly problem: string | null;
}

/** One overlay in the legend. */
export interface OverlayEntry {
  readonly id: string;
  readonly label: string;
  readonly kind: Overlay['kind'];
  /** The letter that stands on its lines; none on the grey lines of what was before. */
  readonly letter: string;
  readonly dash: readonly number[];
  /** Whose lines are drawn: the labels of the sizes. */
  readonly sizes: readonly string[];
}

/** The numbers of a plot as a table. All rows have as many strings as there are headings. */
export interface PlotTable {
  readonly caption: string;
  readonly headings: readonly string[];
  /** The first string of each row heads it ("5–11"). An en dash stands where a size has no such row. */
  readonly rows: readonly (readonly string[])[];
  /** What was left out of a very long table; null for none. */
  readonly note: string | null;
}
