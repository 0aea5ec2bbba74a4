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
}

export interface Settings {
  readonly length: 'cm' | 'in';
  readonly gaugeOver: '10 cm' | '4 in';
  readonly decimal: '.' | ',';
}

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
  /** Formulas the person has put in place of the cell's own, by the output's key. */
  readonly taken?: Readonly<Record<string, string>>;
}

export type MeasureUnit = 'length' | 'stitches' | 'rows' | 'mass' | 'number' | 'percent';

/** A value from the tape, the chart or the head. */
export interface Measure extends CellBase {
  readonly kind: 'measure';
  readonly unit: MeasureUnit;
  readonly entry: Entry;
}

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
  readonly stitches: readonly SwatchReading[];
  readonly rows: readonly SwatchReading[];
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

/** A count near a target that a repeat allows. */
export interface RepeatFit extends CellBase {
  readonly kind: 'fit';
  readonly counts: 'stitches' | 'rows';
  readonly target: Entry;
  readonly multiple: Entry;
  readonly plus: Entry;
  readonly rule: 'nearest' | 'up' | 'down';
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

export type PieceStretch = EvenStretch | TaperStretch;

/** Something worked from a first row to a last. */
export interface PieceCell extends CellBase {
  readonly kind: 'piece';
  readonly worked: 'flat' | 'round';
  readonly start: Entry;
  readonly stretches: readonly PieceStretch[];
  readonly ends: 'bound off' | 'held';
}

export interface NoteCell extends CellBase {
  readonly kind: 'note';
  readonly text: string;
}

export type Cell = Measure | Swatch | EaseCell | FormulaCell | RepeatFit | PieceCell | NoteCell;
export type CellKind = Cell['kind'];

export function allCells(notebook: Notebook): Cell[] {
  return notebook.sections.flatMap((section) => section.cells);
}

export function cellById(notebook: Notebook, id: string): Cell | undefined {
  for (const section of notebook.sections) {
    const cell = section.cells.find((candidate) => candidate.id === id);
    if (cell) return cell;
  }
  return undefined;
}
