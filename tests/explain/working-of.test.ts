import { beforeAll, describe, expect, test } from 'vitest';
import type { Notebook, PieceStretch } from '../../src/notebook';
import { hatCrown, singleSleeve, starters } from '../../src/starters';
import { inText, workingOf, type WorkingSource } from '../../src/explain';
import { exampleOf, withExamples } from '../formulas/functions/with-examples';
import { fit, formula, measure, notebookOf, swatch } from '../engine/notebook-of';
import { workedSource } from './worked-source';
import { blouseSleeve } from '../notebooks/blouse-sleeve';
import { narrowing } from '../notebooks/narrowing';
import { vNeck } from '../notebooks/v-neck';

const lessons = () => starters.find(({ label }) => label.includes('lessons'))!.make();

const sentence = (source: WorkingSource, cell: string, key: string, size = 'm', back = 0): string => {
  const working = workingOf(source, { cell, key }, size, back);
  return 'problem' in working ? working.problem : inText(working);
};

/** A width of 102 cm at 14 sts to 10 cm in a multiple of 8 plus 3, and the width that its stitches give. */
function fitted(): Notebook {
  return notebookOf([
    swatch('body', 14, 12),
    { ...measure('width', 'length', 102), label: 'Width' },
    { ...fit('sts', 'width * body_sts'), name: 'back_sts', label: 'Stitches' },
    { ...formula('made', 'back_sts / body_sts'), label: 'Width made' },
  ]);
}

describe('a working', () => {
  test('adds up rows of the same in one: a hat closed by seven rows of eight decreases', async () => {
    const hat = hatCrown();
    const closing = Array.from({ length: 7 }, (_row, at): PieceStretch => ({
      kind: 'eachRepeat',
      name: `close_${at + 1}`,
      label: `Each wedge to ${7 - at}`,
      fabric: 'fabric',
      repeats: { formula: 'hat_sts_multiple' },
      by: { value: -1 },
    }));
    const sections = hat.sections.map((section) => ({
      ...section,
      cells: section.cells.map((cell) =>
        cell.kind === 'piece' ? { ...cell, stretches: [...cell.stretches.slice(0, 3), ...closing] } : cell,
      ),
    }));
    expect(sentence(await workedSource({ ...hat, sections }), 'hat', 'rows', hat.sizes[1]!.id)).toMatch(
      /^15 rows \+ .* \+ 7 × 1 row, stretch by stretch = \d+ rows$/,
    );
  });

  test('goes from a width by its gauge to the nearest count of the repeat, and back to a width', async () => {
    const source = await workedSource(fitted());
    expect(sentence(source, 'made', 'value', 'm', 1)).toBe(
      '102 cm × 14 sts / 10 cm = 142.8 sts → nearest multiple of 8 + 3 = 139 sts → 139 sts ÷ (14 sts / 10 cm) = 99.3 cm',
    );
    expect(sentence(source, 'made', 'value')).toBe('139 sts ÷ (14 sts / 10 cm) = 99.3 cm');
  });

  test('tells once what two functions work in the same way: stitches picked up, and along how many rows', async () => {
    expect(sentence(await workedSource(blouseSleeve()), 'sleeve-sts', 'value', 'c8')).toBe(
      '18 sts / 10 cm ÷ (13 rows / 10 cm) = 1.385 sts to a row end → nearest fraction over 8 rows or fewer = 11/8 → picked up = 11 sts → along every = 8 rows → 2 × 4 sts = 8 sts → one side: 18 rows × 11 sts / 8 rows = 24.75 sts → nearest whole number = 25 sts → 2 × 25 sts + 8 sts at the underarm = 58 sts',
    );
  });

  test('tells a length of less than a centimetre, or an inch, to more places: 4 in are 0.16 cm longer than 10 cm', async () => {
    const nb = lessons();
    expect(sentence(await workedSource(nb), 'longer', 'value')).toBe('10.16 cm − 10 cm = 0.16 cm');
    const inches = { ...nb, settings: { ...nb.settings, length: 'in' as const } };
    expect(sentence(await workedSource(inches), 'longer', 'value')).toMatch(/= 0\.063 in$/);
  });

  test('holds a share against a per cent as a per cent', async () => {
    const cells = [...fitted().sections[0]!.cells];
    const source = await workedSource(
      notebookOf([...cells, formula('off', 'made / width - 1'), formula('near', 'off <= 8%')]),
    );
    expect(sentence(source, 'near', 'value')).toBe('−2.66% ≤ 8% = yes');
  });

  test('takes a row from rows', async () => {
    expect(sentence(await workedSource(narrowing()), 'panel', 'upper.rows')).toMatch(
      /^\d+ rows − 1 row = \d+ rows$/,
    );
  });

  test('strikes out the length that the gauge is counted over, and leaves the stitches', async () => {
    const working = workingOf(await workedSource(fitted()), { cell: 'sts', key: 'count' }, 'm');
    if ('problem' in working) throw new Error(working.problem);
    const [wanted, count] = working.lines;
    expect(wanted!.steps[0]!.says.filter(({ cancels }) => cancels).map(({ text }) => text)).toEqual([
      'cm',
      'cm',
    ]);
    expect(count!.steps[0]).toMatchObject({ from: { text: '142.8 sts' }, hint: '139 is below, 147 above' });
    expect(working.further).toBe(false);
  });

  test('says where there is more further back', async () => {
    const source = await workedSource(fitted());
    expect(workingOf(source, { cell: 'made', key: 'value' }, 'm')).toMatchObject({ further: true });
    expect(workingOf(source, { cell: 'made', key: 'value' }, 'm', 1)).toMatchObject({ further: false });
  });

  test('in inches and to 4 in, the same stitches: 4 in are 10.16 cm', async () => {
    const { settings, ...rest } = fitted();
    const source = await workedSource({
      ...rest,
      settings: { ...settings, length: 'in', gaugeOver: '4 in', decimal: ',' },
    });
    expect(sentence(source, 'made', 'value', 'm', 1)).toBe(
      '40,157 in × 14,224 sts / 4 in = 142,8 sts → nearest multiple of 8 + 3 = 139 sts → 139 sts ÷ (14,224 sts / 4 in) = 39⅛ in',
    );
  });

  test('of a given value says that it is given', async () => {
    expect(sentence(await workedSource(fitted()), 'width', 'value')).toMatch(/given and not worked/);
  });

  test('of a result that cannot be worked says why', async () => {
    const notebook = fitted();
    const [, , ...others] = notebook.sections[0]!.cells;
    const without = { ...notebook, sections: [{ id: 's', label: '', cells: others }] };
    expect(sentence(await workedSource(without), 'made', 'value')).toMatch(/width|body/);
  });
});

describe('in the V-neck, size M, and in the blouse sleeve', () => {
  let source: WorkingSource;
  let examples: WorkingSource;
  let sleeve: WorkingSource;
  beforeAll(async () => {
    source = await workedSource(vNeck());
    examples = await workedSource(withExamples());
    sleeve = await workedSource(blouseSleeve());
  });

  test('an armhole shows both depths and which is larger', () => {
    expect(sentence(source, 'armhole', 'value')).toBe(
      'half the arm and its ease, (27.94 cm + 10 cm) ÷ 2 = 18.97 cm → the larger of 18.42 cm in the chart and 18.97 cm = 19.0 cm',
    );
  });

  test('a taper shows the division and what it leaves over', () => {
    expect(sentence(examples, exampleOf('TAPEREVERY'), 'value')).toBe(
      'from 58 sts to 40 sts = 18 sts fewer → 18 sts ÷ 2 sts a shaping row = 9 shaping rows → 60 rows − 2 rows plain = 58 rows → 58 rows ÷ 9 = 6, remainder 4 → so shape = every 7th row 4 times, every 6th row 5 times',
    );
  });

  test('where every right-side row is shaped, right-side rows are told, not pairs', async () => {
    const every = notebookOf([
      formula('shaping', 'TAPEREVERY(STS(10); STS(6); ROWS(3); STS(2); 2; 0; 0; "longFirst")'),
      formula('pairs', 'TAPEREVERY(STS(10); STS(6); ROWS(5); STS(2); 2; 0; 0; "longFirst")'),
    ]);
    const worked = await workedSource(every);
    expect(sentence(worked, 'shaping', 'value')).toMatch(
      /right-side rows of 3 rows = 2 → 2 right-side rows ÷ 2 = 1 → so shape = every 2nd row twice$/,
    );
    expect(sentence(worked, 'pairs', 'value')).toMatch(
      /5 rows ÷ 2, right-side rows only = 2 → 2 pairs of rows ÷ 2/,
    );
  });

  test('a choice shows its condition and the branch it takes', () => {
    expect(sentence(examples, exampleOf('IF'), 'value')).toBe(
      '93.98 cm > 110 cm = no → so, otherwise, 2 sts = 2 sts',
    );
  });

  test('a count to a parity names it, and its neighbours stand beside', () => {
    const working = workingOf(source, { cell: 'armhole-rows', key: 'value' }, 'm');
    if ('problem' in working) throw new Error(working.problem);
    expect(inText(working)).toBe('18.97 cm × 12 rows / 10 cm = 22.76 rows → nearest even number = 22 rows');
    expect(working.lines[0]!.steps.at(-1)!.hint).toBe('22 is below, 24 above');
  });

  test('a gauge comes from its readings', () => {
    expect(sentence(source, 'body', 'sts')).toBe('14 sts ÷ 10 cm = 14 sts / 10 cm');
    expect(sentence(examples, exampleOf('GAUGE'), 'value')).toMatch(/ ÷ .* = /);
  });

  test('a piece is worked stretch by stretch', () => {
    const text = sentence(sleeve, 'sleeve', 'piece', 'c4');
    expect(text).toContain('16 sts ÷ 2 sts a shaping row = 8 shaping rows');
    expect(text).toContain('41 rows ÷ 8 = 5, remainder 1');
    expect(text).toMatch(/51 rows in all, at the end = 28 sts$/);
  });

  test('what a part of a cell only takes over from another result has no line of its own', () => {
    const working = workingOf(sleeve, { cell: 'sleeve', key: 'piece' }, 'c4');
    if ('problem' in working) throw new Error(working.problem);
    // The stitches to begin with, and those to end on, are other cells' results; rows are rounded here.
    expect(working.lines.map(({ of }) => of.label)).toEqual([
      'Sleeve, armhole to wrist, over',
      'Sleeve, rib, rounds',
      'Sleeve',
    ]);
    expect(sentence(sleeve, 'sleeve', 'start', 'c4')).toBe('Sleeve stitches picked up = 52 sts');
  });

  test('a band is worked along one front: along the other it is the same', () => {
    const working = workingOf(source, { cell: 'band', key: 'left_front.share' }, 'm');
    if ('problem' in working) throw new Error(working.problem);
    const formulas = working.lines.map(({ formula }) => formula);
    expect(new Set(formulas).size).toBe(formulas.length);
    expect(inText(working)).toMatch(/rows × 10 sts \/ 7 rows = .* its share: /);
  });
});

test('the sleeve worked flat is shaped on right-side rows: pairs of rows are divided', async () => {
  const notebook = singleSleeve();
  const source = await workedSource(notebook);
  expect(sentence(source, 'sleeve', 'piece')).toMatch(/right-side rows|÷/);
});
