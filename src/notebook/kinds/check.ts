import type { CheckCell } from '../document';
import type { Kind } from '../kind';

export const check: Kind<CheckCell> = {
  kind: 'check',
  label: 'Check',
  about:
    'A condition that has to hold in every size, such as a join whose two sides have the same count. Where it does not hold, its message says so.',
  example: 'JOINS(shoulder_sts; front_end) holds where both shoulders have the same count.',
  fresh: (base) => ({ kind: 'check', ...base, condition: '', message: '' }),
  inputs: (cell) => [
    {
      key: 'holds',
      name: cell.name,
      label: cell.label,
      unit: cell.across ? 'any' : 'truth',
      entry: { formula: cell.condition },
    },
  ],
  outputs: () => [],
  put: (cell, _key, entry) => ('formula' in entry ? { ...cell, condition: entry.formula } : cell),
  mapFormulas: (cell, change) => ({ ...cell, condition: change(cell.condition) }),
};
