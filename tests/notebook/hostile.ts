import fc from 'fast-check';
import { starters } from '../../src/starters';
import { writeFile } from '../../src/notebook';

type Tree = { [key: string]: unknown } | unknown[];

/** Values that have no business where they are put. */
const strange = fc.oneof(
  fc.jsonValue({ maxDepth: 3 }),
  fc.constantFrom<unknown>(
    null,
    true,
    -0,
    1e308,
    -1e9,
    1e-300,
    '',
    ' ',
    '__proto__',
    'constructor',
    '=1+1',
    '<img src=x onerror=alert(1)>',
    '"><script>alert(1)</script>',
    'javascript:alert(1)',
    '\u0000\u202e\ud800',
    'x'.repeat(5000),
    [],
    {},
    [[[[[[[[[[]]]]]]]]]],
    { formula: '(('.repeat(900) },
    { formula: 'SUM('.repeat(60) },
    { each: { __proto__: 1, constructor: 2 } },
    { chart: 'bust', point: 'middle' },
  ),
);

const damage = fc.record({
  // Which way down at each level, and how far.
  way: fc.array(fc.nat(1000), { minLength: 1, maxLength: 9 }),
  does: fc.constantFrom('put', 'take', 'twice', 'swap', 'rename', 'add') as fc.Arbitrary<
    'put' | 'take' | 'twice' | 'swap' | 'rename' | 'add'
  >,
  value: strange,
  key: fc.constantFrom('__proto__', 'constructor', 'toString', 'id', 'kind', 'formula', 'each', 'cells', 'x'),
});
type Damage = typeof damage extends fc.Arbitrary<infer Value> ? Value : never;

/** Sets a key of an object as JSON does: also one that means something else to the language. */
function set(tree: Tree, key: string, value: unknown): void {
  Object.defineProperty(tree, key, { value, enumerable: true, configurable: true, writable: true });
}

function damaged(root: Tree, { way, does, value, key }: Damage): void {
  let tree = root;
  let at = '';
  for (const step of way) {
    const keys = Object.keys(tree);
    if (keys.length === 0) return;
    at = keys[step % keys.length]!;
    const next = (tree as Record<string, unknown>)[at];
    if (typeof next !== 'object' || next === null || step === way.at(-1)) break;
    tree = next as Tree;
  }
  if (at === '') return;
  const there = tree as Record<string, unknown>;
  const keys = Object.keys(tree);
  switch (does) {
    case 'put':
      return set(tree, at, value);
    case 'take':
      if (Array.isArray(tree)) tree.splice(Number(at), 1);
      else delete there[at];
      return;
    case 'twice':
      if (Array.isArray(tree)) tree.push(structuredClone(tree[Number(at)]));
      else set(tree, key, structuredClone(there[at]));
      return;
    case 'swap': {
      const other = keys[(Number(way[0]) + 1) % keys.length]!;
      const mine = there[at];
      set(tree, at, there[other]);
      return set(tree, other, mine);
    }
    case 'rename':
      if (Array.isArray(tree)) return;
      set(tree, key, there[at]);
      if (key !== at) delete there[at];
      return;
    case 'add':
      if (Array.isArray(tree)) tree.push(value);
      else set(tree, key, value);
  }
}

const texts = starters.map((starter) => writeFile(starter.make()));

/** A starter's file in whose parts something was changed, taken out, doubled or exchanged. */
export const damagedFile: fc.Arbitrary<string> = fc
  .record({ text: fc.constantFrom(...texts), damages: fc.array(damage, { minLength: 1, maxLength: 6 }) })
  .map(({ text, damages }) => {
    const root = JSON.parse(text) as { notebook: Tree };
    for (const one of damages) damaged(root.notebook, one);
    return JSON.stringify(root);
  });

/** A starter's file whose letters were cut off, changed or moved. */
export const tornFile: fc.Arbitrary<string> = fc
  .record({
    text: fc.constantFrom(...texts),
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    length: fc.nat(200),
    put: fc.oneof(
      fc.string({ unit: 'binary', maxLength: 20 }),
      fc.constantFrom('', '"', '}', ']', ',', '\\'),
    ),
    cut: fc.boolean(),
  })
  .map(({ text, at, length, put, cut }) => {
    const from = Math.floor(at * text.length);
    return text.slice(0, from) + put + (cut ? '' : text.slice(from + length));
  });

/** Files that nobody should be hurt by. */
export const hostileFile = fc.oneof(
  { weight: 4, arbitrary: damagedFile },
  { weight: 1, arbitrary: tornFile },
);

const sample = (change: (file: ReturnType<typeof JSON.parse>) => void): string => {
  const file = JSON.parse(texts[1]!);
  change(file);
  return JSON.stringify(file);
};
const ids = (count: number): unknown[] =>
  Array.from({ length: count }, (_one, at) => ({
    kind: 'measure',
    id: `c${at}`,
    label: `${at}`,
    name: `c${at}`,
    unit: 'length',
    entry: { value: at },
  }));
const formulas = (formula: (at: number) => string, count: number): unknown[] =>
  Array.from({ length: count }, (_one, at) => ({
    kind: 'formula',
    id: `f${at}`,
    label: `f ${at}`,
    name: `f${at}`,
    formula: formula(at),
  }));
const markup = '<img src=x onerror="window.ran=1"><script>window.ran=1</script>';

/** Every text of a file that people read, exchanged for markup. */
function marked(tree: unknown): void {
  if (typeof tree !== 'object' || tree === null) return;
  for (const [key, value] of Object.entries(tree)) {
    if (
      ['label', 'title', 'note', 'text', 'worked', 'message'].includes(key) &&
      typeof value === 'string' &&
      value !== 'flat' &&
      value !== 'round'
    )
      (tree as Record<string, unknown>)[key] = markup;
    else marked(value);
  }
}

/** Hand-made ones: what each is, its text, and whether it may be opened. */
export const handMade: readonly (readonly [what: string, text: () => string, opens: boolean])[] = [
  ['nothing', () => '', false],
  ['a truncated file', () => texts[0]!.slice(0, 9000), false],
  ['the JSON of something else', () => '{"name":"garment","version":"2.0.1","dependencies":{}}', false],
  ['a list', () => '[1,2,3]', false],
  [
    'a file that says it is a notebook and has none',
    () => '{"format":"easewright notebook","version":1}',
    false,
  ],
  ['version 0', () => sample((file) => (file.version = 0)), false],
  ['version −1', () => sample((file) => (file.version = -1)), false],
  ['4 million levels', () => '['.repeat(4e6) + ']'.repeat(4e6), false],
  [
    'a thousand levels in a cell',
    () =>
      sample((file) => {
        let deep: unknown = 1;
        for (let level = 0; level < 1000; level++) deep = { value: deep };
        file.notebook.sections[0].cells[0].entry = deep;
      }),
    false,
  ],
  [
    'a million empty cells',
    () => sample((file) => (file.notebook.sections[0].cells = Array(1e6).fill({}))),
    false,
  ],
  ['20,000 cells', () => sample((file) => (file.notebook.sections[0].cells = ids(20_000))), false],
  [
    'a million sections',
    () => sample((file) => (file.notebook.sections = Array(1e6).fill({ id: 'a', label: 'a', cells: [] }))),
    false,
  ],
  ['a thousand sizes', () => sample((file) => (file.notebook.sizes = ids(1000))), false],
  [
    'keys that reach a prototype',
    () =>
      texts[1]!.replaceAll(
        '"label"',
        '"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},"label"',
      ),
    true,
  ],
  ['markup in every text', () => sample((file) => marked(file.notebook)), true],
  [
    'names that go in a circle',
    () =>
      sample((file) =>
        file.notebook.sections.push({
          id: 'z',
          label: 'z',
          cells: formulas((at) => `f${(at + 1) % 300}`, 300),
        }),
      ),
    true,
  ],
  [
    'formulas that never end',
    () =>
      sample((file) =>
        file.notebook.sections.push({
          id: 'z',
          label: 'z',
          cells: [
            ...formulas(
              (at) =>
                at === 0
                  ? '1'
                  : Array(90)
                      .fill(`f${at - 1}`)
                      .join('+'),
              150,
            ),
            {
              kind: 'formula',
              id: 'r',
              label: 'r',
              name: 'r',
              formula: `FACT(1e9) + ${'REPT("x";1e9) & '.repeat(20)}"x"`,
            },
          ],
        }),
      ),
    true,
  ],
  [
    'brackets in brackets',
    () =>
      sample((file) =>
        file.notebook.sections.push({
          id: 'z',
          label: 'z',
          cells: formulas(() => `${'('.repeat(950)}1`, 50),
        }),
      ),
    true,
  ],
  [
    'everything under one name',
    () =>
      sample((file) =>
        file.notebook.sections.push({
          id: 'z',
          label: 'z',
          cells: formulas(() => 'f1', 400).map((cell) => ({ ...(cell as object), name: 'same' })),
        }),
      ),
    true,
  ],
  [
    'a piece of a million rows',
    () =>
      sample((file) =>
        file.notebook.sections.push({
          id: 'z',
          label: 'z',
          cells: [
            {
              kind: 'piece',
              id: 'p',
              label: 'p',
              name: 'p',
              worked: 'flat',
              start: { value: 100 },
              ends: 'held',
              stretches: [{ kind: 'even', name: 'e', label: 'e', fabric: 'none', rows: { value: 1e9 } }],
            },
          ],
        }),
      ),
    true,
  ],
];
