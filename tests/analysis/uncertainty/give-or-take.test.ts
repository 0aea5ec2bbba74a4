import { beforeAll, describe, expect, it, test } from 'vitest';
import { gaugeOf, t95, widthUncertainty } from '../../../src/craft';
import { allCells, inputsOf, outputsOf, type Notebook, type Swatch } from '../../../src/notebook';
import { allDecisions } from '../../../src/analysis/uncertainty/decisions';
import { giveOrTake, type Uncertainty } from '../../../src/analysis/uncertainty/give-or-take';
import { nextCountChance, nextRoundedChance, roundedIn } from '../../../src/analysis/uncertainty/next-count';
import { sourcesOf, tapeUncertainty, type Source } from '../../../src/analysis/uncertainty/sources';
import type { Works } from '../../../src/analysis/uncertainty/works';
import { worksByTrials } from '../../../src/analysis/uncertainty/works-by-trials';
import { trialsOf } from '../../../src/engine/trials-in-turn';
import { fit, formula, measure, notebookOf, swatch } from '../../engine/notebook-of';
import { edited } from '../../notebook/edited';
import { vNeck } from '../../notebooks/v-neck';

const refTo = (cell: string, key: string, isLength = true) => ({ cell, key, isLength });

async function uncertaintyOf(
  notebook: Notebook,
  wanted: ReturnType<typeof refTo>[],
  sizes = notebook.sizes.map(({ id }) => id),
): Promise<(Uncertainty | undefined)[][]> {
  return giveOrTake({ notebook, sizes, wanted, works: worksByTrials(await trialsOf(notebook), sizes) });
}

async function uncertaintiesOf(
  notebook: Notebook,
  cell: string,
  key: string,
  isLength = true,
): Promise<Uncertainty> {
  const [[uncertainty]] = (await uncertaintyOf(notebook, [refTo(cell, key, isLength)])) as [[Uncertainty]];
  return uncertainty;
}

const noTape = (notebook: Notebook): Notebook => edited(notebook, { do: 'set', settings: { tapeWithin: 0 } });

describe('a width that a count gives', () => {
  const stitches = (count: number): Notebook =>
    notebookOf([
      swatch('body', 14, 12),
      measure('around', 'stitches', count),
      formula('width', 'around / body_sts'),
    ]);

  test('146 stitches at 14 to 10 cm are 104.3 ± 4.3 cm, the tape counted in', async () => {
    const uncertainty = await uncertaintiesOf(stitches(146), 'width', 'value');
    expect(uncertainty.value).toBeCloseTo(104.2857, 4);
    expect(uncertainty.expanded.toFixed(1)).toBe('4.3');
    const known = widthUncertainty({
      count: 146,
      gauge: gaugeOf([{ count: 14, over: 10 }]),
      uTape: 0.5 / Math.sqrt(3),
    });
    expect(uncertainty.u).toBeCloseTo(known.u, 7);
    expect(uncertainty.expanded).toBeCloseTo(known.expanded, 7);
    expect(uncertainty.shares.map(({ label }) => label)).toEqual([
      'body, stitch gauge',
      'The tape, on the finished piece',
    ]);
    expect(uncertainty.shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  test('without a tape’s doubt it is 4.2, and twice as long a reading halves it', async () => {
    const uncertainty = await uncertaintiesOf(noTape(stitches(146)), 'width', 'value');
    expect(uncertainty.expanded.toFixed(1)).toBe('4.2');
    expect(uncertainty.halving).toMatchObject({
      by: 'length',
      count: expect.closeTo(28, 4),
      over: expect.closeTo(20, 4),
    });
  });

  test('a swatch read so much longer does halve it', async () => {
    const before = stitches(146);
    const uncertainty = await uncertaintiesOf(before, 'width', 'value');
    if (uncertainty.halving?.by !== 'length') throw new Error('one reading is to be longer');
    const { count, over } = uncertainty.halving;
    const body = allCells(before).find(({ id }) => id === 'body') as Swatch;
    const cell = { ...body, stitches: [{ count: { value: count }, over: { value: over } }] };
    const longer = await uncertaintiesOf(edited(before, { do: 'change', cell }), 'width', 'value');
    expect(longer.expanded).toBeCloseTo(uncertainty.expanded / 2, 5);
  });

  test('two readings that scatter are expanded by 12.7; a third is what it needs', async () => {
    const before = noTape(stitches(146));
    const body = allCells(before).find(({ id }) => id === 'body') as Swatch;
    const over = { value: 10 };
    const readings = [14, 15].map((count) => ({ count: { value: count }, over }));
    const uncertainty = await uncertaintiesOf(
      edited(before, { do: 'change', cell: { ...body, stitches: readings } }),
      'width',
      'value',
    );
    expect(uncertainty.dof).toBe(1);
    expect(uncertainty.expanded / uncertainty.u).toBeCloseTo(t95(1), 8);
    expect(uncertainty.halving).toMatchObject({ by: 'readings', readings: 3 });
  });
});

describe('one gauge is one variable, however many lengths it feeds', () => {
  test('back and both fronts from one swatch are as unsure as all their stitches together', async () => {
    const notebook = noTape(
      notebookOf([
        swatch('body', 14, 12),
        formula('back', 'STS(75) / body_sts'),
        formula('front', 'STS(35) / body_sts'),
        formula('around', 'back + 2 * front'),
        formula('flat', 'back - 75 / 35 * front'),
      ]),
    );
    const all = widthUncertainty({ count: 145, gauge: gaugeOf([{ count: 14, over: 10 }]) });
    expect((await uncertaintiesOf(notebook, 'around', 'value')).u).toBeCloseTo(all.u, 6);
    // What cancels leaves nothing in doubt.
    expect((await uncertaintiesOf(notebook, 'flat', 'value')).u).toBeLessThan(1e-6);
  });

  test('stitch and row gauge of one swatch, and the gauges of two, are independent', async () => {
    const notebook = noTape(
      notebookOf([
        swatch('body', 14, 12),
        swatch('rib', 17, 13),
        formula('sum', 'STS(140) / body_sts + ROWS(120) / body_rows + STS(34) / rib_sts'),
      ]),
    );
    const u = (count: number, read: number) => ((count / (read / 10) ** 2) * 0.5) / Math.sqrt(3) / 10;
    const uncertainty = await uncertaintiesOf(notebook, 'sum', 'value');
    expect(uncertainty.u).toBeCloseTo(Math.hypot(u(140, 14), u(120, 12), u(34, 17)), 6);
    expect(uncertainty.shares).toHaveLength(3);
  });
});

describe('a decision is held', () => {
  const fitted = (): Notebook =>
    notebookOf([
      swatch('body', 14, 12),
      measure('bust', 'length', 94),
      fit('back', 'bust / 2 * body_sts'),
      formula('width', 'back / body_sts'),
    ]);

  test('a fitted count has no give or take, its width that of the gauge, and what was wanted both', async () => {
    const notebook = noTape(fitted());
    const [[count], [width], [wanted]] = (await uncertaintyOf(notebook, [
      refTo('back', 'count', false),
      refTo('width', 'value'),
      refTo('back', 'target', false),
    ])) as [[Uncertainty], [Uncertainty], [Uncertainty]];
    expect(count).toMatchObject({ value: 67, u: 0, decided: true, shares: [] });
    expect(width.u).toBeCloseTo((67 * 0.0288675) / 1.96, 4);
    expect(wanted.u).toBeCloseTo(47 * 0.0288675, 4);
  });

  test('of a count with a tape that may be wrong, the measured length has its part in what was wanted', async () => {
    const wanted = await uncertaintiesOf(fitted(), 'back', 'target', false);
    const byGauge = 47 * 0.0288675;
    const byTape = 0.7 * (0.5 / Math.sqrt(3));
    expect(wanted.u).toBeCloseTo(Math.hypot(byGauge, byTape), 4);
  });

  test('a count right on the edge between two repeats is held all the same', async () => {
    // 101.428… cm ask for 71 stitches, halfway between 67 and 75.
    const edge = noTape(
      edited(fitted(), { do: 'enter', cell: 'bust', key: 'value', entry: { value: 71 / 0.7 } }),
    );
    const width = await uncertaintiesOf(edge, 'width', 'value');
    expect(width.u).toBeCloseTo((75 * 0.0288675) / 1.96, 4);
  });

  test('beside a count stands the chance that the true gauge would have chosen another', async () => {
    const notebook = noTape(fitted());
    const wanted = await uncertaintiesOf(notebook, 'back', 'target', false);
    const cell = allCells(notebook).find(({ id }) => id === 'back')!;
    const numbers: Record<string, number> = { multiple: 8, plus: 3 };
    const found = nextCountChance(cell, wanted, ({ key }) => numbers[key]);
    // 65.8 wanted, u = 1.357: 63 is 2.06 u below, 71 is 3.83 above. The normal table gives 0.0195 beyond 2.064.
    expect(found!.lower).toBeCloseTo(0.0195, 3);
    expect(found!.higher).toBeLessThan(0.0002);
  });
});

test('beside a count that was rounded stands the chance that the true gauge would have rounded to another', async () => {
  const notebook = noTape(
    notebookOf([
      swatch('body', 14, 12),
      measure('cuff', 'length', 22),
      formula('wrist', 'ROUNDCOUNT(cuff * body_sts; "even")'),
    ]),
  );
  const rounded = roundedIn(allCells(notebook).find(({ id }) => id === 'wrist')!)!;
  const [[before]] = (await giveOrTake({
    notebook,
    sizes: ['m'],
    wanted: [refTo('wrist', 'value', false)],
    works: worksByTrials(await trialsOf(notebook), ['m']),
    instead: rounded.instead,
  })) as [[Uncertainty]];
  // 30.8 stitches, rounded to 30 as the nearest even count: up to 31 it stays 30.
  expect(before).toMatchObject({ value: expect.closeTo(30.8, 9), decided: false });
  expect(before.u).toBeCloseTo(22 * 0.0288675, 5);
  // 0.2 above is 0.315 u, and 1.8 below is 2.83 u: the normal table gives 0.376 and 0.002 beyond them.
  const chance = nextRoundedChance(rounded, before)!;
  expect(chance.higher).toBeCloseTo(0.376, 2);
  expect(chance.lower).toBeCloseTo(0.002, 3);
});

test('a result that nothing measured leads to is as sure as what was typed; one that cannot be worked has none', async () => {
  const notebook = notebookOf([formula('sure', 'CM(4) + CM(5)'), formula('none', 'CM(4) / 0')]);
  expect(await uncertaintiesOf(notebook, 'sure', 'value')).toMatchObject({ value: 9, u: 0, shares: [] });
  expect(await uncertaintiesOf(notebook, 'none', 'value')).toBeUndefined();
});

/** A generator whose seed is fixed: mulberry32. */
function random(seed: number): () => number {
  return () => {
    seed = (seed + 0x6d2b79f5) | 0;
    let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

describe('against 8,000 draws of the V-neck in size M, counts held', () => {
  const draws = 8_000;
  const results: [string, string, string][] = [
    ['the bust as worked', 'bust-as-worked', 'value'],
    ['the finished bust that is wanted', 'finished-bust', 'finished'],
    ['the width of the back', 'back', 'start_width'],
    ['the length of the back', 'back', 'length'],
    ['the width of a front before its count is fitted', 'front-width', 'value'],
    ['the back stitches that are wanted', 'back-sts', 'target'],
    ['the length of the body', 'body-length', 'value'],
    ['the length of a front', 'front', 'length'],
    ['the area of a front', 'front', 'area'],
    ['the band before it is fitted', 'band', 'unfitted'],
    ['the yarn', 'yarn', 'grams'],
  ];
  const lengths = new Set(['bust-as-worked', 'back', 'front-width', 'body-length', 'finished-bust']);
  let found: Uncertainty[];
  let spread: number[];

  beforeAll(async () => {
    const notebook = vNeck();
    const sizes = ['m'];
    const wanted = results.map(([, cell, key]) => refTo(cell, key, lengths.has(cell) || key === 'length'));
    const trials = await trialsOf(notebook);
    const works = worksByTrials(trials, sizes);
    found = (await giveOrTake({ notebook, sizes, wanted, works })).map(([uncertainty]) => uncertainty!);

    const draw = random(20_261_125);
    const sources = sourcesOf(notebook);
    const decided = allDecisions(notebook);
    const requested = [...decided, ...sources.map((source) => source.ref)];
    const [asIs] = await works({ quarantined: [], tries: [null], wanted: requested });
    const held = decided.map(({ cell, key }, at) => ({ cell, key, size: 'm', value: asIs![at]![0]! }));
    const uOf = (source: Source, at: number): number => {
      if (source.inChart?.m) return source.inChart.m.u;
      if (source.u !== undefined) return source.u;
      // Every swatch of the V-neck is one reading over 10 cm.
      expect(asIs![decided.length + at]![0]).toBeGreaterThan(0);
      return 0.5 / Math.sqrt(3) / 10;
    };
    const sums = results.map(() => ({ sum: 0, squares: 0 }));
    for (let done = 0; done < draws; done += 1000) {
      const batch = Array.from({ length: 1000 }, () => [
        ...held,
        ...sources.map((source, at) => ({
          ...source.ref,
          size: 'm',
          // Any value within its limits is as likely.
          value: asIs![decided.length + at]![0]! + (2 * draw() - 1) * Math.sqrt(3) * uOf(source, at),
        })),
      ]);
      const { numbers } = await trials({ trials: batch, wanted, sizes });
      batch.forEach((_changes, trial) => {
        wanted.forEach(({ isLength }, at) => {
          const gauge = found[at]!.shares.some(({ source }) => source?.kind === 'gauge');
          const tape =
            isLength && gauge ? (2 * draw() - 1) * Math.sqrt(3) * tapeUncertainty(notebook.settings) : 0;
          const off = numbers[trial * wanted.length + at]! + tape - found[at]!.value;
          sums[at]!.sum += off;
          sums[at]!.squares += off * off;
        });
      });
    }
    spread = sums.map(({ sum, squares }) => Math.sqrt((squares - (sum * sum) / draws) / (draws - 1)));
  });

  it.each(results.map(([name], at) => [name, at] as const))(
    '%s: u within 2 % of their standard deviation',
    (_name, at) => {
      expect(found[at]!.u).toBeGreaterThan(0);
      expect(Math.abs(found[at]!.u / spread[at]! - 1)).toBeLessThan(0.02);
    },
  );
});

it('gives every number of the V-neck an uncertainty, in every size, at no more tries than twice its sources', async () => {
  const notebook = vNeck();
  const sizes = notebook.sizes.map(({ id }) => id);
  const wanted = allCells(notebook).flatMap((cell) =>
    [...inputsOf(cell), ...outputsOf(cell)].map(({ key }) => refTo(cell.id, key, false)),
  );
  const inner = worksByTrials(await trialsOf(notebook), sizes);
  let tries = 0;
  const works: Works = (work) => {
    tries += work.tries.length;
    return inner(work);
  };
  const found = await giveOrTake({ notebook, sizes, wanted, works });
  expect(tries).toBe(1 + 2 * sourcesOf(notebook).length);
  for (const row of found) {
    for (const uncertainty of row) {
      if (!uncertainty) continue;
      expect(Number.isFinite(uncertainty.expanded)).toBe(true);
      expect(uncertainty.expanded).toBeGreaterThanOrEqual(0);
    }
  }
});
