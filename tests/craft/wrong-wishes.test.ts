import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkSlots } from '../slots';
import { buttonholes } from '../../src/craft/buttonholes';
import { CraftError } from '../../src/craft/craft-error';
import { gather } from '../../src/craft/gather';
import { checkJoins } from '../../src/craft/joins';
import { notionsFor } from '../../src/craft/notions';
import { pickUp } from '../../src/craft/pick-up';
import { pickUpAgainstConvention } from '../../src/craft/pick-up-conventions';
import { pickUpEdge } from '../../src/craft/pick-up-edge';
import { pickUpRatio } from '../../src/craft/pick-up-ratio';
import { shapeEachRepeat } from '../../src/craft/shape-each-repeat';
import { sidewaysRib } from '../../src/craft/sideways-rib';
import { spaceEvenly } from '../../src/craft/space-evenly';
import { timeFor } from '../../src/craft/time';
import { poolYarn, yarnFor } from '../../src/craft/yarn';
import { yarnWeightsFor } from '../../src/craft/yarn-weights';
import { withoutHanging } from '../without-hanging';

/** What a number stands for, and so what it may not be. */
type Kind = 'count' | 'count or none' | 'change' | 'measure' | 'measure or none';

interface Wish {
  name: string;
  /** Numbers that can be worked, in the order of `work`'s arguments. */
  good: number[];
  kinds: Kind[];
  /** Places that have a value of their own where nothing is given. */
  optional?: number[];
  work: (...numbers: number[]) => unknown;
}

const flat = (ends: 'half' | 'whole') => (from: number, to: number) =>
  spaceEvenly({ from, to, worked: 'flat', ends });

const wishes: Wish[] = [
  { name: 'spaceEvenly, half', good: [40, 44], kinds: ['count', 'count'], work: flat('half') },
  { name: 'spaceEvenly, whole', good: [40, 36], kinds: ['count', 'count'], work: flat('whole') },
  {
    name: 'spaceEvenly, round',
    good: [40, 36],
    kinds: ['count', 'count'],
    work: (from, to) => spaceEvenly({ from, to, worked: 'round' }),
  },
  {
    name: 'shapeEachRepeat',
    good: [83, 10, -1],
    kinds: ['count', 'count', 'change'],
    work: (count, repeats, by) => shapeEachRepeat({ count, repeats, by }),
  },
  {
    name: 'gather',
    good: [100, 40, 3],
    kinds: ['count', 'count', 'count'],
    work: (from, to, rounds) => gather({ from, to, rounds }),
  },
  {
    name: 'pickUpRatio',
    good: [2.6, 2, 13],
    kinds: ['measure', 'measure', 'count'],
    optional: [2],
    work: (rowsPerCm, stitchesPerCm, most) => pickUpRatio({ rowsPerCm, stitchesPerCm, most }),
  },
  {
    name: 'pickUp',
    good: [13, 10],
    kinds: ['count', 'count'],
    work: (rows, stitches) => pickUp({ rows, stitches }),
  },
  {
    name: 'pickUpEdge, rows',
    good: [40, 3, 4, 20],
    kinds: ['count or none', 'count', 'count', 'count or none'],
    work: (rows, pick, of, count) =>
      pickUpEdge([
        { kind: 'rows', rows, pick, of },
        { kind: 'stitches', count },
        { kind: 'stitches', count: 1 },
      ]),
  },
  {
    name: 'pickUpEdge, motifs and a curve',
    good: [5, 4, 20, 1.4],
    kinds: ['count or none', 'count', 'measure or none', 'measure'],
    work: (motifs, each, length, stitchesPerCm) =>
      pickUpEdge(
        [
          { kind: 'motifs', motifs, each },
          { kind: 'curve', length, stitchesPerCm },
          { kind: 'stitches', count: 1 },
        ],
        { repeats: [{ multiple: 4, plus: 2 }], rule: 'nearest' },
      ),
  },
  {
    name: 'buttonholes',
    good: [80, 3, 5, 3],
    kinds: ['count', 'count or none', 'count', 'count'],
    work: (length, ends, count, width) => buttonholes({ length, ends, count, width }),
  },
  {
    name: 'checkJoins',
    good: [21, 21],
    kinds: ['count or none', 'count or none'],
    work: (back, front) =>
      checkJoins([
        {
          name: 'Shoulder',
          by: 'stitch',
          sides: [
            { name: 'back', count: back },
            { name: 'front', count: front },
          ],
        },
      ]),
  },
  {
    name: 'yarnFor',
    good: [7500, 100, 10, 0.1, 25, 60],
    kinds: ['measure or none', 'measure', 'measure', 'measure or none', 'measure', 'measure'],
    optional: [3],
    work: (area, swatch, grams, reserve, ball, metres) =>
      yarnFor({ area, swatch: { area: swatch, grams }, reserve, ball: { grams: ball, metres } }),
  },
  {
    name: 'poolYarn',
    good: [130, 50, 100],
    kinds: ['measure or none', 'measure', 'measure'],
    work: (grams, ball, metres) => {
      const amount = { yarn: 'blue', grams, ball: { grams: ball, metres } };
      return poolYarn([amount, { ...amount }]);
    },
  },
  {
    name: 'notionsFor',
    good: [60, 4, 2, 30, 0.05],
    // A notion of no length is a button or the like.
    kinds: ['count', 'count', 'count', 'measure or none', 'measure or none'],
    optional: [2, 4],
    work: (sites, everyNth, startAt, lengthEach, waste) =>
      notionsFor({ sites, everyNth, startAt, lengthEach, waste }),
  },
  {
    name: 'timeFor',
    good: [27000, 15],
    kinds: ['count or none', 'measure'],
    work: (stitches, perMinute) => timeFor({ stitches, perMinute }),
  },
  {
    name: 'yarnWeightsFor',
    good: [1.8],
    kinds: ['measure'],
    work: (stitchesPerCm) =>
      yarnWeightsFor({ stitchesPerCm, fabric: 'stockinette' }).map(({ number }) => number),
  },
  {
    name: 'pickUpBesideConvention',
    good: [2.6, 2],
    kinds: ['measure', 'measure'],
    work: (rowsPerCm, stitchesPerCm) =>
      pickUpAgainstConvention({ fabric: 'stockinette', rowsPerCm, stitchesPerCm }),
  },
  {
    name: 'sidewaysRib',
    good: [92, 1.5],
    kinds: ['measure', 'measure'],
    work: (length, rowsPerCm) => sidewaysRib({ length, rowsPerCm }),
  },
];

/** Numbers that are wrong for a kind whatever the rest. */
function wrongFor(kind: Kind): number[] {
  const never = [NaN, Infinity, -Infinity, 1e300, -1e300];
  const missing = [null, '12', {}] as unknown as number[];
  const broken = [0.5, 1.5, 39.999999];
  switch (kind) {
    case 'count':
      return [...never, ...missing, ...broken, 0, -1, -1e9];
    case 'count or none':
      return [...never, ...missing, ...broken, -1, -1e9];
    case 'change':
      return [...never, ...missing, ...broken];
    case 'measure':
      return [...never, ...missing, 0, -0.5, -1e9, 5e-324];
    case 'measure or none':
      return [...never, ...missing, -0.5, -1e9];
  }
}

const extremes = [
  0, 1, 2, 3, 7, 1e-9, 0.001, 0.1, 99, 1000, 999_999, 1e6, 1e7, 999_999_937, 1e9, 1e12, -1, -1e9,
];

/** Every number in a result, however deep. */
function numbersIn(result: unknown): number[] {
  if (typeof result === 'number') return [result];
  if (Array.isArray(result)) return result.flatMap(numbersIn);
  if (result !== null && typeof result === 'object') return Object.values(result).flatMap(numbersIn);
  return [];
}

function refusal(work: () => unknown): CraftError | undefined {
  try {
    work();
  } catch (error) {
    if (error instanceof CraftError) return error;
    throw error;
  }
  return undefined;
}

function expectSentence(error: CraftError): void {
  expect(error.name).toBe('CraftError');
  expect(error.code).toMatch(/^[a-z]+(-[a-z]+)*$/);
  expect(error.message).toMatch(/^["A-Z0-9].{20,}\.$/);
  expect(error.message).not.toMatch(/NaN|Infinity|undefined|null|\[object|e\+\d|[{}]/);
  checkSlots(error);
}

describe.each(wishes)('$name', ({ good, kinds, optional = [], work }) => {
  test('works with numbers that can be worked', () => {
    const numbers = numbersIn(work(...good));
    expect(numbers.every(Number.isFinite)).toBe(true);
  });

  test('refuses each number that is none, and each fraction, zero or negative where none can be, with a sentence', () => {
    kinds.forEach((kind, index) => {
      for (const wrong of wrongFor(kind)) {
        const wanted = good.with(index, wrong);
        const error = refusal(() => work(...wanted));
        if (wrong === null && optional.includes(index)) {
          expect(error).toBeUndefined();
          continue;
        }
        const given = wrong === null ? 'nothing' : String(wrong);
        expect(error, `${given} in place ${index + 1}`).toBeInstanceOf(CraftError);
        expectSentence(error!);
      }
    });
  });

  test('answers or refuses extreme numbers without hanging, never with something that is no number', () => {
    fc.assert(
      fc.property(
        fc.tuple(...good.map((usual) => fc.oneof(fc.constant(usual), fc.constantFrom(...extremes)))),
        (wanted) => {
          let result: unknown;
          const error = withoutHanging(() => refusal(() => (result = work(...wanted))), wanted.join(', '));
          if (error) expectSentence(error);
          else if (!numbersIn(result).every(Number.isFinite))
            throw new Error(`no number in the result of ${wanted}`);
        },
      ),
      { numRuns: 300 },
    );
  });
});

test('words that are no choice are refused with the choices', () => {
  const no = 'sideways' as never;
  expect(() => spaceEvenly({ from: 40, to: 36, worked: no })).toThrow('"flat" or "round"; it is "sideways"');
  expect(() => spaceEvenly({ from: 40, to: 36, worked: 'flat', ends: no })).toThrow('"half" or "whole"');
  expect(() => pickUpEdge([{ kind: no } as never])).toThrow('The kind of stretch 1 has to be "rows" or');
  expect(() => pickUpEdge(undefined as never)).toThrow('have to be a list');
  expect(() => yarnWeightsFor({ stitchesPerCm: 2, fabric: no })).toThrow('"stockinette" or "singleCrochet"');
  expect(() => pickUpAgainstConvention({ fabric: no, rowsPerCm: 2, stitchesPerCm: 2 })).toThrow('"garter"');
  expect(() => checkJoins([{ name: 'Hem', by: no, sides: [] }])).toThrow('"stitch" or "row"');
  expect(() => sidewaysRib({ length: 20, rowsPerCm: 2, rule: no })).toThrow('"nearest" or "up" or "down"');
});
