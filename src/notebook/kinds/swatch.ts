import type { Entry, Swatch, SwatchReading } from '../document';
import { mapEntry } from '../entry';
import type { Input, Kind, Output } from '../kind';
import { numbered } from '../../format';
import { length, mass, plain, rowGauge, rows, stitchGauge, stitches, type Unit } from '../../formulas';

type Counted = 'sts' | 'rows';
const field = { sts: 'stitches', rows: 'rows' } as const;
const counts = ['sts', 'rows'] as const;
const gauges = { sts: stitchGauge, rows: rowGauge };
const gaugeLabels = { sts: 'Stitch gauge', rows: 'Row gauge' };

/** `body_sts_counted`, and `body_sts_counted_2` for the second reading. */
function readingName(cell: Swatch, counted: Counted, part: string, index: number): string {
  return numbered(`${cell.name}_${counted}_${part}`, index);
}

interface ReadingEntry {
  readonly reading: SwatchReading;
  readonly key: string;
  readonly names: { readonly count: string; readonly over: string };
  readonly when: string;
}

function refsOf(cell: Swatch, counted: Counted): ReadingEntry[] {
  return cell[field[counted]].map((entry, index) => ({
    reading: entry,
    key: `${counted}.${index}`,
    names: {
      count: readingName(cell, counted, 'counted', index),
      over: readingName(cell, counted, 'over', index),
    },
    when: '',
  }));
}

function asWorkedReading(cell: Swatch, counted: Counted): ReadingEntry[] {
  if (!cell.asWorked) return [];
  return [
    {
      reading: cell.asWorked[field[counted]],
      key: `asWorked.${counted}`,
      names: {
        count: `${cell.name}_${counted}_counted_as_worked`,
        over: `${cell.name}_${counted}_over_as_worked`,
      },
      when: ' as worked',
    },
  ];
}

function readingInputs(counted: Counted, reading: ReadingEntry): Input[] {
  return [
    {
      key: `${reading.key}.count`,
      name: reading.names.count,
      label: `${counted === 'sts' ? 'Stitches' : 'Rows'} counted${reading.when}`,
      unit: counted === 'sts' ? stitches : rows,
      entry: reading.reading.count,
      constraint: { above: 0 },
      shared: true,
    },
    {
      key: `${reading.key}.over`,
      name: reading.names.over,
      label: `Length the ${field[counted]} were counted over${reading.when}`,
      unit: length,
      entry: reading.reading.over,
      constraint: { above: 0 },
      shared: true,
    },
  ];
}

const readingArguments = (readings: readonly ReadingEntry[]): string =>
  readings.flatMap(({ names }) => [names.count, names.over]).join('; ');

type PartKey = 'weighed' | 'pulled' | 'hung';
interface PartField {
  readonly field: string;
  readonly called: string;
  readonly label: string;
  readonly unit: Unit;
}

/** What else can be told of a swatch: the inputs of each part, by their field. */
const parts: Record<PartKey, readonly PartField[]> = {
  weighed: [
    { field: 'width', called: 'swatch_width', label: 'Whole swatch, width', unit: length },
    { field: 'length', called: 'swatch_length', label: 'Whole swatch, length', unit: length },
    { field: 'grams', called: 'swatch_grams', label: 'Whole swatch, weight', unit: mass },
  ],
  pulled: [
    { field: 'relaxed', called: 'relaxed', label: 'Width relaxed', unit: length },
    { field: 'stretched', called: 'stretched', label: 'Width stretched', unit: length },
  ],
  hung: [
    { field: 'width', called: 'strip_width', label: 'Hung strip, width', unit: length },
    { field: 'length', called: 'strip_length', label: 'Hung strip, length', unit: length },
    { field: 'grams', called: 'strip_load', label: 'Weight hung on it', unit: mass },
    { field: 'stretched', called: 'strip_stretched', label: 'Its length then', unit: length },
  ],
};
const partKeys = Object.keys(parts) as PartKey[];

function partInputs(cell: Swatch): Input[] {
  return partKeys.flatMap((part) => {
    const entries = cell[part] as Readonly<Record<string, Entry>> | undefined;
    if (!entries) return [];
    return parts[part].map(({ field: name, called, label, unit }) => ({
      key: `${part}.${name}`,
      name: `${cell.name}_${called}`,
      label,
      unit,
      entry: entries[name]!,
      constraint: { above: 0 },
      shared: true as const,
    }));
  });
}

function heightInputs(cell: Swatch): Input[] {
  return (cell.heights ?? []).map((entry, index) => ({
    key: `heights.${index}`,
    name: `${cell.name}_height_${index + 1}`,
    label: `Height of row ${index + 1}`,
    unit: length,
    entry,
    constraint: { above: 0 },
    shared: true,
  }));
}

function partOutputs(cell: Swatch): Output[] {
  const own = (part: string): string => `${cell.name}_${part}`;
  const made: Output[] = [];
  const add = (key: string, label: string, unit: Output['unit'], formula: string): void => {
    made.push({ key, name: own(key), label, unit, formula, shown: 'line' });
  };
  for (const counted of counts) {
    const readings = asWorkedReading(cell, counted);
    if (readings.length > 0) {
      add(
        `${counted}_as_worked`,
        `${gaugeLabels[counted]} as worked`,
        gauges[counted],
        `GAUGE(${readingArguments(readings)})`,
      );
    }
  }
  if (cell.weighed) {
    add(
      'swatch_area',
      'Area of the swatch',
      { length: 2 },
      `${own('swatch_width')} * ${own('swatch_length')}`,
    );
    add(
      'weight',
      'Weight by area',
      { mass: 1, length: -2 },
      `${own('swatch_grams')} / ${own('swatch_area')}`,
    );
  }
  if (cell.pulled) add('stretch', 'Stretches to', plain, `STRETCH(${own('relaxed')}; ${own('stretched')})`);
  if (cell.hung) {
    add(
      'strain',
      'Growth under load',
      { length: 1, mass: -1 },
      `STRAIN(${['strip_length', 'strip_stretched', 'strip_width', 'strip_load'].map(own).join('; ')})`,
    );
  }
  return made;
}

/** How sure each gauge is, for give or take. */
function uncertaintyOutputs(cell: Swatch): Output[] {
  return counts.flatMap((counted): Output[] => {
    const values = readingArguments(refsOf(cell, counted));
    return [
      {
        key: `${counted}_uncertainty`,
        name: `${cell.name}_${counted}_uncertainty`,
        label: `${gaugeLabels[counted]}, standard uncertainty`,
        unit: gauges[counted],
        formula: `GAUGEUNCERTAINTY(${values})`,
        shown: 'detail',
      },
      {
        key: `${counted}_freedom`,
        name: `${cell.name}_${counted}_freedom`,
        label: `${gaugeLabels[counted]}, degrees of freedom`,
        unit: plain,
        formula: `GAUGEFREEDOM(${values})`,
        shown: 'detail',
      },
    ];
  });
}

const mapReading = (entry: SwatchReading, change: (formula: string) => string): SwatchReading => ({
  count: mapEntry(entry.count, change),
  over: mapEntry(entry.over, change),
});

export const swatch: Kind<Swatch> = {
  kind: 'swatch',
  label: 'Swatch',
  about:
    'Stitches and rows counted over a length of fabric: one yarn, one hook or pair of needles, one stitch. Another hook makes another fabric, so it has a swatch of its own.',
  example: '14 stitches over 10 cm make a gauge of 1.4 stitches to the cm.',
  fresh: (base) => ({
    kind: 'swatch',
    ...base,
    worked: '',
    stitches: [{ count: { value: null }, over: { value: 10 } }],
    rows: [{ count: { value: null }, over: { value: 10 } }],
  }),
  inputs: (cell) => [
    ...counts.flatMap((counted) =>
      [...refsOf(cell, counted), ...asWorkedReading(cell, counted)].flatMap((reading) =>
        readingInputs(counted, reading),
      ),
    ),
    ...partInputs(cell),
    ...heightInputs(cell),
  ],
  outputs: (cell) => [
    ...counts.map((counted): Output => ({
      key: counted,
      name: `${cell.name}_${counted}`,
      label: gaugeLabels[counted],
      unit: gauges[counted],
      formula: `GAUGE(${readingArguments(refsOf(cell, counted))})`,
      shown: 'line',
    })),
    {
      key: 'fabric',
      name: cell.name,
      label: 'Fabric',
      unit: 'fabric',
      formula: `FABRIC(${[`${cell.name}_sts`, `${cell.name}_rows`, ...heightInputs(cell).map(({ name }) => name)].join('; ')})`,
      shown: 'none',
    },
    ...partOutputs(cell),
    ...uncertaintyOutputs(cell),
  ],
  put: (cell, key, entry) => {
    const [first, second, third] = key.split('.') as [string, string, string | undefined];
    if (first === 'sts' || first === 'rows') {
      const list = field[first];
      const at = Number(second);
      return {
        ...cell,
        [list]: cell[list].map((old, index) => (index === at ? { ...old, [third!]: entry } : old)),
      };
    }
    if (first === 'asWorked' && cell.asWorked) {
      const list = field[second as Counted];
      return { ...cell, asWorked: { ...cell.asWorked, [list]: { ...cell.asWorked[list], [third!]: entry } } };
    }
    if (first === 'heights' && cell.heights) {
      return { ...cell, heights: cell.heights.map((old, index) => (index === Number(second) ? entry : old)) };
    }
    return { ...cell, [first]: { ...(cell[first as PartKey] as object), [second]: entry } };
  },
  mapFormulas: (cell, change) => {
    const mapped: Record<string, unknown> = {
      ...cell,
      stitches: cell.stitches.map((entry) => mapReading(entry, change)),
      rows: cell.rows.map((entry) => mapReading(entry, change)),
    };
    if (cell.asWorked) {
      mapped['asWorked'] = {
        stitches: mapReading(cell.asWorked.stitches, change),
        rows: mapReading(cell.asWorked.rows, change),
      };
    }
    if (cell.heights) mapped['heights'] = cell.heights.map((entry) => mapEntry(entry, change));
    for (const part of partKeys) {
      const readings = cell[part];
      if (!readings) continue;
      const entries = Object.entries(readings).map(
        ([name, entry]) => [name, mapEntry(entry as Entry, change)] as const,
      );
      mapped[part] = Object.fromEntries(entries);
    }
    return mapped as unknown as Swatch;
  },
};
