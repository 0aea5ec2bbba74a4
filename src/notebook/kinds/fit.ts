import * as v from 'valibot';
import type { RepeatFit } from '../document';
import { entrySchema, mapEntry } from '../entry';
import type { Kind } from '../kind';
import { plain, rows, stitches } from '../units';

export const fit: Kind<RepeatFit> = {
  kind: 'fit',
  label: 'Repeat fit',
  about:
    'The count nearest to a wanted one that a repeat allows: a multiple of so many, plus the edge. It also tells how far the count is from what was wanted.',
  schema: v.object({
    counts: v.picklist(['stitches', 'rows']),
    target: entrySchema,
    multiple: entrySchema,
    plus: entrySchema,
    rule: v.picklist(['nearest', 'up', 'down']),
  }),
  fresh: (base) => ({
    kind: 'fit',
    ...base,
    counts: 'stitches',
    target: { value: null },
    multiple: { value: 1 },
    plus: { value: 0 },
    rule: 'nearest',
  }),
  inputs: (cell) => [
    {
      key: 'target',
      name: `${cell.name}_wanted`,
      label: 'Wanted',
      unit: cell.counts === 'stitches' ? stitches : rows,
      entry: cell.target,
      must: { above: 0 },
    },
    {
      key: 'multiple',
      name: `${cell.name}_multiple`,
      label: 'Multiple of',
      unit: plain,
      entry: cell.multiple,
      must: { whole: true, least: 1 },
    },
    {
      key: 'plus',
      name: `${cell.name}_plus`,
      label: 'plus',
      unit: plain,
      entry: cell.plus,
      must: { whole: true },
    },
  ],
  outputs: (cell) => {
    const unit = cell.counts === 'stitches' ? stitches : rows;
    const own = (part: string): string => `${cell.name}_${part}`;
    return [
      {
        key: 'count',
        name: cell.name,
        label: cell.label,
        unit,
        formula: `FITREPEAT(${own('wanted')}; ${own('multiple')}; ${own('plus')}; "${cell.rule}")`,
        shown: 'line',
      },
      {
        key: 'off',
        name: own('off'),
        label: 'Off by',
        unit,
        formula: `${cell.name} - ${own('wanted')}`,
        shown: 'detail',
      },
    ];
  },
  put: (cell, key, entry) => ({ ...cell, [key]: entry }),
  mapFormulas: (cell, change) => ({
    ...cell,
    target: mapEntry(cell.target, change),
    multiple: mapEntry(cell.multiple, change),
    plus: mapEntry(cell.plus, change),
  }),
};
