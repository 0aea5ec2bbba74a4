import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allCells, type Notebook } from '../../../src/notebook';
import { inEverySize, wholeRepeats } from '../../../src/features/range/whole-repeats';
import { trialNumber } from '../../../src/engine';
import { trialsOf } from '../../../src/engine/trials-in-turn';
import { fit, measure, notebookOf, swatch } from '../../engine/notebook-of';
import { vNeck } from '../../notebooks/v-neck';

const ease = { cell: 'ease', key: 'value', size: null };

function garment(busts: readonly number[], stitches: number, multiple: number, plus: number): Notebook {
  const sizes = busts.map((_, at) => ({ id: `s${at}`, label: `${at}` }));
  return notebookOf(
    [
      swatch('body', stitches, 16),
      measure('bust', 'length', { each: Object.fromEntries(busts.map((bust, at) => [`s${at}`, bust])) }),
      measure('ease', 'length', 10),
      fit('back', '(bust + ease) / 2 * body_sts', [multiple, plus]),
    ],
    sizes,
  );
}

const steps = (start: number, end: number, by: number): number[] =>
  Array.from({ length: Math.round((end - start) / by) + 1 }, (_, at) => start + at * by);

describe('the eases at which a count has nothing to round', () => {
  it('are where half the bust and its ease, in stitches, is itself a multiple of 8 plus 3', async () => {
    // (90 + ease) / 2 × 1.4 is 67 at 5.714 cm, 75 at 17.143 cm: by hand.
    const found = await wholeRepeats(
      await trialsOf(garment([90], 14, 8, 3)),
      ease,
      'back',
      ['s0'],
      steps(0, 20, 0.5),
    );
    expect(found.map(({ count }) => count)).toEqual([67, 75]);
    expect(found[0]!.value).toBeCloseTo((67 * 2) / 1.4 - 90, 9);
    expect(found[1]!.value).toBeCloseTo((75 * 2) / 1.4 - 90, 9);
  });

  it('are found between steps that are longer than a repeat', async () => {
    const found = await wholeRepeats(await trialsOf(garment([90], 14, 4, 1)), ease, 'back', ['s0'], [0, 40]);
    // (90 + ease) / 2 × 1.4 goes from 63 to 91.
    expect(found.map(({ count }) => count)).toEqual([65, 69, 73, 77, 81, 85, 89]);
  });

  it('agree with arithmetic in any size, gauge and repeat, each once and none left out', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 60, max: 140 }), { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 8, max: 30 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 0, max: 5 }),
        async (busts, stitches, multiple, plus) => {
          const ids = busts.map((_, at) => `s${at}`);
          const found = await wholeRepeats(
            await trialsOf(garment(busts, stitches, multiple, plus)),
            ease,
            'back',
            ids,
            steps(0, 12, 0.5),
          );
          for (const [at, bust] of busts.entries()) {
            const easeOf = (count: number): number => (count * 2) / (stitches / 10) - bust;
            const wanted: number[] = [];
            for (let count = plus % multiple || multiple; count < 400; count += multiple) {
              if (easeOf(count) >= -1e-9 && easeOf(count) <= 12 + 1e-9 && count >= plus)
                wanted.push(easeOf(count));
            }
            const own = found.filter(({ size }) => size === ids[at]).map(({ value }) => value);
            expect(own).toHaveLength(wanted.length);
            own.forEach((value, nth) => expect(value).toBeCloseTo(wanted[nth]!, 7));
          }
        },
      ),
      { numRuns: 25 },
    );
  });

  it('serve every size where the busts lie whole repeats apart, and no other', async () => {
    // 8 stitches at 16 to 10 cm are 5 cm of half the bust, so 10 cm of the bust.
    const ids = ['s0', 's1', 's2'];
    const of = async (busts: readonly number[]): Promise<number[]> =>
      inEverySize(
        await wholeRepeats(await trialsOf(garment(busts, 16, 8, 3)), ease, 'back', ids, steps(0, 12, 0.5)),
        ids,
      );
    const every = await of([80, 90, 110]);
    expect(every).toHaveLength(1);
    expect(every[0]).toBeCloseTo((67 * 2) / 1.6 - 80, 9);
    expect(await of([80, 90, 111])).toEqual([]);
  });

  it('of the V-neck’s back are found for each of its nine sizes, and the sheet rounds nothing there', async () => {
    const notebook = vNeck();
    const sizes = notebook.sizes.map(({ id }) => id);
    const work = await trialsOf(notebook);
    const input = { cell: 'finished-bust', key: 'ease', size: null };
    const found = await wholeRepeats(work, input, 'back-sts', sizes, steps(10, 30, 0.5));
    expect(new Set(found.map(({ size }) => size)).size).toBe(9);
    const again = await work({
      trials: found.map(({ value }) => [{ ...input, value }]),
      wanted: [{ cell: 'back-sts', key: 'off' }],
      sizes,
    });
    found.forEach(({ size }, at) =>
      expect(Math.abs(trialNumber(again, at, sizes.indexOf(size), 0)!)).toBeLessThan(1e-9),
    );
    expect(allCells(notebook)).toEqual(allCells(vNeck()));
  });

  it('are none where the count does not depend on what moves, or cannot be worked', async () => {
    const apart = garment([90], 14, 8, 3);
    const hem = measure('hem', 'length', 5);
    const neighbour = { ...apart, sections: [{ ...apart.sections[0]!, cells: [...allCells(apart), hem] }] };
    const work = await trialsOf(neighbour);
    const input = { cell: 'hem', key: 'value', size: null };
    expect(await wholeRepeats(work, input, 'back', ['s0'], steps(0, 5, 1))).toEqual([]);
    expect(await wholeRepeats(work, ease, 'lost', ['s0'], steps(0, 5, 1))).toEqual([]);
  });
});
