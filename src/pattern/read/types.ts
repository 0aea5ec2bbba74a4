/**
 * A printed pattern as it was read: plain data, each part with the place in the text where it stands. Lengths are cm,
 * masses grams, gauges per cm. What could not be read is not in it: it stays in the text, marked as kept.
 */
export interface StatedPattern {
  readonly title: string;
  readonly craft: 'crochet' | 'knitting' | undefined;
  /** The names of the sizes, in the order of the size lists. */
  readonly sizes: readonly string[];
  readonly gauges: readonly StatedGauge[];
  readonly measures: readonly StatedMeasure[];
  readonly pieces: readonly StatedPiece[];
  readonly yarn: StatedYarn | undefined;
}

/** A stretch of one line: lines from 1, columns from 0, `to` not included. */
export interface TextRange {
  readonly line: number;
  readonly from: number;
  readonly to: number;
}

/** One value for each size; null where a dash is printed. */
export type PerSize = readonly (number | null)[];

export interface StatedGauge {
  /** Per cm; undefined where the line states only the other. */
  readonly stitches: number | undefined;
  readonly rows: number | undefined;
  /** What it was counted over, as printed. */
  readonly over: '10 cm' | '4 in' | 'another length';
  readonly overCm: number;
  /** What is said of the fabric: "stockinette stitch", "rib". */
  readonly fabric: string;
  readonly range: TextRange;
}

/** What a measurement is of. The order is that in which a label is searched. */
export type MeasureOf =
  | 'bust'
  | 'upper arm'
  | 'wrist'
  | 'sleeve length'
  | 'armhole'
  | 'length to underarm'
  | 'length'
  | 'neck'
  | 'other';

export interface StatedMeasure {
  readonly of: MeasureOf;
  readonly label: string;
  /** Of the body that it is to fit, or of the finished garment. */
  readonly on: 'body' | 'garment';
  readonly values: PerSize;
  /** How finely it is printed, cm: half of it may have been rounded away. */
  readonly step: number;
  readonly range: TextRange;
}

export interface StatedYarn {
  readonly grams: PerSize;
  /** As printed: "light", "double knitting"; empty where none is named. */
  readonly weight: string;
  readonly range: TextRange;
}

export interface StatedPiece {
  readonly label: string;
  readonly worked: 'flat' | 'round';
  /** How many of it are made. */
  readonly make: number;
  readonly start: StatedStart;
  readonly stretches: readonly StatedStretch[];
  readonly ends: 'bound off' | 'held';
  /** A last row shared out: stitches of each shoulder, and of the neck between them. */
  readonly parted?: StatedParting;
  readonly multiple?: StatedMultiple;
  readonly range: TextRange;
}

export type StatedStart = {
  readonly count: PerSize;
  readonly range: TextRange;
} & (
  | { readonly kind: 'new' }
  /** Goes on with stitches of another piece. */
  | { readonly kind: 'from'; readonly piece: string | undefined }
  /** Picked up along row ends: `pick` for every `of`, both sides of an armhole. */
  | { readonly kind: 'picked up'; readonly pick: number | undefined; readonly of: number | undefined }
);

export interface StatedMultiple {
  readonly multiple: number;
  readonly plus: number;
  readonly range: TextRange;
}

export interface StatedParting {
  readonly side: PerSize;
  readonly middle: PerSize;
  readonly range: TextRange;
}

interface StretchBase {
  readonly label: string;
  /** The fabric, in the pattern's words; empty where the piece goes on in the one before. */
  readonly fabric: string;
  readonly range: TextRange;
  /** The count the pattern says it ends on. */
  readonly says?: { readonly count: PerSize; readonly range: TextRange };
}

export type StatedStretch = StretchBase &
  (
    | {
        readonly kind: 'even';
        readonly rows: PerSize;
        /** Exactly these rows, whatever the gauge. */ readonly fixed?: true;
      }
    | {
        readonly kind: 'taper';
        readonly way: 'dec' | 'inc';
        readonly perRow: number;
        /** The rows on which it is shaped, counted from 1 in the stretch. */
        readonly shaped: readonly (readonly number[] | null)[];
        readonly over: PerSize;
      }
    | { readonly kind: 'evenly'; readonly change: PerSize }
    | { readonly kind: 'eachRepeat'; readonly repeats: PerSize; readonly by: number }
    | { readonly kind: 'leave' | 'add'; readonly atStart: PerSize; readonly atEnd: PerSize }
  );

/** Something that does not agree with itself, or could be meant in more than one way. */
export interface ImportDiagnostic {
  readonly range: TextRange;
  /** A sentence: what is wrong, and what would mend it. */
  readonly message: string;
  /** A count or measure that speaks against the rest, or only something to know. */
  readonly kind: 'contradiction' | 'unread' | 'to know';
}

/** How each line was taken. */
export interface ReadLine {
  readonly line: number;
  readonly text: string;
  /** What it was read as, in a few words each; empty where the line is kept as a note. */
  readonly as: readonly string[];
}

export interface PatternReading {
  readonly pattern: StatedPattern;
  readonly lines: readonly ReadLine[];
  readonly diagnostics: readonly ImportDiagnostic[];
}
