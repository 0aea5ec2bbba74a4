import type { BodyMeasure, ChartName, ChartPoint } from '../craft';

/**
 * The document. Plain data, never changed in place: an edit makes a new notebook that shares every part
 * it did not touch, so two notebooks can be compared by identity. It is the only thing that is saved.
 *
 * Lengths are cm, masses grams, percentages fractions, counts whole numbers, whatever the page shows.
 */
export interface Notebook {
  readonly title: string;
  readonly settings: Settings;
  readonly sizes: readonly Size[];
  readonly sections: readonly Section[];
  /** The printed pattern that this notebook adapts, where it was made from one. */
  readonly adapts?: Adapted;
  /** Sentences of the written pattern in the person's own words, by the sentence's key. */
  readonly wording?: Readonly<Record<string, Wording>>;
  /** Sets of changes that are looked at beside the notebook; none of them is made in it. */
  readonly whatIfs?: readonly WhatIf[];
  /** What is shown to a class. */
  readonly classSheet?: ClassSheet;
}

/** Results whose working is shown to a class, in the order they are shown. */
export interface ClassSheet {
  readonly results: readonly ClassResult[];
  /** The size they are worked in. A size that is gone is passed over for the middle one. */
  readonly size?: string;
}

/** A result of a cell. One that is no longer there is passed over. */
export interface ClassResult {
  readonly cell: string;
  readonly key: string;
  /** So many generations of cells before it are worked along with it; none where nothing is said. */
  readonly back?: number;
}

/** A sentence in a person's words: its numbers are `{slots}`, and it is in the terms it was written in. */
export interface Wording {
  readonly template: string;
  readonly terms: Settings['terms'];
}

/** The id of the maker's own column in a notebook that adapts a pattern; the others are the pattern's sizes. */
export const ownColumn = 'mine';

/** A printed pattern that was put in, and which cells hold its numbers and the ones that were worked again. */
export interface Adapted {
  /** Its text, as it was put in. */
  readonly text: string;
  /** Cells to be read side by side, by their ids. A cell that was deleted is no longer shown. */
  readonly beside: readonly {
    readonly label: string;
    /** Under which heading it is read: "Back", "Measurements". */
    readonly group: string;
    readonly printed: string;
    readonly mine: string;
  }[];
}

/**
 * One value or formula instead of another, by the cell and the key of its input or output.
 * A value goes in for one size, or (`size: null`) for all; a formula is for all.
 */
export interface Change {
  readonly cell: string;
  readonly key: string;
  readonly size: string | null;
  readonly value?: number;
  readonly formula?: string;
}

/** A named set of changes: "7.5 mm hook". */
export interface WhatIf {
  readonly id: string;
  readonly name: string;
  /** Whether it is worked and shown beside the notebook. */
  readonly on: boolean;
  readonly changes: readonly Change[];
}

export interface Settings {
  readonly length: 'cm' | 'in';
  readonly gaugeOver: '10 cm' | '4 in';
  readonly decimal: '.' | ',';
  readonly craft: 'crochet' | 'knitting';
  /** Whose words are used: "sc" is a stitch in the US and another in the UK. */
  readonly terms: 'US' | 'UK';
  /** How far a length read from the tape may be off, either way, in cm; where nothing stands, what is usual. */
  readonly tapeWithin?: number;
  /** The same of the scales, in grams. */
  readonly scaleWithin?: number;
}

/** What a notebook begins with, and what an older file that does not say is read with. */
export const usualSettings: Settings = {
  length: 'cm',
  gaugeOver: '10 cm',
  decimal: '.',
  craft: 'crochet',
  terms: 'US',
};

/** A column. With `chart`, measures that follow a body chart read that size of it. */
export interface Size {
  readonly id: string;
  readonly label: string;
  readonly chart?: { readonly name: ChartName; readonly size: string };
}

export interface Section {
  readonly id: string;
  readonly label: string;
  readonly cells: readonly Cell[];
}

/** What stands in an input: nothing yet, one value for all sizes, a value for each, a place in a body chart, or a formula. */
export type Entry =
  | { readonly value: number | null }
  | { readonly each: Readonly<Record<string, number | null>> }
  | {
      readonly chart: BodyMeasure;
      readonly point: ChartPoint;
      readonly own?: Readonly<Record<string, number>>;
    }
  | { readonly formula: string };

interface CellBase {
  readonly id: string;
  /** What people read: "Finished bust". */
  readonly label: string;
  /** What formulas call it: "finished_bust". */
  readonly name: string;
  readonly note?: string;
  /** Formulas the person has put instead of the cell's own, by the output's key. */
  readonly taken?: Readonly<Record<string, string>>;
}

export type MeasureUnit = 'length' | 'stitches' | 'rows' | 'mass' | 'number' | 'percent';

/** A value from the tape, the chart or the head. */
export interface Measure extends CellBase {
  readonly kind: 'measure';
  readonly unit: MeasureUnit;
  readonly entry: Entry;
  /** Chosen and not measured, so that no tape and no scales leave it in doubt. */
  readonly chosen?: true;
}

/** The stitches that a written pattern can name, in US terms. */
export const basicStitches = {
  crochet: ['sc', 'hdc', 'dc', 'tr'],
  knitting: ['stockinette', 'garter'],
} as const;
export type BasicStitch = (typeof basicStitches)[keyof typeof basicStitches][number];

/** Stitches or rows counted over a length. */
export interface SwatchReading {
  readonly count: Entry;
  readonly over: Entry;
}

/** One fabric, measured: one yarn, one hook or pair of needles, one stitch. */
export interface Swatch extends CellBase {
  readonly kind: 'swatch';
  /** The hook or needles, as people write it: "6.5 mm hook". */
  readonly worked: string;
  /** The stitch it is worked in, in US terms; single crochet or plain knit where nothing is said. */
  readonly stitch?: BasicStitch;
  readonly stitches: readonly SwatchReading[];
  readonly rows: readonly SwatchReading[];
  /** The same swatch before blocking, where `stitches` and `rows` were counted after it. */
  readonly asWorked?: { readonly stitches: SwatchReading; readonly rows: SwatchReading };
  /** The whole swatch on the scales, for yarn. */
  readonly weighed?: { readonly width: Entry; readonly length: Entry; readonly grams: Entry };
  /** A width of it, relaxed and pulled, for openings that have to pass a head or a hand. */
  readonly pulled?: { readonly relaxed: Entry; readonly stretched: Entry };
  /** A clipped strip with a weight hung on it, for what the garment grows by hanging. */
  readonly hung?: {
    readonly width: Entry;
    readonly length: Entry;
    readonly grams: Entry;
    readonly stretched: Entry;
  };
  /** The height of each row of a repeat, where they differ. */
  readonly heights?: readonly Entry[];
}

/** A body measurement and what is added to it. */
export interface EaseCell extends CellBase {
  readonly kind: 'ease';
  readonly by: 'length' | 'percent';
  readonly body: Entry;
  readonly ease: Entry;
}

export interface FormulaCell extends CellBase {
  readonly kind: 'formula';
  readonly formula: string;
}

export interface RepeatEntry {
  readonly multiple: Entry;
  readonly plus: Entry;
}

/** A count near a target that a repeat, or several at once, allow. */
export interface RepeatFit extends CellBase, RepeatEntry {
  readonly kind: 'fit';
  readonly counts: 'stitches' | 'rows';
  readonly target: Entry;
  readonly rule: 'nearest' | 'up' | 'down';
  /** Further repeats that have to come out even in the same count. */
  readonly more?: readonly RepeatEntry[];
  readonly parity?: 'odd' | 'even';
  /** The multiple is of the foundation chain, not of the stitches worked into it. */
  readonly chain?: { readonly turning: Entry; readonly counts: boolean };
}

interface StretchBase {
  /** Unique in its piece; its inputs are called piece_stretch_input. */
  readonly name: string;
  readonly label: string;
  /** The name of the swatch of its fabric. */
  readonly fabric: string;
}

export interface EvenStretch extends StretchBase {
  readonly kind: 'even';
  readonly rows: Entry;
}

export interface TaperStretch extends StretchBase {
  readonly kind: 'taper';
  readonly to: Entry;
  readonly over: Entry;
  readonly perRow: Entry;
  readonly every: 1 | 2;
  readonly before: Entry;
  readonly after: Entry;
  readonly order: 'longFirst' | 'shortFirst' | 'spread';
}

/** Shaping spread over one row. */
export interface EvenlyStretch extends StretchBase {
  readonly kind: 'evenly';
  readonly to: Entry;
  readonly ends: 'half' | 'whole';
}

/** One row in which every repeat loses or gains as many. */
export interface RepeatsStretch extends StretchBase {
  readonly kind: 'eachRepeat';
  readonly repeats: Entry;
  readonly by: Entry;
}

export interface GatherStretch extends StretchBase {
  readonly kind: 'gather';
  readonly to: Entry;
  readonly rounds: Entry;
}

/** Stitches left unworked, or new ones added, at the ends of the row that comes next. */
export interface EndsStretch extends StretchBase {
  readonly kind: 'leave' | 'add';
  readonly atStart: Entry;
  readonly atEnd: Entry;
}

/** Rows whose counts are given one by one. */
export interface CountedStretch extends StretchBase {
  readonly kind: 'rows';
  readonly counts: readonly Entry[];
}

export type PieceStretch =
  EvenStretch | TaperStretch | EvenlyStretch | RepeatsStretch | GatherStretch | EndsStretch | CountedStretch;

/** Something worked from a first row to a last. */
export interface PieceCell extends CellBase {
  readonly kind: 'piece';
  readonly worked: 'flat' | 'round';
  readonly start: Entry;
  /** The side of the first row of a flat piece: the right side unless it is told. */
  readonly startsOn?: 'RS' | 'WS';
  readonly stretches: readonly PieceStretch[];
  readonly ends: 'bound off' | 'held';
  /** It stands there to be compared with, as a pattern's own piece does: it is not worked, and not written out. */
  readonly aside?: true;
}

export interface NoteCell extends CellBase {
  readonly kind: 'note';
  readonly text: string;
}

/** Shaping spread over one row, to be read out. */
export interface SpacingCell extends CellBase {
  readonly kind: 'spacing';
  readonly from: Entry;
  readonly to: Entry;
  readonly worked: 'flat' | 'round';
  readonly ends: 'half' | 'whole';
}

interface EdgePartBase {
  /** Unique in its cell; its inputs are called cell_part_input. */
  readonly name: string;
  readonly label: string;
}

/** A stretch of an edge along which stitches are picked up. */
export type EdgePart = EdgePartBase &
  (
    | { readonly kind: 'rows'; readonly rows: Entry; readonly pick: Entry; readonly of: Entry }
    | { readonly kind: 'stitches'; readonly count: Entry }
    | { readonly kind: 'motifs'; readonly motifs: Entry; readonly each: Entry }
    | { readonly kind: 'curve'; readonly length: Entry; readonly gauge: Entry }
  );

/** Stitches picked up along an edge, stretch by stretch, and fitted to what is worked on them. */
export interface PickUpCell extends CellBase, RepeatEntry {
  readonly kind: 'pickUp';
  readonly edge: readonly EdgePart[];
  readonly rule: 'nearest' | 'up' | 'down';
}

/** One yarn, over all the fabrics it is worked in. */
export interface YarnCell extends CellBase {
  readonly kind: 'yarn';
  /** An area, and the name of the weighed swatch of its fabric. */
  readonly uses: readonly { readonly area: Entry; readonly fabric: string }[];
  readonly reserve: Entry;
  readonly ballGrams: Entry;
  readonly ballLength: Entry;
}

/** Buttons, beads, tassels: one at every so many places. */
export interface NotionsCell extends CellBase {
  readonly kind: 'notions';
  readonly sites: Entry;
  readonly every: Entry;
  readonly startAt: Entry;
  readonly each: Entry;
  readonly waste: Entry;
}

/** What a measurement of the garment comes to as its pieces are worked, beside what is wanted of it. */
export interface AsMadeCell extends CellBase {
  readonly kind: 'as made';
  /** Widths or lengths that lie side by side, each so many times: a back once, a front twice, a band's length twice. */
  readonly of: readonly { readonly width: Entry; readonly times: Entry }[];
  readonly closes: 'edge to edge' | 'overlapped' | 'seamed';
  /** What overlaps or seams take of it, in all; edge to edge they take nothing. */
  readonly less: Entry;
  readonly wish: Entry;
  /** So far it may be from the wish before the page says so: half of the step that its repeats allow. */
  readonly within: Entry;
}

/** A condition that has to hold in every size, and what to say where it does not. */
export interface CheckCell extends CellBase {
  readonly kind: 'check';
  /** True or false in a size; with `across`, a value that is looked at across the sizes. */
  readonly condition: string;
  readonly message: string;
  /**
   * A formula works within one size. With 'differ' the value has to be another than in the size before it in the
   * notebook, with 'grow' more, with 'steady' no more than 1 away from it. With 'meet' it is the length by which the fronts,
   * closed, are wider than the back, less than 0 where they are narrower, and has to be 0; with 'no child' it has to be 0 in a size of a child's or
   * a baby's chart.
   */
  readonly across?: 'differ' | 'grow' | 'steady' | 'meet' | 'no child';
}

export type Cell =
  | Measure
  | Swatch
  | EaseCell
  | FormulaCell
  | RepeatFit
  | SpacingCell
  | PickUpCell
  | PieceCell
  | YarnCell
  | NotionsCell
  | AsMadeCell
  | CheckCell
  | NoteCell;
export type CellKind = Cell['kind'];

/** The cells of all sections, in the order of the grid. */
export function allCells({ sections }: Pick<Notebook, 'sections'>): Cell[] {
  // Every edit asks for them several times: this copies whole lists, a hundred times as fast as one by one.
  return ([] as Cell[]).concat(...sections.map(({ cells }) => cells));
}

/** The cell of an id; undefined where it is no longer there. */
export function cellById(notebook: Notebook, id: string): Cell | undefined {
  for (const section of notebook.sections) {
    const cell = section.cells.find((candidate) => candidate.id === id);
    if (cell) return cell;
  }
  return undefined;
}
