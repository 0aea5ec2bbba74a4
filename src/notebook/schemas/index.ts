import type { GenericSchema } from 'valibot';
import type { CellKind } from '../document';
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

/**
 * What stands in a file of each kind of cell, beyond what every cell has. Apart from the kinds themselves, since only
 * who reads a file has to look at its shape, and the page opens without.
 */
export const schemas = {
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
} satisfies { [K in CellKind]: GenericSchema };

export * from './entry';
