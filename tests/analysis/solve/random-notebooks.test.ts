import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Cell, Notebook, RepeatFit } from '../../../src/notebook';
import { trialsOf } from '../../../src/engine/trials-in-turn';
import { triesByTrials } from '../../../src/analysis/solve/tries-by-trials';
import { solve } from '../../../src/analysis/solve/solve';
import { fit, formula, measure, notebookOf, swatch } from '../../engine/notebook-of';

const sizes = ['s', 'm', 'l'].map((id) => ({ id, label: id }));

/** A back fitted to a repeat, its shoulders, and the rows of a body, from random swatches, busts and repeats. */
const notebooks: fc.Arbitrary<Notebook> = fc
  .record({
    busts: fc.tuple(
      fc.integer({ min: 60, max: 90 }),
      fc.integer({ min: 80, max: 110 }),
      fc.integer({ min: 100, max: 140 }),
    ),
    counted: fc.integer({ min: 9, max: 30 }),
    multiple: fc.integer({ min: 1, max: 12 }),
    plus: fc.integer({ min: -2, max: 6 }),
    rule: fc.constantFrom<RepeatFit['rule']>('nearest', 'up', 'down'),
    share: fc.constantFrom('0.3', '0.45', '0.6'),
    ease: fc.integer({ min: 0, max: 20 }),
  })
  .map(({ busts, counted, multiple, plus, rule, share, ease }) => {
    const back: RepeatFit = { ...fit('back', '(bust + ease) / 2 * body_sts', [multiple, plus]), rule };
    const cells: Cell[] = [
      swatch('body', counted, 12),
      measure('bust', 'length', { each: { s: busts[0], m: busts[1], l: busts[2] } }),
      // Chosen, since it may be less than 0: what the tape reads may not.
      { ...measure('ease', 'length', ease), chosen: true },
      back,
      formula('shoulder', `ROUNDCOUNT(back * ${share}; "even")`),
      formula('length', 'bust * 0.4 + ease / 2'),
    ];
    return notebookOf(cells, sizes);
  });

it('finds in random notebooks what trying every tenth of a step finds: no stretch missed, none made up', async () => {
  await fc.assert(
    fc.asyncProperty(
      notebooks,
      fc.constantFrom('back count', 'shoulder value'),
      fc.integer({ min: 0, max: 100 }),
      fc.constantFrom('ease value', 'body sts.0.count'),
      async (notebook, looked, pick, moved) => {
        const [cell, key] = looked.split(' ') as [string, string];
        const [input, inputKey] = moved.split(' ') as [string, string];
        const search = moved.startsWith('ease')
          ? { from: -10, to: 30, step: 0.5 }
          : { from: 8, to: 32, step: 0.3 };
        const tries = triesByTrials({
          trials: await trialsOf(notebook),
          input: { cell: input, key: inputKey },
          shared: moved.startsWith('body'),
          looked: { result: { cell, key } },
          sizes,
        });
        // One of the results that there are, so that most wishes can be met.
        const fine = search.step / 10;
        const grid = Array.from(
          { length: Math.round((search.to - search.from) / fine) + 1 },
          (_x, at) => search.from + at * fine,
        );
        const all = await Promise.all(
          sizes.map(async (_size, size) => tries(grid.map((value) => ({ size, value })))),
        );
        const seen = all[1]!.filter((outcome): outcome is number => typeof outcome === 'number');
        const wished = seen[Math.floor((pick / 101) * seen.length)]!;
        const found = await solve({
          search,
          wish: { wish: 'value', value: wished, within: 0 },
          sizes: sizes.length,
          tries,
        });
        for (const [size, { intervals }] of found.sizes.entries()) {
          // Runs of the fine grid that meet it, and are certainly wider than a step.
          let first = -1;
          for (let at = 0; at <= grid.length; at++) {
            const met = at < grid.length && all[size]![at] === wished;
            if (met && first < 0) first = at;
            if (met || first < 0) continue;
            const [from, to] = [grid[first]!, grid[at - 1]!];
            if (to - from > search.step) {
              expect(intervals.some((one) => one.from <= from + 1e-9 && one.to >= to - 1e-9)).toBe(true);
            }
            first = -1;
          }
          for (const { from, to } of intervals) {
            // Both ends give it; a millionth beyond them does not, unless that is a bound.
            const beyond = [from, to, from - 1.1e-6, to + 1.1e-6];
            const [atFrom, atTo, before, after] = await tries(beyond.map((value) => ({ size, value })));
            expect([atFrom, atTo]).toEqual([wished, wished]);
            if (from > search.from) expect(before).not.toBe(wished);
            if (to < search.to) expect(after).not.toBe(wished);
          }
          // Nothing of the grid that meets it lies outside, but for what is narrower than a step.
          const outside = grid.filter(
            (x, at) =>
              all[size]![at] === wished &&
              !intervals.some(({ from, to }) => from - 1e-6 <= x && x <= to + 1e-6),
          );
          for (const x of outside) {
            const at = Math.round((x - search.from) / fine);
            const run = (by: number): number => {
              let steps = 0;
              for (let next = at + by; all[size]![next] === wished; next += by) steps++;
              return steps;
            };
            expect((run(-1) + run(1)) * fine).toBeLessThanOrEqual(search.step + 1e-9);
          }
        }
      },
    ),
    { numRuns: Number(process.env['RUNS'] ?? 15) },
  );
});
