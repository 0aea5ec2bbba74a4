import type { RepeatEntry, RepeatFit } from '../document';
import { mapEntry } from '../entry';
import type { Input, Kind, Output } from '../kind';
import { plain, rows, stitches } from '../../formulas';

/** The inputs of a repeat: `back_multiple`, and `back_multiple_2` for the second of several. */
export function repeatInputs(name: string, repeat: RepeatEntry, number: number): Input[] {
  const nth = number === 1 ? '' : `_${number}`;
  const key = number === 1 ? '' : `more.${number - 2}.`;
  return [
    {
      key: `${key}multiple`,
      name: `${name}_multiple${nth}`,
      label: 'Multiple of',
      unit: plain,
      entry: repeat.multiple,
      constraint: { whole: true, least: 1 },
    },
    {
      key: `${key}plus`,
      name: `${name}_plus${nth}`,
      label: 'plus',
      unit: plain,
      entry: repeat.plus,
      constraint: { whole: true },
    },
  ];
}

/** The formula of the count: the plainest function that says what is asked. */
function countFormula(cell: RepeatFit): string {
  const own = (part: string): string => `${cell.name}_${part}`;
  const first = `${own('multiple')}; ${own('plus')}`;
  if (cell.chain) return `FITCHAIN(${own('wanted')}; ${first}; "${cell.rule}"; ${chainArguments(cell)})`;
  if (!cell.more?.length && !cell.parity) return `FITREPEAT(${own('wanted')}; ${first}; "${cell.rule}")`;
  const repeats = [
    first,
    ...(cell.more ?? []).map((_repeat, at) => `${own(`multiple_${at + 2}`)}; ${own(`plus_${at + 2}`)}`),
  ];
  return `FITREPEATS(${own('wanted')}; "${cell.rule}"; "${cell.parity ?? 'any'}"; ${repeats.join('; ')})`;
}

function chainArguments(cell: RepeatFit): string {
  return `${cell.name}_turning; "${cell.chain?.counts ? 'counts' : 'does not count'}"`;
}

const mapRepeat = (repeat: RepeatEntry, change: (formula: string) => string): RepeatEntry => ({
  multiple: mapEntry(repeat.multiple, change),
  plus: mapEntry(repeat.plus, change),
});

export const fit: Kind<RepeatFit> = {
  kind: 'fit',
  label: 'Repeat fit',
  about:
    'The count nearest to a wanted one that a repeat allows: a multiple of so many, plus the edge. It also tells how far the count is from what was wanted.',
  example: '79.8 stitches wanted, a multiple of 8 plus 3: 83 is the nearest.',
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
      constraint: { above: 0 },
    },
    ...repeatInputs(cell.name, cell, 1),
    ...(cell.more ?? []).flatMap((repeat, at) => repeatInputs(cell.name, repeat, at + 2)),
    ...(cell.chain
      ? [
          {
            key: 'chain.turning',
            name: `${cell.name}_turning`,
            label: 'Turning chain',
            unit: stitches,
            entry: cell.chain.turning,
            constraint: { whole: true as const, least: 0 },
          },
        ]
      : []),
  ],
  outputs: (cell) => {
    const unit = cell.counts === 'stitches' ? stitches : rows;
    const made: Output[] = [
      { key: 'count', name: cell.name, label: cell.label, unit, formula: countFormula(cell), shown: 'line' },
    ];
    if (cell.chain) {
      made.push({
        key: 'chain',
        name: `${cell.name}_chain`,
        label: 'Foundation chain',
        unit: stitches,
        formula: `FOUNDATIONCHAIN(${cell.name}; ${chainArguments(cell)})`,
        shown: 'line',
      });
    }
    made.push({
      key: 'off',
      name: `${cell.name}_off`,
      label: 'Off by',
      unit,
      formula: `${cell.name} - ${cell.name}_wanted`,
      shown: 'detail',
    });
    return made;
  },
  put: (cell, key, entry) => {
    const [first, second, third] = key.split('.') as [string, string | undefined, string | undefined];
    if (first === 'chain' && cell.chain) return { ...cell, chain: { ...cell.chain, turning: entry } };
    if (first === 'more' && cell.more) {
      return {
        ...cell,
        more: cell.more.map((old, at) => (at === Number(second) ? { ...old, [third!]: entry } : old)),
      };
    }
    return { ...cell, [first]: entry };
  },
  mapFormulas: (cell, change) => ({
    ...cell,
    ...mapRepeat(cell, change),
    target: mapEntry(cell.target, change),
    ...(cell.more ? { more: cell.more.map((repeat) => mapRepeat(repeat, change)) } : {}),
    ...(cell.chain ? { chain: { ...cell.chain, turning: mapEntry(cell.chain.turning, change) } } : {}),
  }),
};
