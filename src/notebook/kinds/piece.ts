import type { Entry, PieceCell, PieceStretch, TaperStretch } from '../document';
import { shapedEdge } from '../shaped-edge';
import { mapEntry } from '../entry';
import { howWorked } from '../how-worked';
import type { Input, Kind, Output } from '../kind';
import { area, length, plain, rows, stitches } from '../../formulas';

type Field = Omit<Input, 'key' | 'name' | 'entry'> & { field: string; called: string };
const count = { whole: true, least: 0 } as const;
const some = { whole: true, least: 1 } as const;
const atEnds: Field[] = [
  { field: 'atStart', called: 'at_start', label: 'At the start', unit: stitches, constraint: count },
  { field: 'atEnd', called: 'at_end', label: 'At the end', unit: stitches, constraint: count },
];

/** The inputs of each kind of stretch, in the order they are read. */
const fields: Record<Exclude<PieceStretch['kind'], 'rows'>, Field[]> = {
  even: [{ field: 'rows', called: 'rows', label: 'Rows', unit: rows, constraint: count }],
  taper: [
    { field: 'to', called: 'to', label: 'To', unit: stitches, constraint: some },
    { field: 'over', called: 'over', label: 'Over', unit: rows, constraint: count },
    { field: 'perRow', called: 'per_row', label: 'Each shaping row', unit: stitches, constraint: some },
    { field: 'before', called: 'before', label: 'Plain before', unit: rows, constraint: count },
    { field: 'after', called: 'after', label: 'Plain after', unit: rows, constraint: count },
  ],
  evenly: [{ field: 'to', called: 'to', label: 'To', unit: stitches, constraint: some }],
  eachRepeat: [
    { field: 'repeats', called: 'repeats', label: 'Repeats', unit: plain, constraint: some },
    { field: 'by', called: 'by', label: 'Each by', unit: stitches, constraint: { whole: true } },
  ],
  gather: [
    { field: 'to', called: 'to', label: 'To about', unit: stitches, constraint: some },
    { field: 'rounds', called: 'rounds', label: 'In rounds', unit: rows, constraint: some },
  ],
  leave: atEnds,
  add: atEnds,
};

interface StretchRef {
  readonly field: Omit<Field, 'field'>;
  readonly key: string;
  readonly entry: Entry;
}

/** Where the entries of a stretch stand. Rows counted one by one are `counts.0`, `counts.1` and so on. */
function refsOf(stretch: PieceStretch): StretchRef[] {
  if (stretch.kind === 'rows') {
    return stretch.counts.map((entry, at) => ({
      field: { called: `row_${at + 1}`, label: `Row ${at + 1}`, unit: stitches, constraint: some },
      key: `counts.${at}`,
      entry,
    }));
  }
  return fields[stretch.kind].map(({ field, ...rest }) => ({
    field: rest,
    key: field,
    entry: (stretch as unknown as Record<string, Entry>)[field]!,
  }));
}

function stretchInputs(cell: PieceCell, stretch: PieceStretch): Input[] {
  return refsOf(stretch).map(({ field: { called, ...rest }, key, entry }) => ({
    ...rest,
    label:
      cell.worked === 'round'
        ? rest.label.replace(/\brow/i, (row) => (row === 'Row' ? 'Round' : 'round'))
        : rest.label,
    key: `${stretch.name}.${key}`,
    name: `${cell.name}_${stretch.name}_${called}`,
    entry,
  }));
}

function stretchFormula(cell: PieceCell, stretch: PieceStretch): string {
  const own = (part: string): string => `${cell.name}_${stretch.name}_${part}`;
  switch (stretch.kind) {
    case 'even':
      return `EVENROWS(${own('rows')}; ${stretch.fabric})`;
    case 'taper':
      return `TAPERROWS(${own('to')}; ${own('over')}; ${own('per_row')}; ${stretch.every}; ${own('before')}; ${own('after')}; "${stretch.order}"; ${stretch.fabric}${edgeArgument(cell, stretch)})`;
    case 'evenly':
      return `EVENLYROW(${own('to')}; "${stretch.ends}"; ${stretch.fabric})`;
    case 'eachRepeat':
      return `REPEATSROW(${own('repeats')}; ${own('by')}; ${stretch.fabric})`;
    case 'gather':
      return `GATHERROUNDS(${own('to')}; ${own('rounds')}; ${stretch.fabric})`;
    case 'leave':
      return `LEAVESTITCHES(${own('at_start')}; ${own('at_end')}; ${stretch.fabric})`;
    case 'add':
      return `ADDSTITCHES(${own('at_start')}; ${own('at_end')}; ${stretch.fabric})`;
    case 'rows':
      return `COUNTEDROWS(${[stretch.fabric, ...stretch.counts.map((_count, at) => own(`row_${at + 1}`))].join('; ')})`;
  }
}

function edgeArgument(cell: PieceCell, stretch: TaperStretch): string {
  const edge = shapedEdge(cell, stretch);
  return edge ? `; "${edge}"` : '';
}

/** The stretch with its entries passed through `change`, by their keys. */
function withEntries(stretch: PieceStretch, change: (entry: Entry, key: string) => Entry): PieceStretch {
  if (stretch.kind === 'rows') {
    return { ...stretch, counts: stretch.counts.map((entry, at) => change(entry, `counts.${at}`)) };
  }
  const changed = refsOf(stretch).map(({ key, entry }) => [key, change(entry, key)] as const);
  return { ...stretch, ...Object.fromEntries(changed) };
}

function widthLabel(cell: PieceCell, where: string): string {
  return `${cell.worked === 'round' ? 'Round' : 'Width'} ${where}`;
}

/** What is asked of each stretch once the piece is worked: joins and pick-ups begin there. */
function stretchOutputs(cell: PieceCell): Output[] {
  return cell.stretches.flatMap((stretch, at): Output[] => {
    if (stretch.kind === 'leave' || stretch.kind === 'add') return [];
    const own = (part: string, label: string, unit: Output['unit'], called: string): Output => ({
      key: `${stretch.name}.${part}`,
      name: `${cell.name}_${stretch.name}_${part}`,
      label: `${stretch.label}, ${label}`,
      unit,
      formula: `${called}(${cell.name}; ${at + 1})`,
      shown: 'detail',
    });
    return [
      own('last', 'last stitches', stitches, 'STRETCHEND'),
      own('worked_rows', cell.worked === 'round' ? 'rounds worked' : 'rows worked', rows, 'STRETCHROWS'),
      own('length', 'length', length, 'STRETCHLENGTH'),
      ...(stretch.kind === 'taper' && cell.worked === 'flat'
        ? [
            {
              ...own('edge', 'length of its edge', length, ''),
              formula: `EDGELENGTH(${cell.name}; "shaped"; ${at + 1})`,
            },
          ]
        : []),
    ];
  });
}

export const piece: Kind<PieceCell> = {
  kind: 'piece',
  label: 'Piece',
  about:
    'Something worked from a first row to a last, flat or in the round, as a list of stretches that each say how they are worked. Its length, widths and counts follow row by row.',
  example: '56 stitches, 2 fewer in each of 10 shaping rounds over 60 rounds, end on 36.',
  fresh: (cell) => ({
    kind: 'piece',
    ...cell,
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
      constraint: some,
    },
    ...cell.stretches.flatMap((stretch) => stretchInputs(cell, stretch)),
  ],
  outputs: (cell): Output[] => {
    const plan = [`"${howWorked(cell)}"`, `${cell.name}_start`, `"${cell.ends}"`];
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
      ...stretchOutputs(cell),
    ];
  },
  put: (cell, key, entry) => {
    if (key === 'start') return { ...cell, start: entry };
    const name = key.slice(0, key.indexOf('.'));
    const field = key.slice(name.length + 1);
    return {
      ...cell,
      stretches: cell.stretches.map((stretch) =>
        stretch.name === name ? withEntries(stretch, (old, at) => (at === field ? entry : old)) : stretch,
      ),
    };
  },
  mapFormulas: (cell, change) => ({
    ...cell,
    start: mapEntry(cell.start, change),
    stretches: cell.stretches.map((stretch) => ({
      ...withEntries(stretch, (entry) => mapEntry(entry, change)),
      fabric: change(stretch.fabric),
    })),
  }),
};
