import type { Cell, Entry } from './document';
import type { Unit } from '../formulas';

/** A place in a cell where a value is given or a formula stands. */
export interface Input {
  /** Unique in its cell; stays when the cell is renamed. */
  readonly key: string;
  /** What formulas call it. */
  readonly name: string;
  readonly label: string;
  /** 'any' where the formula in it decides. */
  readonly unit: Unit | 'any';
  readonly written?: WrittenAs;
  readonly entry: Entry;
  /** What a typed value must be, beyond a number. */
  readonly constraint?: Constraint;
  /** What a length that is typed lies within, cm: beyond it a key or a unit slipped. A file may hold another. */
  readonly within?: readonly [least: number, most: number];
  /** A value that every size shares by its nature: a swatch is the same swatch in every size. */
  readonly shared?: true;
}

/** How a person writes a number, where its unit alone does not say: a share as a per cent, yarn by the metre. */
export type WrittenAs = 'percent' | 'metres';

export interface Constraint {
  readonly whole?: true;
  readonly above?: number;
  readonly least?: number;
}

/** Something the cell works out. */
export interface Output {
  readonly key: string;
  readonly name: string;
  readonly label: string;
  /** The unit its formula must give; 'any' where the formula decides. */
  readonly unit: Unit | 'any';
  readonly written?: WrittenAs;
  /** The formula the person reads and may take over. */
  readonly formula: string;
  /** Among the cell's lines, among its details, or not as a number at all. */
  readonly shown: 'line' | 'detail' | 'none';
}

/** One kind of cell: its inputs, its outputs, and the formulas between them. One file each. */
export interface Kind<C extends Cell = Cell> {
  readonly kind: C['kind'];
  /** "Repeat fit" */
  readonly label: string;
  /** Two sentences: what it is, and when it is used. */
  readonly about: string;
  /** One small worked example, in a sentence. */
  readonly example: string;
  fresh(base: { id: string; label: string; name: string }): C;
  inputs(cell: C): Input[];
  outputs(cell: C): Output[];
  /** The cell with another entry in the input of that key. */
  put(cell: C, key: string, entry: Entry): C;
  /** The cell with every formula and every reference to a name passed through `change`. */
  mapFormulas(cell: C, change: (formula: string) => string): C;
}
