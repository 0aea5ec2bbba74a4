import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as craft from '../../src/craft';
import { CraftError } from '../../src/craft';
import { checkSlots } from '../slots';
import { withoutHanging } from '../without-hanging';

/** A call that works, to be spoilt one or two numbers at a time. */
interface Call {
  name: string;
  args: unknown[];
}

const fabric = { stitches: 1.4, rows: 1.6, heights: [0.5, 0.7] };
const gauge = { perCm: 1.4, u: 0.03, dof: 4 };
const repeats = [
  { multiple: 8, plus: 3 },
  { multiple: 6, plus: 1 },
];
const plan = { to: 20, over: 30, perRow: 2, every: 2, before: 2, after: 3 };
const piece = (...stretches: object[]): Call => ({
  name: 'workPiece',
  args: [
    {
      name: 'Piece',
      worked: 'flat',
      start: 30,
      stretches: [...stretches, { kind: 'even', rows: 1 }].map((of) => ({ ...of, fabric })),
    },
  ],
});

const calls: Call[] = [
  {
    name: 'gaugeOf',
    args: [
      [
        { count: 14, over: 10 },
        { count: 15, over: 10 },
      ],
    ],
  },
  { name: 'guessGauge', args: [{ perCm: 1.4, hook: 6, other: 7 }] },
  { name: 'measureWhileWorking', args: [{ length: 40, asWorked: 1.2, blocked: 1.3 }] },
  { name: 'hangingGrowth', args: [{ length: 60, strain: 0.02, mass: 0.05 }] },
  { name: 'lengthToWork', args: [{ length: 60, strain: 0.02, mass: 0.05 }] },
  { name: 'strainOf', args: [{ length: 10, stretched: 11, width: 10, grams: 50 }] },
  { name: 'passes', args: [{ count: 60, stitchesPerCm: 1.5, stretch: 1.4, body: 57 }] },
  { name: 'stretchOf', args: [{ relaxed: 10, stretched: 14 }] },
  { name: 'finished', args: [90, { length: 5 }] },
  { name: 'finished', args: [90, { percent: 5 }] },
  { name: 'fitName', args: [90, { length: 5 }] },
  { name: 'fitName', args: [90, { percent: 5 }] },
  { name: 'dropSleeveLength', args: [{ neckToWrist: 75, bodyWidth: 60 }] },
  { name: 'armholeDepthFor', args: [{ chartDepth: 20, upperArm: 30, ease: 5 }] },
  { name: 'frontWidth', args: [{ bust: 104, back: 52, band: 3, closes: 'edge to edge' }] },
  { name: 'neckWidth', args: [{ neck: 24, band: 2 }] },
  { name: 'seamedWidth', args: [{ stitches: [75, 75], seams: 2, taken: 1, stitchesPerCm: 1.4 }] },
  { name: 'seamAllowance', args: [{ seams: 2, taken: 1, stitchesPerCm: 1.4 }] },
  { name: 'fitCount', args: [77.2, repeats, 'nearest'] },
  { name: 'fitCount', args: [77.2, repeats, 'down', 'odd'] },
  {
    name: 'fitTogether',
    args: [
      {
        target: 160,
        fixed: 11.2,
        halves: [
          { times: 1, multiple: 8, plus: 3, extra: 4 },
          { times: 2, multiple: 6, plus: 1 },
        ],
      },
    ],
  },
  {
    name: 'fitMotifs',
    args: [{ target: 80, motif: 10, gap: { least: 2, most: 4 }, edge: 1, worked: 'flat' }],
  },
  {
    name: 'fitMotifs',
    args: [{ target: 80, motif: 10, gap: { least: 2, most: 4 }, edge: 1, worked: 'round' }],
  },
  { name: 'narrowMotifs', args: [{ motifs: 6, motif: 10, gap: 4, least: 2, edge: 1, worked: 'flat' }] },
  { name: 'foundationChain', args: [{ stitches: 75, turning: 3, counts: true }] },
  { name: 'taper', args: [{ from: 30, ...plan }] },
  { name: 'taper', args: [{ from: 30, ...plan, order: 'spread', startsOn: 'WS' }] },
  { name: 'joinArmhole', args: [{ sideRows: 30, pick: 3, of: 4, underarm: 8, seam: 2 }] },
  { name: 'armholeFit', args: [{ count: 56, stitchesPerCm: 1.4, armhole: 36, within: 0.08 }] },
  piece({ kind: 'even', rows: 4 }),
  piece({ kind: 'taper', ...plan }),
  piece({ kind: 'evenly', to: 24 }),
  piece({ kind: 'eachRepeat', repeats: 5, by: -1 }),
  piece({ kind: 'gather', to: 12, rounds: 3 }),
  piece({ kind: 'leave', atStart: 2, atEnd: 3 }),
  piece({ kind: 'add', atStart: 2, atEnd: 3 }),
  piece({ kind: 'rows', counts: [29, 28] }),
  {
    name: 'edgeOf',
    args: [[{ stretch: 0, height: 1, edges: { left: -1 }, fabric: { stitches: 1.4 } }], 'left', 0, 0],
  },
  { name: 'lengthOf', args: [[{ height: 1 }, { height: 2 }]] },
  { name: 'areaOf', args: [[{ height: 1, width: 20 }]] },
  { name: 'stitchesIn', args: [[{ count: 28 }]] },
  { name: 'widthAt', args: [[{ height: 1, width: 20 }], 0.5] },
  { name: 'widthUncertainty', args: [{ count: 146, gauge, uTape: 0.2 }] },
  { name: 'countUncertainty', args: [{ width: 52, uWidth: 0.5, gauge }] },
  {
    name: 'combineUncertainty',
    args: [
      [
        { u: 3, dof: 4 },
        { u: 4, dof: 2 },
      ],
    ],
  },
  { name: 'neighbourChance', args: [{ target: 72, u: 2, dof: 3, repeats: [repeats[0]], rule: 'nearest' }] },
  { name: 't95', args: [4] },
  { name: 'chanceWithin', args: [2, 4] },
  { name: 'chanceAbove', args: [2, 4] },
];

const nasty = [
  NaN,
  Infinity,
  -Infinity,
  0,
  -0,
  -1,
  -7,
  0.5,
  2.5,
  1e-9,
  1e-300,
  -1e-300,
  1e6,
  1e9,
  1e9 + 0.5,
  -1e9,
  1e15,
  2 ** 53,
  1e300,
];

type Path = (string | number)[];

function numbersIn(value: unknown, path: Path = []): Path[] {
  if (typeof value === 'number') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, [...path, key]));
}

function spoilt(args: unknown[], changes: [Path, unknown][]): unknown[] {
  const copy = structuredClone(args);
  for (const [path, to] of changes) {
    let at = copy as unknown as Record<string, unknown>;
    for (const key of path.slice(0, -1)) at = at[key] as Record<string, unknown>;
    at[path.at(-1) as string] = to;
  }
  return copy;
}

/** Answers with numbers, or refuses with a sentence; without hanging. */
function answersOrRefuses({ name }: Call, args: unknown[]) {
  const shown = `${name}(${JSON.stringify(args, (_, x) => (typeof x === 'number' && !Number.isFinite(x) ? String(x) : x))})`;
  const work = craft[name as keyof typeof craft] as (...args: unknown[]) => unknown;
  try {
    const answer = withoutHanging(() => work(...args), shown);
    const wrong = wrongNumber(answer, '');
    expect(wrong, shown).toBe(null);
  } catch (error) {
    if (!(error instanceof CraftError)) throw new Error(`${shown} is refused by accident`, { cause: error });
    expect(error.message, shown).toMatch(/^[A-Z0-9].{19,}\.$/s);
    expect(error.message, shown).not.toMatch(/NaN|Infinity|undefined|null|\[object|e-\d\d\d/);
    expect(error.message, shown).not.toMatch(/[{}]/);
    expect(error.code, shown).toMatch(/^[a-z-]+$/);
    checkSlots(error);
  }
}

/** The first number of an answer that is none, or a count that is not whole; null where all are well. */
function wrongNumber(value: unknown, key: string): string | null {
  if (typeof value === 'number') {
    if (key === 'dof' && value >= 1) return null;
    if (!Number.isFinite(value)) return `${key} is ${value}`;
    const counts = [
      'count',
      'below',
      'above',
      'number',
      'change',
      'motifs',
      'gap',
      'taken',
      'least',
      'shapingRows',
      'counts',
    ];
    return counts.includes(key) && !Number.isSafeInteger(value) ? `${key} is ${value}` : null;
  }
  if (typeof value !== 'object' || value === null) return null;
  // A fabric is what was asked, not an answer; of very many rows the ends will do.
  const inner = Array.isArray(value)
    ? [...value.slice(0, 50), ...value.slice(-50)].map((of) => [key, of] as const)
    : Object.entries(value);
  for (const [name, of] of inner) {
    const wrong = name === 'fabric' ? null : wrongNumber(of, name);
    if (wrong !== null) return wrong;
  }
  return null;
}

describe.each(calls)('$name', (call) => {
  const paths = numbersIn(call.args);

  test('works as it stands', () => {
    const work = craft[call.name as keyof typeof craft] as (...args: unknown[]) => unknown;
    expect(() => work(...call.args)).not.toThrow();
    expect(paths.length).toBeGreaterThan(0);
  });

  test('answers or refuses with a sentence whatever one number is', () => {
    for (const path of paths) {
      for (const bad of [...nasty, undefined, null, 'five'])
        answersOrRefuses(call, spoilt(call.args, [[path, bad]]));
    }
  });

  test('and whatever several numbers are', () => {
    const change = fc.tuple(
      fc.constantFrom(...paths),
      fc.oneof(fc.constantFrom(...nasty), fc.integer({ min: -3, max: 40 })),
    );
    fc.assert(
      fc.property(fc.array(change, { minLength: 2, maxLength: 4 }), (changes) => {
        answersOrRefuses(call, spoilt(call.args, changes));
      }),
      { numRuns: 200 },
    );
  });

  test('a number that is none is never answered', () => {
    const work = craft[call.name as keyof typeof craft] as (...args: unknown[]) => unknown;
    for (const path of paths)
      expect(() => work(...spoilt(call.args, [[path, NaN]])), path.join('.')).toThrow(CraftError);
  });
});

test('charts refuse what they do not have', () => {
  for (const bad of ['', 'XXS', '__proto__', 'toString', undefined, null, 5]) {
    expect(() => craft.chartRange(bad as never, 'M', 'bust')).toThrow(CraftError);
    expect(() => craft.chartRange('woman', bad as never, 'bust')).toThrow(CraftError);
    expect(() => craft.chartRange('woman', 'M', bad as never)).toThrow(CraftError);
  }
});
