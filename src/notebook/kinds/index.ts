import { memoizePerCell } from '../memoize-per-cell';
import type { Cell, CellKind } from '../document';
import type { Input, Kind, Output } from '../kind';
import { asMade } from './as-made';
import { check } from './check';
import { ease } from './ease';
import { fit } from './fit';
import { formula } from './formula';
import { measure } from './measure';
import { note } from './note';
import { notions } from './notions';
import { pickUp } from './pick-up';
import { piece } from './piece';
import { spacing } from './spacing';
import { swatch } from './swatch';
import { yarn } from './yarn';

/** Every kind of cell, in the order they are offered. A kind is added here and in its own file. */
export const kinds = {
  measure,
  swatch,
  ease,
  formula,
  fit,
  spacing,
  pickUp,
  piece,
  yarn,
  notions,
  'as made': asMade,
  check,
  note,
} satisfies {
  [K in CellKind]: unknown;
};

export function kindOf(cell: Cell): Kind {
  return kinds[cell.kind] as unknown as Kind;
}

export const inputsOf = memoizePerCell<readonly Input[]>((cell) => kindOf(cell).inputs(cell));

/** The outputs of a cell, with the formulas the person took over instead of the kind's own. */
export const outputsOf = memoizePerCell<readonly Output[]>((cell) =>
  kindOf(cell)
    .outputs(cell)
    .map((output) => {
      const taken = cell.taken?.[output.key];
      return taken === undefined ? output : { ...output, formula: taken };
    }),
);

/** The cell with every formula in it passed through `change`: a renamed name, say. */
export function mapFormulas(cell: Cell, change: (formula: string) => string): Cell {
  const mapped = kindOf(cell).mapFormulas(cell, change);
  if (!mapped.taken) return mapped;
  const taken = Object.entries(mapped.taken).map(([key, formula]) => [key, change(formula)] as const);
  return { ...mapped, taken: Object.fromEntries(taken) };
}
