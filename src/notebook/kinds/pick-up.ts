import type { EdgePart, Entry, PickUpCell } from '../document';
import { mapEntry } from '../entry';
import type { Input, Kind, Output } from '../kind';
import { length, plain, rows, stitchGauge, stitches } from '../../formulas';
import { repeatInputs } from './fit';

type Field = Omit<Input, 'key' | 'name' | 'entry'> & { field: string };
const count = { whole: true, least: 0 } as const;
const some = { whole: true, least: 1 } as const;

/** The inputs of each kind of edge, in the order its function takes them. */
const fields: Record<EdgePart['kind'], { called: string; fields: Field[] }> = {
  rows: {
    called: 'EDGEROWS',
    fields: [
      { field: 'rows', label: 'Row ends', unit: rows, constraint: count },
      { field: 'pick', label: 'pick up', unit: stitches, constraint: some },
      { field: 'of', label: 'in every', unit: rows, constraint: some },
    ],
  },
  stitches: {
    called: 'EDGESTITCHES',
    fields: [{ field: 'count', label: 'Stitches, one for one', unit: stitches, constraint: count }],
  },
  motifs: {
    called: 'EDGEMOTIFS',
    fields: [
      { field: 'motifs', label: 'Motifs or chain spaces', unit: plain, constraint: count },
      { field: 'each', label: 'stitches in each', unit: stitches, constraint: count },
    ],
  },
  curve: {
    called: 'EDGECURVE',
    fields: [
      { field: 'length', label: 'Length of the curve', unit: length, constraint: { least: 0 } },
      { field: 'gauge', label: 'at', unit: stitchGauge, constraint: { above: 0 } },
    ],
  },
};

const entryOf = (part: EdgePart, field: string): Entry => (part as unknown as Record<string, Entry>)[field]!;

function partInputs(cell: PickUpCell, part: EdgePart): Input[] {
  return fields[part.kind].fields.map(({ field, ...rest }) => ({
    key: `${part.name}.${field}`,
    name: `${cell.name}_${part.name}_${field}`,
    entry: entryOf(part, field),
    ...rest,
  }));
}

function partFormula(cell: PickUpCell, part: EdgePart): string {
  return `${fields[part.kind].called}(${partInputs(cell, part)
    .map(({ name }) => name)
    .join('; ')})`;
}

function withEntries(part: EdgePart, change: (entry: Entry, field: string) => Entry): EdgePart {
  const changed = fields[part.kind].fields.map(
    ({ field }) => [field, change(entryOf(part, field), field)] as const,
  );
  return { ...part, ...Object.fromEntries(changed) };
}

export const pickUp: Kind<PickUpCell> = {
  kind: 'pickUp',
  label: 'Pick-up',
  about:
    'Stitches picked up along an edge, each stretch of it at its own ratio: row ends, stitch tops, motifs or chains, curves. The sum is fitted to what is worked on it, and the change is shared out over the stretches.',
  example: '120 row ends at 2 in every 3 are 80 stitches.',
  fresh: (cell) => ({
    kind: 'pickUp',
    ...cell,
    edge: [
      {
        kind: 'rows',
        name: 'edge',
        label: 'Edge',
        rows: { value: null },
        pick: { value: 3 },
        of: { value: 4 },
      },
    ],
    multiple: { value: 1 },
    plus: { value: 0 },
    rule: 'nearest',
  }),
  inputs: (cell) => [
    ...cell.edge.flatMap((part) => partInputs(cell, part)),
    ...repeatInputs(cell.name, cell, 1),
  ],
  outputs: (cell): Output[] => {
    const fitted = `${cell.name}_multiple; ${cell.name}_plus; "${cell.rule}"`;
    const edge = cell.edge.map((part) => partFormula(cell, part)).join('; ');
    return [
      {
        key: 'total',
        name: cell.name,
        label: cell.label,
        unit: stitches,
        formula: `PICKUPEDGE(${fitted}; ${edge})`,
        shown: 'line',
      },
      {
        key: 'unfitted',
        name: `${cell.name}_unfitted`,
        label: 'Before fitting',
        unit: stitches,
        formula: `PICKUPUNFITTED(${edge})`,
        shown: 'line',
      },
      ...cell.edge.map((part, at): Output => ({
        key: `${part.name}.share`,
        name: `${cell.name}_${part.name}`,
        label: `along ${part.label}`,
        unit: stitches,
        formula: `PICKUPSHARE(${at + 1}; ${fitted}; ${edge})`,
        shown: 'line',
      })),
    ];
  },
  put: (cell, key, entry) => {
    const [name, field] = key.split('.') as [string, string | undefined];
    if (field === undefined) return { ...cell, [name]: entry };
    return {
      ...cell,
      edge: cell.edge.map((part) =>
        part.name === name ? withEntries(part, (old, at) => (at === field ? entry : old)) : part,
      ),
    };
  },
  mapFormulas: (cell, change) => ({
    ...cell,
    multiple: mapEntry(cell.multiple, change),
    plus: mapEntry(cell.plus, change),
    edge: cell.edge.map((part) => withEntries(part, (entry) => mapEntry(entry, change))),
  }),
};
