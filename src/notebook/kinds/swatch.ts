import * as v from 'valibot';
import type { Swatch, SwatchReading } from '../document';
import { entrySchema, mapEntry } from '../entry';
import type { Input, Kind } from '../kind';
import { length, rowGauge, rows, stitchGauge, stitches } from '../units';

const reading = v.object({ count: entrySchema, over: entrySchema });
const readings = v.pipe(v.array(reading), v.minLength(1), v.maxLength(30));

type Counted = 'sts' | 'rows';
const field = { sts: 'stitches', rows: 'rows' } as const;

/** `body_sts_counted`, and `body_sts_counted_2` for the second reading. */
function readingName(cell: Swatch, counted: Counted, part: string, index: number): string {
  return `${cell.name}_${counted}_${part}${index === 0 ? '' : `_${index + 1}`}`;
}

function readingInputs(cell: Swatch, counted: Counted): Input[] {
  return cell[field[counted]].flatMap((entry, index): Input[] => [
    {
      key: `${counted}.${index}.count`,
      name: readingName(cell, counted, 'counted', index),
      label: counted === 'sts' ? 'Stitches counted' : 'Rows counted',
      unit: counted === 'sts' ? stitches : rows,
      entry: entry.count,
      must: { above: 0 },
      shared: true,
    },
    {
      key: `${counted}.${index}.over`,
      name: readingName(cell, counted, 'over', index),
      label: 'over',
      unit: length,
      entry: entry.over,
      must: { above: 0 },
      shared: true,
    },
  ]);
}

function gaugeFormula(cell: Swatch, counted: Counted): string {
  const names = cell[field[counted]].flatMap((_reading, index) => [
    readingName(cell, counted, 'counted', index),
    readingName(cell, counted, 'over', index),
  ]);
  return `GAUGE(${names.join('; ')})`;
}

const mapReadings = (list: readonly SwatchReading[], change: (formula: string) => string): SwatchReading[] =>
  list.map((entry) => ({ count: mapEntry(entry.count, change), over: mapEntry(entry.over, change) }));

export const swatch: Kind<Swatch> = {
  kind: 'swatch',
  label: 'Swatch',
  about:
    'Stitches and rows counted over a length of fabric: one yarn, one hook or pair of needles, one stitch. Another hook makes another fabric, so it has a swatch of its own.',
  schema: v.object({ worked: v.pipe(v.string(), v.maxLength(200)), stitches: readings, rows: readings }),
  fresh: (base) => ({
    kind: 'swatch',
    ...base,
    worked: '',
    stitches: [{ count: { value: null }, over: { value: 10 } }],
    rows: [{ count: { value: null }, over: { value: 10 } }],
  }),
  inputs: (cell) => [...readingInputs(cell, 'sts'), ...readingInputs(cell, 'rows')],
  outputs: (cell) => [
    {
      key: 'sts',
      name: `${cell.name}_sts`,
      label: 'Stitch gauge',
      unit: stitchGauge,
      formula: gaugeFormula(cell, 'sts'),
      shown: 'line',
    },
    {
      key: 'rows',
      name: `${cell.name}_rows`,
      label: 'Row gauge',
      unit: rowGauge,
      formula: gaugeFormula(cell, 'rows'),
      shown: 'line',
    },
    {
      key: 'fabric',
      name: cell.name,
      label: 'Fabric',
      unit: 'fabric',
      formula: `FABRIC(${cell.name}_sts; ${cell.name}_rows)`,
      shown: 'none',
    },
  ],
  put: (cell, key, entry) => {
    const [counted, index, part] = key.split('.');
    const list = field[counted as Counted];
    return {
      ...cell,
      [list]: cell[list].map((old, at) => (at === Number(index) ? { ...old, [part as string]: entry } : old)),
    };
  },
  mapFormulas: (cell, change) => ({
    ...cell,
    stitches: mapReadings(cell.stitches, change),
    rows: mapReadings(cell.rows, change),
  }),
};
