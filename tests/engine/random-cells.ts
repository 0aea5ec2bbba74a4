import fc from 'fast-check';
import type { Cell, Entry, Size } from '../../src/notebook/document';

/*
 * Notebooks as no one would write them: few names and ids, so that they clash, circles, units that do not fit,
 * formulas that cannot be read.
 */

const names = ['bust', 'back', 'back_sts', 'body', 'sleeve', 'x', 'y', 'z'];
export const sizeIds = ['s', 'm', 'l'];

export const formulas = fc.oneof(
  fc.constantFrom(
    'bust + 10',
    'bust + CM(10)',
    'x',
    'y + x',
    'z * 2',
    'x / (y - y)',
    'bust * body_sts',
    'FITREPEAT(bust * body_sts; 8; 3)',
    'ROUNDCOUNT(bust * body_rows; "even")',
    'bst * 2',
    'bust +',
    '',
    '9 ^ 999',
    'x + 9 ^ 999',
    'IF(x > y; x; z)',
    'IF(bust > CM(90); STS(4); STS(2))',
    'PIECELENGTH(back)',
    'PIECEROWS(sleeve)',
    'back_length + CM(1)',
    'sleeve_end',
    'body',
    'body_sts',
    '"text"',
    'TRUE()',
    'x & y',
    'SQRT(x)',
    'INT(x * 1.4)',
    'MOD(x; y)',
    'bust > x',
    '7',
    '0',
    '12.5',
    'EVENROWS(ROWS(10); body)',
    'PIECE("flat"; STS(20); "held"; EVENROWS(ROWS(10); body))',
  ),
  fc
    .tuple(fc.constantFrom(...names), fc.constantFrom(...'+-*/'), fc.constantFrom(...names))
    .map((parts) => parts.join(' ')),
);

export const numbers = fc.oneof(fc.constantFrom(0, -1, 1, 2, 2.5, 8, 14, 60, 90.5, 1e9), fc.constant(null));
export const entries: fc.Arbitrary<Entry> = fc.oneof(
  fc.record({ value: numbers }),
  fc.record({ each: fc.dictionary(fc.constantFrom(...sizeIds), numbers) }),
  fc.record({ formula: formulas }),
  fc.record({
    chart: fc.constantFrom('bust', 'upperArm'),
    point: fc.constantFrom('lower', 'upper'),
  }) as fc.Arbitrary<Entry>,
  fc.record({
    chart: fc.constant('bust'),
    point: fc.constant('middle'),
    own: fc.dictionary(fc.constantFrom(...sizeIds), fc.constantFrom(88, 91.2)),
  }) as fc.Arbitrary<Entry>,
);

export const base = {
  id: fc.constantFrom(...'abcdefgh'),
  name: fc.constantFrom(...names),
  label: fc.constantFrom('Bust', 'Back', 'X'),
};
const reading = fc.record({ count: entries, over: entries });
const readings = fc.array(reading, { minLength: 1, maxLength: 2 });
const stretchBase = {
  name: fc.constantFrom('rib', 'upper'),
  label: fc.constant('Rib'),
  fabric: fc.constantFrom('body', 'x'),
};
export const cells = fc.oneof(
  fc.record({
    kind: fc.constant('measure'),
    ...base,
    unit: fc.constantFrom('length', 'stitches', 'number'),
    entry: entries,
  }),
  fc.record({ kind: fc.constant('formula'), ...base, formula: formulas }),
  fc.record({ kind: fc.constant('formula'), ...base, formula: formulas }),
  fc.record({
    kind: fc.constant('ease'),
    ...base,
    by: fc.constantFrom('length', 'percent'),
    body: entries,
    ease: entries,
  }),
  fc.record({
    kind: fc.constant('swatch'),
    ...base,
    worked: fc.constant(''),
    stitches: readings,
    rows: readings,
  }),
  fc.record({
    kind: fc.constant('fit'),
    ...base,
    counts: fc.constantFrom('stitches', 'rows'),
    target: entries,
    multiple: entries,
    plus: entries,
    rule: fc.constantFrom('nearest', 'up', 'down'),
  }),
  fc.record(
    {
      kind: fc.constant('piece'),
      ...base,
      worked: fc.constantFrom('flat', 'round'),
      start: entries,
      ends: fc.constant('held'),
      stretches: fc.array(fc.record({ kind: fc.constant('even'), ...stretchBase, rows: entries }), {
        maxLength: 2,
      }),
      taken: fc.dictionary(fc.constantFrom('length', 'rows'), formulas),
    },
    { requiredKeys: ['kind', 'id', 'name', 'label', 'worked', 'start', 'ends', 'stretches'] },
  ),
  fc.record({ kind: fc.constant('note'), ...base, text: fc.constant('') }),
) as fc.Arbitrary<Cell>;

export const sizes: fc.Arbitrary<Size[]> = fc.uniqueArray(
  fc.record(
    {
      id: fc.constantFrom(...sizeIds),
      label: fc.constant('S'),
      chart: fc.record({ name: fc.constant('woman' as const), size: fc.constantFrom('S', 'M', 'nowhere') }),
    },
    { requiredKeys: ['id', 'label'] },
  ),
  { selector: ({ id }) => id, minLength: 0, maxLength: 3 },
);
