import type { Measure, MeasureUnit } from '../document';
import { mapEntry } from '../entry';
import type { Kind } from '../kind';
import { length, mass, plain, rows, stitches, type Unit } from '../../formulas';

/** No body and no garment has a measurement beyond these, cm: our own bounds, wide on purpose. */
const measurable = [0, 1000] as const;

const units: Record<MeasureUnit, Unit> = { length, stitches, rows, mass, number: plain, percent: plain };

export const measure: Kind<Measure> = {
  kind: 'measure',
  label: 'Measure',
  about:
    'A value from the tape, from a body chart or of your own choosing: one for all sizes, or one for each. Everything else is worked from measures and swatches.',
  example: 'A bust of 94 cm in size M, a cuff of 22 cm in every size.',
  fresh: (base) => ({ kind: 'measure', ...base, unit: 'length', entry: { value: null } }),
  inputs: (cell) => [
    {
      key: 'value',
      name: cell.name,
      label: cell.label,
      unit: units[cell.unit],
      entry: cell.entry,
      ...(cell.unit === 'percent' ? { written: 'percent' } : {}),
      ...(cell.unit === 'length' && !cell.chosen ? { within: measurable } : {}),
      ...(cell.unit === 'stitches' || cell.unit === 'rows' ? { constraint: { whole: true } } : {}),
    },
  ],
  outputs: () => [],
  put: (cell, _key, entry) => ({ ...cell, entry }),
  mapFormulas: (cell, change) => ({ ...cell, entry: mapEntry(cell.entry, change) }),
};
