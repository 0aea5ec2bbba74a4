import type { EaseCell } from '../document';
import { mapEntry } from '../entry';
import type { Kind } from '../kind';
import { length, plain } from '../../formulas';

export const ease: Kind<EaseCell> = {
  kind: 'ease',
  label: 'Ease',
  about:
    'A body measurement and the room added to it give the finished measurement. Ease is a length or a per cent, and may be negative for a fabric that stretches.',
  example: 'A bust of 94 cm and 20 cm of ease make a finished bust of 114 cm.',
  fresh: (base) => ({ kind: 'ease', ...base, by: 'length', body: { value: null }, ease: { value: 0 } }),
  inputs: (cell) => [
    {
      key: 'body',
      name: `${cell.name}_body`,
      label: 'Body',
      unit: length,
      entry: cell.body,
      constraint: { above: 0 },
    },
    {
      key: 'ease',
      name: `${cell.name}_ease`,
      label: 'Ease',
      unit: cell.by === 'length' ? length : plain,
      entry: cell.ease,
      ...(cell.by === 'percent' ? { written: 'percent' } : {}),
    },
  ],
  outputs: (cell) => [
    {
      key: 'finished',
      name: cell.name,
      label: cell.label,
      unit: length,
      formula: `${cell.by === 'length' ? 'FINISHED' : 'FINISHEDBY'}(${cell.name}_body; ${cell.name}_ease)`,
      shown: 'line',
    },
  ],
  put: (cell, key, entry) => ({ ...cell, [key]: entry }),
  mapFormulas: (cell, change) => ({
    ...cell,
    body: mapEntry(cell.body, change),
    ease: mapEntry(cell.ease, change),
  }),
};
