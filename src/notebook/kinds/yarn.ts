import type { YarnCell } from '../document';
import { mapEntry } from '../entry';
import type { Kind } from '../kind';
import { numbered } from '../../format';
import { area, length, mass, plain } from '../../formulas';

/** What formulas call the area in one of the fabrics of a yarn. */
const areaName = (cell: YarnCell, at: number): string => numbered(`${cell.name}_area`, at);

export const yarn: Kind<YarnCell> = {
  kind: 'yarn',
  label: 'Yarn',
  about:
    'How much of one yarn is needed, from the areas of its pieces and the weighed swatches of their fabrics, with a reserve. The grams of all its fabrics are added up before balls are rounded up; they are an estimate.',
  example: '1.2 m² of a fabric whose 400 cm² weigh 52 g take 1716 g with a tenth in reserve.',
  fresh: (base) => ({
    kind: 'yarn',
    ...base,
    uses: [{ area: { value: null }, fabric: 'fabric' }],
    reserve: { value: 0.1 },
    ballGrams: { value: 50 },
    ballLength: { value: null },
  }),
  inputs: (cell) => [
    ...cell.uses.map((use, at) => ({
      key: `uses.${at}.area`,
      name: areaName(cell, at),
      label: `Area in ${use.fabric}`,
      unit: area,
      entry: use.area,
      constraint: { least: 0 },
    })),
    {
      key: 'reserve',
      name: `${cell.name}_reserve`,
      label: 'Reserve',
      unit: plain,
      written: 'percent',
      entry: cell.reserve,
      constraint: { least: 0 },
    },
    {
      key: 'ballGrams',
      name: `${cell.name}_ball_grams`,
      label: 'A ball weighs',
      unit: mass,
      entry: cell.ballGrams,
      constraint: { above: 0 },
    },
    {
      key: 'ballLength',
      name: `${cell.name}_ball_length`,
      label: 'A ball holds',
      unit: length,
      written: 'metres',
      entry: cell.ballLength,
      constraint: { above: 0 },
    },
  ],
  outputs: (cell) => {
    const grams = cell.uses.map(
      (use, at) =>
        `YARNGRAMS(${areaName(cell, at)}; ${use.fabric}_swatch_area; ${use.fabric}_swatch_grams; ${cell.name}_reserve)`,
    );
    return [
      {
        key: 'grams',
        name: cell.name,
        label: cell.label,
        unit: mass,
        formula: grams.join(' + '),
        shown: 'line',
      },
      {
        key: 'balls',
        name: `${cell.name}_balls`,
        label: 'Balls',
        unit: plain,
        formula: `BALLS(${cell.name}; ${cell.name}_ball_grams)`,
        shown: 'line',
      },
      {
        key: 'length',
        name: `${cell.name}_length`,
        label: 'Length of yarn',
        unit: length,
        written: 'metres',
        formula: `YARNMETRES(${cell.name}; ${cell.name}_ball_grams; ${cell.name}_ball_length)`,
        shown: 'line',
      },
    ];
  },
  put: (cell, key, entry) => {
    const [field, at] = key.split('.');
    if (field !== 'uses') return { ...cell, [key]: entry };
    return {
      ...cell,
      uses: cell.uses.map((use, index) => (index === Number(at) ? { ...use, area: entry } : use)),
    };
  },
  mapFormulas: (cell, change) => ({
    ...cell,
    uses: cell.uses.map((use) => ({ area: mapEntry(use.area, change), fabric: change(use.fabric) })),
    reserve: mapEntry(cell.reserve, change),
    ballGrams: mapEntry(cell.ballGrams, change),
    ballLength: mapEntry(cell.ballLength, change),
  }),
};
