import type { SpacingCell } from '../document';
import { mapEntry } from '../entry';
import type { Kind } from '../kind';
import { plain, stitches } from '../../formulas';

const some = { whole: true, least: 1 } as const;

export const spacing: Kind<SpacingCell> = {
  kind: 'spacing',
  label: 'Spacing',
  about:
    'Increases or decreases spread over one row so that the plain stretches between them differ by one stitch at most. The row begins on one count and ends exactly on the other.',
  example: 'From 40 to 44 stitches with whole gaps: an increase after every 8.',
  fresh: (base) => ({
    kind: 'spacing',
    ...base,
    from: { value: null },
    to: { value: null },
    worked: 'flat',
    ends: 'half',
  }),
  inputs: (cell) => [
    {
      key: 'from',
      name: `${cell.name}_from`,
      label: 'From',
      unit: stitches,
      entry: cell.from,
      constraint: some,
    },
    { key: 'to', name: `${cell.name}_to`, label: 'To', unit: stitches, entry: cell.to, constraint: some },
  ],
  outputs: (cell) => {
    const row = `${cell.name}_from; ${cell.name}_to; "${cell.worked}"${cell.worked === 'flat' ? `; "${cell.ends}"` : ''}`;
    return [
      {
        key: 'shapings',
        name: `${cell.name}_shapings`,
        label: 'Shapings',
        unit: plain,
        formula: `SHAPINGS(${row})`,
        shown: 'line',
      },
      {
        key: 'plain',
        name: cell.name,
        label: 'Plain stitches before, between and after',
        unit: 'text',
        formula: `SPACING(${row})`,
        shown: 'line',
      },
    ];
  },
  put: (cell, key, entry) => ({ ...cell, [key]: entry }),
  mapFormulas: (cell, change) => ({
    ...cell,
    from: mapEntry(cell.from, change),
    to: mapEntry(cell.to, change),
  }),
};
