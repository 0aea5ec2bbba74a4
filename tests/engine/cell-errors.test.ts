import { describe, expect, test } from 'vitest';
import type { Cell, EaseCell, PieceCell, RepeatFit } from '../../src/notebook/document';
import { fit, formula, measure, notebookOf, swatch } from './notebook-of';
import { valueOf, Worked, worked } from './worked';

const bust = measure('bust', 'length', 90);
const finished: EaseCell = {
  kind: 'ease',
  id: 'finished',
  label: 'Finished bust',
  name: 'finished_bust',
  by: 'length',
  body: { formula: 'bust' },
  ease: { value: 10 },
};
const back = { ...fit('back_sts', 'finished_bust / 2 * body_sts'), id: 'back', label: 'Back stitches' };

describe('a trouble is told on the cell that causes it, and points there from what waits for it', () => {
  test('an empty measure', async () => {
    const { results } = await worked(
      { ...bust, label: 'Bust', entry: { value: null } },
      finished,
      swatch('body', 14, 16),
      back,
    );
    expect(results.error('m', 'bust', 'value')).toEqual({
      message: 'Bust is empty: type a value, or = and a formula.',
    });
    const from = { cell: 'bust', key: 'value' };
    expect(results.error('m', 'finished', 'finished')).toEqual({ message: 'Needs Bust.', from });
    expect(results.error('m', 'back', 'count')).toEqual({ message: 'Needs Bust.', from });
  });

  test('a gauge counted as zero', async () => {
    const { results } = await worked(bust, finished, swatch('body', 0, 16), back);
    expect(results.error('m', 'body', 'sts.0.count')).toEqual({
      message: 'Stitches counted must be more than 0.',
    });
    const from = { cell: 'body', key: 'sts.0.count' };
    expect(results.error('m', 'body', 'sts')).toEqual({
      message: 'Needs body: stitches counted.',
      from,
    });
    expect(results.error('m', 'back', 'count')).toEqual({
      message: 'Needs body: stitches counted.',
      from,
    });
    expect(results.number('m', 'body', 'rows')).toBe(1.6);
  });

  test('an unknown name', async () => {
    const { results } = await worked(bust, formula('half', 'bst / 2'), formula('quarter', 'half / 2'));
    expect(results.error('m', 'half', 'value')).toEqual({
      message: 'There is no cell called bst; did you mean bust?',
    });
    expect(results.error('m', 'quarter', 'value')).toEqual({
      message: 'Needs half.',
      from: { cell: 'half', key: 'value' },
    });
  });

  test('a division by zero, only in the size that has it', async () => {
    const each = { each: { s: 0, m: 2 } };
    const notebook = notebookOf(
      [measure('parts', 'number', each), formula('part', '10 / parts'), formula('double', 'part * 2')],
      [
        { id: 's', label: 'S' },
        { id: 'm', label: 'M' },
      ],
    );
    const { results } = await new Worked().show(notebook);
    expect(results.error('s', 'part', 'value')?.message).toContain('divided by 0');
    expect(results.error('s', 'double', 'value')).toEqual({
      message: 'Needs part.',
      from: { cell: 'part', key: 'value' },
    });
    expect(results.number('m', 'double', 'value')).toBe(10);
  });

  test('a result too large to hold, whichever operation makes it', async () => {
    for (const tooLarge of ['9 ^ 999', '9 ^ 999 + 1', '1e200 * 1e200', 'SUM(1e308; 1e308)']) {
      const { results } = await worked(
        formula('big', tooLarge),
        formula('more', 'big + 1'),
        formula('most', 'more * 2'),
      );
      expect(results.error('m', 'big', 'value')).toEqual({
        message:
          'The result is beyond anything that can be worked: look for a number or a power that is too large.',
      });
      const waits = { message: 'Needs big.', from: { cell: 'big', key: 'value' } };
      expect(results.error('m', 'more', 'value')).toEqual(waits);
      expect(results.error('m', 'most', 'value')).toEqual(waits);
    }
  });

  test('a piece that cannot be worked', async () => {
    const piece: PieceCell = {
      kind: 'piece',
      id: 'sleeve',
      label: 'Sleeve',
      name: 'sleeve',
      worked: 'flat',
      start: { value: 60 },
      ends: 'bound off',
      stretches: [
        {
          kind: 'taper',
          name: 'arm',
          label: 'Arm',
          fabric: 'body',
          to: { value: 39 },
          over: { value: 40 },
          perRow: { value: 2 },
          every: 1,
          before: { value: 0 },
          after: { value: 0 },
          order: 'longFirst',
        },
      ],
    };
    const { results } = await worked(swatch('body', 14, 16), piece);
    expect(results.error('m', 'sleeve', 'piece')?.message).toMatch(/^Stretch 1: /);
    expect(results.error('m', 'sleeve', 'length')).toEqual({
      message: 'Needs Sleeve.',
      from: { cell: 'sleeve', key: 'piece' },
    });
  });

  test('units that do not go together, in every size alike', async () => {
    const { results } = await worked(bust, formula('wide', 'bust + 10'), formula('wider', 'wide + CM(1)'));
    expect(results.error('m', 'wide', 'value')).toEqual({ message: '10 of what? Write CM(10) or IN(10).' });
    expect(results.error('m', 'wider', 'value')).toEqual({
      message: 'Needs wide.',
      from: { cell: 'wide', key: 'value' },
    });
    expect(results.unit('wide', 'value')).toBeUndefined();
  });

  test('a place that should be a length and is given stitches', async () => {
    const { results } = await worked(measure('count', 'stitches', 40), {
      ...finished,
      body: { formula: 'count' },
    });
    expect(results.error('m', 'finished', 'body')?.message).toBe(
      'This should be a length, but the formula gives a number of stitches: divide it by a stitch gauge.',
    );
    expect(results.unit('finished', 'finished')).toEqual({ length: 1 });
  });
});

test('a cell whose unit becomes another changes the unit of what is worked from it', async () => {
  const rest = [formula('more', 'a * 2'), formula('most', 'more + CM(1)')];
  const sheet = await worked(formula('a', 'CM(1)'), ...rest);
  expect(sheet.number('most')).toBe(3);
  await sheet.show(notebookOf([formula('a', 'STS(1)'), ...rest]));
  expect(sheet.results.unit('more', 'value')).toEqual({ stitch: 1 });
  expect(sheet.errorIn('most')).toContain('A number of stitches and a length cannot be added');
  await sheet.show(notebookOf([formula('a', 'CM(4)'), ...rest]));
  expect(sheet.number('most')).toBe(9);
});

describe('circles', () => {
  test('the cells of a circle are named, each from its own side', async () => {
    const sheet = await worked(
      formula('a', 'b * 2'),
      formula('b', 'c + 1'),
      formula('c', 'a'),
      formula('d', 'a + 1'),
    );
    expect(sheet.errorIn('a')).toBe('These use each other: a → b → c → a.');
    expect(sheet.errorIn('c')).toBe('These use each other: c → a → b → c.');
    expect(sheet.errorIn('d')).toBe('Needs a.');
  });

  test('a cell of a circle that is renamed is named again by all the others', async () => {
    const [a, b, c] = [formula('a', 'b * 2'), formula('b', 'c + 1'), formula('c', 'a')];
    const sheet = await worked(a, b, c);
    await sheet.show(notebookOf([{ ...a, formula: 'q * 2' }, { ...b, name: 'q' }, c]));
    expect(sheet.errorIn('c')).toBe('These use each other: c → a → q → c.');
  });

  test('a cell uses itself', async () => {
    expect((await worked(formula('a', 'a + 1'))).errorIn('a')).toBe('a uses itself.');
  });

  test('opened in one place a circle is gone everywhere', async () => {
    const b = formula('b', 'a + 1');
    const sheet = await worked(formula('a', 'b * 2'), b);
    await sheet.show(notebookOf([formula('a', '3'), b]));
    expect(sheet.number('a')).toBe(3);
    expect(sheet.number('b')).toBe(4);
  });
});

describe('what cannot be read as a formula', () => {
  test.each([
    ['bust +', 'Something is missing after +.'],
    ['', 'The formula is empty'],
    ['bust bust', 'An operator such as + or * is missing before bust.'],
    ['(bust', 'This bracket is not closed'],
    ['{1; 2}', 'Lists in { } are not used here'],
    ['A1:B2', 'A range is not used here'],
    ['$A$1', 'Cells are called by their names here'],
    ['RAND()', 'There is no function RAND here'],
    ['OFFSET(bust; 1; 1)', 'There is no function OFFSET here'],
    ['EW.NOTHING()', 'has no place in a formula'],
    ['CM(1; 2)', 'CM takes number in its brackets'],
    ['10%%', 'One % is enough here.'],
    ['1e999', 'too large'],
    ['#REF!', 'has no place in a formula'],
  ])('%s', async (text, sentence) => {
    expect(await valueOf(text, bust)).toContain(sentence);
  });
});

describe('what an input takes', () => {
  const withMultiple = (entry: RepeatFit['multiple']): Cell[] => [
    bust,
    finished,
    swatch('body', 14, 16),
    { ...back, multiple: entry },
  ];

  test('a typed value that is not whole is told', async () => {
    const sheet = await worked(...withMultiple({ value: 2.5 }));
    expect(sheet.errorIn('back', 'multiple')).toBe('Multiple of must be a whole number.');
    expect(sheet.errorIn('back', 'count')).toBe('Needs Back stitches: multiple of.');
  });

  test('a formula’s result that is not whole is told with what it is', async () => {
    const sheet = await worked(...withMultiple({ formula: '5 / 2' }));
    expect(sheet.errorIn('back', 'multiple')).toBe('Multiple of must be a whole number. This is 2.5.');
    expect(sheet.errorIn('back', 'count')).toBe('Needs Back stitches: multiple of.');
  });

  test('a formula’s result that is too small is told with what it is', async () => {
    const sheet = await worked(...withMultiple({ formula: '4 - 4' }));
    expect(sheet.errorIn('back', 'multiple')).toBe('Multiple of must be at least 1. This is 0.');
  });

  test('the dust of floating point is taken for the whole number it is', async () => {
    // 45 × 1.4 ÷ 7 is 8.999999999999998.
    const sheet = await worked(...withMultiple({ formula: '45 * 1.4 / 7' }));
    expect(sheet.number('back', 'multiple')).toBe(9);
  });
});

describe('values of a size', () => {
  const sizes = [
    { id: 's', label: 'S', chart: { name: 'woman', size: 'S' } },
    { id: 'm', label: 'M' },
    { id: 'l', label: 'L', chart: { name: 'woman', size: 'nowhere' } },
  ] as const;

  test('a chart gives the middle of its range in cm, unless the size has a value of its own', async () => {
    // Craft Yarn Council chart as remembered: woman S, bust 32 to 34 in.
    const chart = { chart: 'bust', point: 'middle', own: { m: 92 } } as const;
    const { results } = await new Worked().show(notebookOf([measure('bust', 'length', chart)], sizes));
    expect(results.number('s', 'bust', 'value')).toBeCloseTo(33 * 2.54, 12);
    expect(results.number('m', 'bust', 'value')).toBe(92);
    expect(results.error('l', 'bust', 'value')?.message).toContain('There is no size in the woman');
  });

  test('a size that follows no chart needs a value', async () => {
    const chart = { chart: 'bust', point: 'lower' } as const;
    const { results } = await new Worked().show(notebookOf([measure('bust', 'length', chart)], sizes));
    expect(results.error('m', 'bust', 'value')?.message).toBe(
      'This size follows no body chart: type a value.',
    );
  });

  test('a value for each size may be missing in one', async () => {
    const { results } = await new Worked().show(
      notebookOf([measure('bust', 'length', { each: { s: 84, m: null } })], sizes),
    );
    expect(results.number('s', 'bust', 'value')).toBe(84);
    expect(results.error('m', 'bust', 'value')?.message).toBe(
      'Bust is empty: type a value, or = and a formula.',
    );
    expect(results.error('l', 'bust', 'value')?.message).toBe(
      'Bust is empty: type a value, or = and a formula.',
    );
  });
});

describe('names', () => {
  test('a renamed cell is found under its new name, in whatever case, and no longer under the old', async () => {
    const sheet = await worked(bust, formula('half', 'bust / 2'));
    await sheet.show(notebookOf([{ ...bust, name: 'chest' }, formula('half', 'bust / 2')]));
    expect(sheet.errorIn('half')).toBe('There is no cell called bust.');
    await sheet.show(notebookOf([{ ...bust, name: 'chest' }, formula('half', 'Chest / 2')]));
    expect(sheet.number('half')).toBe(45);
  });

  test('two cells may exchange their names', async () => {
    const [a, b] = [measure('a', 'number', 1), measure('b', 'number', 2)];
    const sheet = await worked(a, b, formula('c', 'a * 10 + b'));
    expect(sheet.number('c')).toBe(12);
    await sheet.show(notebookOf([{ ...a, name: 'b' }, { ...b, name: 'a' }, formula('c', 'a * 10 + b')]));
    expect(sheet.number('c')).toBe(21);
  });

  test('a name that two cells claim stands for neither', async () => {
    const sheet = await worked(bust, { ...bust, id: 'other' }, formula('half', 'bust / 2'));
    expect(sheet.errorIn('half')).toBe('More than one cell is called bust: rename all but one of them.');
  });

  test('what waits for a cell calls it by its label of the moment', async () => {
    const empty = measure('bust', 'length', null);
    const sheet = await worked(empty, formula('half', 'bust / 2'));
    await sheet.show(notebookOf([{ ...empty, label: 'Chest' }, formula('half', 'bust / 2')]));
    expect(sheet.errorIn('bust')).toBe('Chest is empty: type a value, or = and a formula.');
    expect(sheet.errorIn('half')).toBe('Needs Chest.');
  });
});

describe('a cell set aside', () => {
  test('keeps its formulas unworked until it is changed', async () => {
    const cells = [formula('a', '1 + 1'), formula('b', 'a * 2')];
    const sheet = await new Worked().show(notebookOf(cells), ['a']);
    expect(sheet.errorIn('a')).toContain('This takes too long');
    expect(sheet.errorIn('b')).toBe('Needs a.');
    await sheet.show(notebookOf([formula('a', '1 + 2'), cells[1]!]));
    expect(sheet.number('b')).toBe(6);
  });

  test('without a formula keeps its value to itself', async () => {
    const sheet = await new Worked().show(notebookOf([measure('a', 'number', 1), formula('b', 'a * 2')]), [
      'a',
    ]);
    expect(sheet.errorIn('a')).toContain('With this value');
    expect(sheet.errorIn('b')).toBe('Needs a.');
  });
});
