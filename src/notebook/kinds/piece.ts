import * as v from 'valibot';
import type { PieceCell, PieceStretch } from '../document';
import { entrySchema, labelSchema, mapEntry, nameSchema } from '../entry';
import type { Input, Kind, Output } from '../kind';
import { area, length, rows, stitches } from '../units';

const stretchBase = { name: nameSchema, label: labelSchema, fabric: nameSchema };
const stretchSchema = v.variant('kind', [
  v.object({ kind: v.literal('even'), ...stretchBase, rows: entrySchema }),
  v.object({
    kind: v.literal('taper'),
    ...stretchBase,
    to: entrySchema,
    over: entrySchema,
    perRow: entrySchema,
    every: v.picklist([1, 2]),
    before: entrySchema,
    after: entrySchema,
    order: v.picklist(['longFirst', 'shortFirst', 'spread']),
  }),
]);

type Field = Omit<Input, 'key' | 'name' | 'entry'> & { field: string; called: string };
const count = { whole: true, least: 0 } as const;

/** The inputs of each kind of stretch, in the order they are read. */
const fields: Record<PieceStretch['kind'], Field[]> = {
  even: [{ field: 'rows', called: 'rows', label: 'Rows', unit: rows, must: count }],
  taper: [
    { field: 'to', called: 'to', label: 'To', unit: stitches, must: { whole: true, least: 1 } },
    { field: 'over', called: 'over', label: 'Over', unit: rows, must: { whole: true, least: 1 } },
    {
      field: 'perRow',
      called: 'per_row',
      label: 'Each shaping row',
      unit: stitches,
      must: { whole: true, least: 1 },
    },
    { field: 'before', called: 'before', label: 'Plain before', unit: rows, must: count },
    { field: 'after', called: 'after', label: 'Plain after', unit: rows, must: count },
  ],
};

function stretchInputs(cell: PieceCell, stretch: PieceStretch): Input[] {
  return fields[stretch.kind].map(({ field, called, ...rest }) => ({
    key: `${stretch.name}.${field}`,
    name: `${cell.name}_${stretch.name}_${called}`,
    entry: stretch[field as keyof PieceStretch] as unknown as Input['entry'],
    ...rest,
  }));
}

function stretchFormula(cell: PieceCell, stretch: PieceStretch): string {
  const own = (part: string): string => `${cell.name}_${stretch.name}_${part}`;
  switch (stretch.kind) {
    case 'even':
      return `EVENROWS(${own('rows')}; ${stretch.fabric})`;
    case 'taper':
      return `TAPERROWS(${own('to')}; ${own('over')}; ${own('per_row')}; ${stretch.every}; ${own('before')}; ${own('after')}; "${stretch.order}"; ${stretch.fabric})`;
  }
}

function mapStretch(stretch: PieceStretch, change: (formula: string) => string): PieceStretch {
  const mapped: Record<string, unknown> = { ...stretch, fabric: change(stretch.fabric) };
  for (const { field } of fields[stretch.kind])
    mapped[field] = mapEntry(mapped[field] as Input['entry'], change);
  return mapped as unknown as PieceStretch;
}

export const piece: Kind<PieceCell> = {
  kind: 'piece',
  label: 'Piece',
  about:
    'Something worked from a first row to a last, flat or in the round, as a list of stretches that each say how they are worked. Its length, widths and counts follow row by row.',
  schema: v.object({
    worked: v.picklist(['flat', 'round']),
    start: entrySchema,
    stretches: v.pipe(v.array(stretchSchema), v.maxLength(100)),
    ends: v.picklist(['bound off', 'held']),
  }),
  fresh: (base) => ({
    kind: 'piece',
    ...base,
    worked: 'flat',
    start: { value: null },
    stretches: [],
    ends: 'bound off',
  }),
  inputs: (cell) => [
    {
      key: 'start',
      name: `${cell.name}_start`,
      label: 'Start with',
      unit: stitches,
      entry: cell.start,
      must: { whole: true, least: 1 },
    },
    ...cell.stretches.flatMap((stretch) => stretchInputs(cell, stretch)),
  ],
  outputs: (cell): Output[] => {
    const plan = [`"${cell.worked}"`, `${cell.name}_start`, `"${cell.ends}"`];
    const worked = (
      part: string,
      label: string,
      unit: Output['unit'],
      formula: string,
      shown: Output['shown'] = 'line',
    ): Output => ({ key: part, name: `${cell.name}_${part}`, label, unit, formula, shown });
    return [
      {
        key: 'piece',
        name: cell.name,
        label: cell.label,
        unit: 'piece',
        formula: `PIECE(${[...plan, ...cell.stretches.map((stretch) => stretchFormula(cell, stretch))].join('; ')})`,
        shown: 'none',
      },
      worked('length', 'Length', length, `PIECELENGTH(${cell.name})`),
      worked(
        'rows',
        cell.worked === 'round' ? 'Rounds in all' : 'Rows in all',
        rows,
        `PIECEROWS(${cell.name})`,
      ),
      worked('end', 'Stitches at the end', stitches, `PIECEEND(${cell.name})`),
      worked('start_width', widthLabel(cell, 'at the start'), length, `PIECEWIDTH(${cell.name}; CM(0))`),
      worked(
        'end_width',
        widthLabel(cell, 'at the end'),
        length,
        `PIECEWIDTH(${cell.name}; ${cell.name}_length)`,
      ),
      worked('area', 'Area', area, `PIECEAREA(${cell.name})`, 'detail'),
      worked('stitches', 'Stitches in all', stitches, `PIECESTITCHES(${cell.name})`, 'detail'),
    ];
  },
  put: (cell, key, entry) => {
    if (key === 'start') return { ...cell, start: entry };
    const [name, field] = key.split('.');
    return {
      ...cell,
      stretches: cell.stretches.map((stretch) =>
        stretch.name === name ? ({ ...stretch, [field as string]: entry } as PieceStretch) : stretch,
      ),
    };
  },
  mapFormulas: (cell, change) => ({
    ...cell,
    start: mapEntry(cell.start, change),
    stretches: cell.stretches.map((stretch) => mapStretch(stretch, change)),
  }),
};

function widthLabel(cell: PieceCell, where: string): string {
  return `${cell.worked === 'round' ? 'Round' : 'Width'} ${where}`;
}
