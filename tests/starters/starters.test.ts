import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allCells,
  changesBetween,
  inputsOf,
  nameTable,
  namesOf,
  outputsOf,
  type Notebook,
} from '../../src/notebook';
import { Results } from '../../src/engine';
import { WorkedSheet } from '../../src/engine/sheet';
import { blank, hatCrown, lessons, singleSleeve, starters } from '../../src/starters';
import { edited } from '../notebook/edited';
import { blouseSleeve } from '../notebooks/blouse-sleeve';
import { motifBorder } from '../notebooks/motif-border';
import { narrowing } from '../notebooks/narrowing';
import { underarm } from '../notebooks/underarm';
import { vNeck } from '../notebooks/v-neck';

const others = [
  { label: 'the test notebook V-neck', make: vNeck },
  { label: 'the test notebook underarm', make: underarm },
  { label: 'the test notebook narrowing', make: narrowing },
  { label: 'the test notebook motif border', make: motifBorder },
  { label: 'the test notebook blouse sleeve', make: blouseSleeve },
];

describe.each([...starters, ...others].map(({ label, make }) => [label, make()] as const))(
  '%s',
  (_label, notebook) => {
    it('has a name of its own for everything', () => {
      const names = allCells(notebook).flatMap((cell) => namesOf(cell));
      expect(nameTable(notebook).size).toBe(names.length);
    });

    it('is worked with no trouble in any size, and all its checks hold', async () => {
      const results = new Results();
      results.apply(await new WorkedSheet().update(changesBetween(null, notebook)));
      const problems = allCells(notebook).flatMap((cell) =>
        [...inputsOf(cell), ...outputsOf(cell)].flatMap(({ key, name }) =>
          notebook.sizes.flatMap((size) => {
            const error = results.error(size.id, cell.id, key);
            const fails = results.truth(size.id, cell.id, key) === false;
            return error || fails ? [`${name}, ${size.label}: ${error?.message ?? 'does not hold'}`] : [];
          }),
        ),
      );
      expect(problems).toEqual([]);
    });

    it('keeps its names when every cell takes another', () => {
      let renamed = notebook;
      for (const cell of allCells(notebook)) {
        renamed = edited(renamed, { do: 'rename', cell: cell.id, name: `${cell.name}_x` });
      }
      const table = nameTable(renamed);
      expect(table.size).toBe(nameTable(notebook).size);
    });
  },
);

/** Works one notebook after another, each as it differs from the one before. */
function working(first: Notebook) {
  const sheet = new WorkedSheet();
  const results = new Results();
  let before: Notebook | null = null;
  return async (notebook = first) => {
    results.apply(await sheet.update(changesBetween(before, notebook)));
    before = notebook;
    return (size: string, cell: string, key: string) => results.number(size, cell, key);
  };
}

describe('what the starters come to', () => {
  const work = async (notebook: Notebook) => {
    const results = new Results();
    results.apply(await new WorkedSheet().update(changesBetween(null, notebook)));
    return (size: string, cell: string, key: string) => results.number(size, cell, key);
  };

  it('a woman’s head of 56.11 cm less 8 % is 113.6 stitches, 112 in eights: 14 to a wedge, and 8 at the end', async () => {
    const at = await work(hatCrown());
    expect(at('women', 'hat-sts', 'count')).toBe(112);
    // 57.44 cm less 8 % at 22 to 10 cm is 116.3, to which 120 is nearer than 112.
    expect(at('men', 'hat-sts', 'count')).toBe(120);
    // From 14 to 8 stitches a wedge loses one every second round, and from 8 to 1 in each of seven rounds.
    expect(at('women', 'hat', 'crown.worked_rows')).toBe(12);
    expect(at('women', 'hat', 'close.worked_rows')).toBe(7);
    expect(at('women', 'hat', 'end')).toBe(8);
    expect(at('women', 'hat', 'length')).toBeCloseTo(21, 6);
  });

  it.each([
    // 51.62 cm: 46.5, 62.0, 64.0 and 144.5 stitches, in eights 48, 64, 64 and 144.
    [9, 6, 0, 5],
    [12, 8, 0, 7],
    [12.4, 8, 0, 7],
    [28, 18, 20, 7],
  ])(
    'in wool of %d stitches to 10 cm, %d to a wedge, the crown closes to 8 stitches in %d and %d rounds',
    async (stitches, wedge, slow, steep) => {
      const counted = {
        do: 'give',
        cell: 'fabric',
        key: 'sts.0.count',
        size: null,
        value: stitches,
      } as const;
      const at = await work(edited(hatCrown(), counted));
      expect(at('women', 'wedge-sts', 'value')).toBe(wedge);
      expect(at('women', 'hat', 'crown.worked_rows')).toBe(slow);
      expect(at('women', 'hat', 'close.worked_rows')).toBe(steep);
      expect(at('women', 'hat', 'end')).toBe(8);
    },
  );

  it('the sleeve for an arm of 28 cm goes from 30 stitches of rib to 54, in 52 rows', async () => {
    const at = await work(singleSleeve());
    // 17.5 cm of rib at 16 to 10 cm are 28; 34 cm at 15 are 51, the even count above it 52; and at each end a stitch at
    // each side for the seam.
    expect(at('m', 'sleeve', 'start')).toBe(30);
    expect(at('m', 'sleeve', 'end')).toBe(54);
    // A cuff of 6 cm is 8 rows of rib at 13 to 10 cm; 37 cm above it are 44 rows at 12.
    expect(at('m', 'sleeve', 'rows')).toBe(52);
  });

  it('at any gauge a sleeve and a hat are as long as wanted, to within one rounding of their rows', async () => {
    const sleeve = singleSleeve();
    const hat = hatCrown();
    const give = (cell: string, value: number) =>
      ({ do: 'give', cell, key: 'rows.0.count', size: null, value }) as const;
    const counted = fc.integer({ min: 9, max: 40 });
    const [sleeveAt, hatAt] = [working(sleeve), working(hat)];
    await fc.assert(
      fc.asyncProperty(counted, counted, async (rib, fabric) => {
        const edits = [give('rib', rib), give('fabric', fabric)];
        // Even rows: the nearest are no more than one row off. 43 cm from underarm to wrist, as the starter has it.
        const one = await sleeveAt(edited(sleeve, ...edits));
        expect(Math.abs(one('m', 'sleeve', 'length')! - 43)).toBeLessThanOrEqual(10 / fabric + 1e-9);
        // Any rounds: half a round; below this its crown alone is deeper than the hat.
        if (fabric < 20) return;
        const other = await hatAt(edited(hat, ...edits));
        expect(Math.abs(other('women', 'hat', 'length')! - 21)).toBeLessThanOrEqual(5 / fabric + 1e-9);
      }),
      { numRuns: 25 },
    );
  });

  it('the sleeve, sewn up, is as wide at its cuff as wanted, to half of two stitches', async () => {
    const at = await work(singleSleeve());
    // 30 and 32 stitches at 16 to 10 cm, two of them in the seam; 17.5 and 18.5 cm are wanted.
    expect(at('m', 'round-of-the-cuff-as-made', 'made')).toBeCloseTo(28 / 1.6, 6);
    expect(at('me', 'round-of-the-cuff-as-made', 'made')).toBeCloseTo(30 / 1.6, 6);
    for (const size of ['m', 'me']) {
      expect(Math.abs(at(size, 'round-of-the-cuff-as-made', 'difference')!)).toBeLessThanOrEqual(1 / 1.6);
    }
  });

  it('a hat takes the yarn of its brim and of what is above it, each by its own swatch, with a tenth in reserve', async () => {
    const at = await work(hatCrown());
    // 112 stitches at 24 to 10 cm are 46.67 cm round; 15 rounds at 30 are 5 cm: 233.3 cm², of which 240 weigh 11 g.
    expect(at('women', 'area-of-the-brim', 'value')).toBeCloseTo(233.33, 2);
    // Above it 29 rounds of 112 stitches, 2 of each of 104 … 64 but one, and one of each of 56 … 8; 300 cm² weigh 11.5 g.
    let stitches = 30 * 112;
    for (let count = 104; count >= 72; count -= 8) stitches += 2 * count;
    for (let count = 64; count >= 8; count -= 8) stitches += count;
    const above = stitches / 2.2 / 3;
    const grams = ((233.333333 * 11) / 240 + (above * 11.5) / 300) * 1.1;
    expect(at('women', 'yarn', 'grams')).toBeCloseTo(grams, 4);
    expect(at('women', 'yarn', 'balls')).toBe(1);
  });

  it('a sleeve takes the yarn of its cuff and of what is above it, and a size that is larger takes more', async () => {
    const at = await work(singleSleeve());
    // 30 stitches at 16 to 10 cm are 18.75 cm; 8 rows at 13 are 6.154 cm: 115.4 cm², of which 150 weigh 10 g.
    expect(at('m', 'area-of-the-cuff', 'value')).toBeCloseTo((18.75 * 80) / 13, 6);
    const above = at('m', 'sleeve', 'area')! - (18.75 * 80) / 13;
    expect(at('m', 'yarn', 'grams')).toBeCloseTo(
      1.1 * (((18.75 * 80) / 13 / 150) * 10 + (above / 400) * 18),
      6,
    );
    expect(at('me', 'yarn', 'grams')).toBeGreaterThan(at('m', 'yarn', 'grams')!);
  });

  it('a blank one has a size, an empty section and nothing else', () => {
    expect(blank().sizes).toHaveLength(1);
    expect(blank().sections.map(({ cells }) => cells.length)).toEqual([0]);
  });
});

describe('the lessons', () => {
  const [size] = lessons().sizes.filter(({ label }) => label === 'M');
  const at = async () => {
    const results = new Results();
    results.apply(await new WorkedSheet().update(changesBetween(null, lessons())));
    return (cell: string) => results.number(size!.id, cell, 'value')!;
  };

  it('4 in are 0.16 cm longer than 10 cm, and a bust of 102 cm counted over them comes out 1.6 % wider', async () => {
    const of = await at();
    expect(of('longer')).toBeCloseTo(0.16, 9);
    expect(of('inch-bust') / of('planned')).toBeCloseTo(1.016, 9);
    expect(of('inch-costs')).toBeGreaterThan(1.5);
  });

  it('half a stitch fewer than 18 to 10 cm widens a bust by one part in 35', async () => {
    const of = await at();
    expect(of('half-costs') / of('planned')).toBeCloseTo(0.5 / 17.5, 9);
  });

  it('have a working for everything on their class sheet', async () => {
    const notebook = lessons();
    const names = new Set(
      allCells(notebook).flatMap((cell) => namesOf(cell).map(({ key }) => `${cell.id} ${key}`)),
    );
    for (const { cell, key } of notebook.classSheet!.results) expect(names).toContain(`${cell} ${key}`);
  });
});
