import type { AsMadeCell } from '../document';
import { mapEntry } from '../entry';
import type { Input, Kind, Output } from '../kind';
import { numbered } from '../../format';
import { length, plain } from '../../formulas';

const widthName = (cell: AsMadeCell, at: number): string => numbered(`${cell.name}_part`, at);
const timesName = (cell: AsMadeCell, at: number): string => numbered(`${cell.name}_times`, at);

function partInputs(cell: AsMadeCell): Input[] {
  return cell.of.flatMap(({ width, times }, at): Input[] => [
    {
      key: `of.${at}.width`,
      name: widthName(cell, at),
      label: numberedLabel('Part', at),
      unit: length,
      entry: width,
      constraint: { least: 0 },
    },
    {
      key: `of.${at}.times`,
      name: timesName(cell, at),
      label: `${numberedLabel('Part', at)}, times`,
      unit: plain,
      entry: times,
      constraint: { above: 0 },
    },
  ]);
}

const numberedLabel = (label: string, at: number): string => (at === 0 ? label : `${label} ${at + 1}`);
const lessLabel = { overlapped: 'Overlap, in all', seamed: 'Taken by seams' } as const;

export const asMade: Kind<AsMadeCell> = {
  kind: 'as made',
  label: 'As made',
  about:
    'What a finished measurement comes to as the pieces are worked: widths added up, less what overlaps or seams take. It is shown next to the measurement that is wanted, and the pattern prints it.',
  example:
    'A back of 53.6 cm, two fronts of 25 cm and two bands of 4 cm make 111.6 cm where 114 cm is wanted.',
  fresh: (base) => ({
    kind: 'as made',
    ...base,
    of: [{ width: { value: null }, times: { value: 1 } }],
    closes: 'edge to edge',
    less: { value: 0 },
    wish: { value: null },
    within: { value: 1 },
  }),
  inputs: (cell): Input[] => [
    ...partInputs(cell),
    ...(cell.closes === 'edge to edge'
      ? []
      : [
          {
            key: 'less',
            name: `${cell.name}_less`,
            label: lessLabel[cell.closes],
            unit: length,
            entry: cell.less,
            constraint: { least: 0 },
          },
        ]),
    {
      key: 'wish',
      name: `${cell.name}_wanted`,
      label: 'Wanted',
      unit: length,
      entry: cell.wish,
      constraint: { above: 0 },
    },
    {
      key: 'within',
      name: `${cell.name}_within`,
      label: 'May be off by',
      unit: length,
      entry: cell.within,
      constraint: { above: 0 },
    },
  ],
  outputs: (cell): Output[] => {
    const parts = cell.of.map((_part, at) => `${timesName(cell, at)} * ${widthName(cell, at)}`);
    const less = cell.closes === 'edge to edge' ? '' : ` - ${cell.name}_less`;
    return [
      {
        key: 'made',
        name: cell.name,
        label: cell.label,
        unit: length,
        formula: `${parts.join(' + ')}${less}`,
        shown: 'line',
      },
      {
        key: 'difference',
        name: `${cell.name}_difference`,
        label: 'Difference',
        unit: length,
        formula: `${cell.name} - ${cell.name}_wanted`,
        shown: 'line',
      },
    ];
  },
  put: (cell, key, entry) => {
    const [list, at, field] = key.split('.');
    if (list !== 'of') return { ...cell, [key]: entry };
    return {
      ...cell,
      of: cell.of.map((part, index) => (index === Number(at) ? { ...part, [field!]: entry } : part)),
    };
  },
  mapFormulas: (cell, change) => ({
    ...cell,
    of: cell.of.map(({ width, times }) => ({
      width: mapEntry(width, change),
      times: mapEntry(times, change),
    })),
    less: mapEntry(cell.less, change),
    wish: mapEntry(cell.wish, change),
    within: mapEntry(cell.within, change),
  }),
};
