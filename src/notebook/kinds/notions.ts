import type { NotionsCell } from '../document';
import { mapEntry } from '../entry';
import type { Input, Kind } from '../kind';
import { length, plain } from '../../formulas';

const some = { whole: true, least: 1 } as const;

export const notions: Kind<NotionsCell> = {
  kind: 'notions',
  label: 'Notions',
  about:
    'Buttons, beads or tassels at every so many places of a row or a hem, and the length of yarn or trim they take. On a child’s garment they can choke or strangle: read the caution there.',
  example: '14 places, one at every second from the first: 7 tassels of 30 cm are 2.1 m.',
  fresh: (base) => ({
    kind: 'notions',
    ...base,
    sites: { value: null },
    every: { value: 1 },
    startAt: { value: 1 },
    each: { value: null },
    waste: { value: 0.1 },
  }),
  inputs: (cell): Input[] => [
    {
      key: 'sites',
      name: `${cell.name}_places`,
      label: 'Places',
      unit: plain,
      entry: cell.sites,
      constraint: some,
    },
    {
      key: 'every',
      name: `${cell.name}_every`,
      label: 'one at every',
      unit: plain,
      entry: cell.every,
      constraint: some,
    },
    {
      key: 'startAt',
      name: `${cell.name}_from`,
      label: 'from place',
      unit: plain,
      entry: cell.startAt,
      constraint: some,
    },
    {
      key: 'each',
      name: `${cell.name}_each`,
      label: 'Length of each',
      unit: length,
      entry: cell.each,
      constraint: { least: 0 },
    },
    {
      key: 'waste',
      name: `${cell.name}_waste`,
      label: 'Waste',
      unit: plain,
      written: 'percent',
      entry: cell.waste,
      constraint: { least: 0 },
    },
  ],
  outputs: (cell) => {
    const sites = `${cell.name}_places; ${cell.name}_every; ${cell.name}_from`;
    return [
      {
        key: 'pieces',
        name: cell.name,
        label: cell.label,
        unit: plain,
        formula: `NOTIONS(${sites})`,
        shown: 'line',
      },
      {
        key: 'length',
        name: `${cell.name}_length`,
        label: 'Length in all',
        unit: length,
        written: 'metres',
        formula: `NOTIONLENGTH(${sites}; ${cell.name}_each; ${cell.name}_waste)`,
        shown: 'line',
      },
    ];
  },
  put: (cell, key, entry) => ({ ...cell, [key]: entry }),
  mapFormulas: (cell, change) => ({
    ...cell,
    sites: mapEntry(cell.sites, change),
    every: mapEntry(cell.every, change),
    startAt: mapEntry(cell.startAt, change),
    each: mapEntry(cell.each, change),
    waste: mapEntry(cell.waste, change),
  }),
};
