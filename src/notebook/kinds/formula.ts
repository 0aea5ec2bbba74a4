import type { FormulaCell } from '../document';
import type { Kind } from '../kind';

export const formula: Kind<FormulaCell> = {
  kind: 'formula',
  label: 'Formula',
  about:
    'A result worked from other cells by their names. Its unit follows from what stands in it, and what cannot be added is said.',
  example: 'finished_bust ÷ 2 × body_sts: 114 cm ÷ 2 × 1.4 sts/cm are 79.8 stitches.',
  fresh: (base) => ({ kind: 'formula', ...base, formula: '' }),
  inputs: (cell) => [
    { key: 'value', name: cell.name, label: cell.label, unit: 'any', entry: { formula: cell.formula } },
  ],
  outputs: () => [],
  put: (cell, _key, entry) => ('formula' in entry ? { ...cell, formula: entry.formula } : cell),
  mapFormulas: (cell, change) => ({ ...cell, formula: change(cell.formula) }),
};
