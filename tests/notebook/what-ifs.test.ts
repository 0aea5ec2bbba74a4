import { describe, expect, test } from 'vitest';
import {
  readFile,
  withChanges,
  withWhatIf,
  writeFile,
  type Change,
  type Edit,
  type Notebook,
  type WhatIf,
} from '../../src/notebook';
import { formula, measure, notebookOf } from '../engine/notebook-of';
import { edited, refusal } from './edited';

const change = (more: Partial<Change> = {}): Change => ({
  cell: 'bust',
  key: 'value',
  size: null,
  value: 96,
  ...more,
});
const whatIf = (id: string, changes: readonly Change[] = [change()], on = true): WhatIf => ({
  id,
  name: `What if ${id}`,
  on,
  changes,
});
const sizes = ['s', 'm'].map((id) => ({ id, label: id }));
const plain = notebookOf(
  [
    measure('bust', 'length', { each: { s: 80, m: 90 } }),
    formula('half', 'bust / 2'),
    formula('own', 'half * 2'),
  ],
  sizes,
);

const add = (of: WhatIf): Edit => ({ do: 'add what-if', whatIf: of });
const bustOf = (notebook: Notebook) => notebook.sections[0]!.cells[0];

describe('a notebook under a what-if', () => {
  test('has the changes made, shares every cell they leave alone, and is another than the notebook', () => {
    const changed = withWhatIf(plain, whatIf('a'));
    expect(bustOf(changed)).toMatchObject({ entry: { value: 96 } });
    expect(bustOf(plain)).toMatchObject({ entry: { each: { s: 80, m: 90 } } });
    expect(changed.sections[0]!.cells[1]).toBe(plain.sections[0]!.cells[1]);
  });

  test('has a value for one size in that size only', () => {
    expect(bustOf(withWhatIf(plain, whatIf('a', [change({ size: 'm' })])))).toMatchObject({
      entry: { each: { s: 80, m: 96 } },
    });
  });

  test('has a formula instead of a value, or of an own one', () => {
    const formulas = withWhatIf(
      plain,
      whatIf('a', [
        { cell: 'bust', key: 'value', size: null, formula: 'CM(99)' },
        { cell: 'half', key: 'value', size: null, formula: 'bust / 3' },
      ]),
    );
    expect(bustOf(formulas)).toMatchObject({ entry: { formula: 'CM(99)' } });
    expect(formulas.sections[0]!.cells[1]).toMatchObject({ formula: 'bust / 3' });
  });

  test.each([
    ['a cell that was deleted', change({ cell: 'lost' }), 'no longer in the notebook'],
    ['a part that is gone', change({ key: 'lost' }), 'no longer in its cell'],
    ['a size that was removed', change({ size: 'xl' }), 'size this changes is no longer'],
    [
      'a value in place of a formula in one size',
      change({ cell: 'half', size: 's' }),
      'A formula works this out',
    ],
  ])('says of %s that it cannot be changed, and makes the others', (_what, wrong, sentence) => {
    const { notebook, refused } = withChanges(plain, [wrong, change({ value: 97 })]);
    expect(refused.map((one) => one.sentence).join()).toContain(sentence);
    expect(refused).toHaveLength(1);
    expect(bustOf(notebook)).toMatchObject({ entry: { value: 97 } });
  });
});

describe('edits of what-ifs', () => {
  test('add, rename, switch and remove them', () => {
    const added = edited(plain, add(whatIf('a')), add(whatIf('b')));
    expect(added.whatIfs?.map(({ name }) => name)).toEqual(['What if a', 'What if b']);
    const changed = edited(
      added,
      { do: 'rename what-if', whatIf: 'a', name: '  7.5 mm hook ' },
      { do: 'switch what-if', whatIf: 'b', on: false },
    );
    expect(changed.whatIfs).toMatchObject([
      { name: '7.5 mm hook', on: true },
      { name: 'What if b', on: false },
    ]);
    const gone = edited(
      changed,
      { do: 'remove what-if', whatIf: 'a' },
      { do: 'remove what-if', whatIf: 'b' },
    );
    expect(gone).toEqual(plain);
    expect(changed.sections).toBe(plain.sections);
  });

  test('put a change instead of the one for the same value, and all sizes instead of one', () => {
    const changed = edited(
      plain,
      add(whatIf('a', [])),
      { do: 'change what-if', whatIf: 'a', change: change({ size: 's' }) },
      { do: 'change what-if', whatIf: 'a', change: change({ size: 'm', value: 3 }) },
      { do: 'change what-if', whatIf: 'a', change: change({ size: 's', value: 4 }) },
    );
    expect(changed.whatIfs![0]!.changes).toEqual([
      change({ size: 's', value: 4 }),
      change({ size: 'm', value: 3 }),
    ]);
    const all = edited(changed, { do: 'change what-if', whatIf: 'a', change: change({ value: 5 }) });
    expect(all.whatIfs![0]!.changes).toEqual([change({ value: 5 })]);
    expect(
      edited(all, { do: 'take out of what-if', whatIf: 'a', change: change() }).whatIfs![0]!.changes,
    ).toEqual([]);
  });

  test('making one the notebook makes its changes and takes it out of the list', () => {
    const made = edited(plain, add(whatIf('a')), add(whatIf('b')), { do: 'make what-if', whatIf: 'a' });
    expect(made.sections).toEqual(withWhatIf(plain, whatIf('a')).sections);
    expect(made.whatIfs?.map(({ id }) => id)).toEqual(['b']);
  });

  test('refuse what cannot be', () => {
    const four = edited(plain, ...['a', 'b', 'c', 'd'].map((id) => add(whatIf(id))));
    expect(refusal(four, add(whatIf('e')))).toContain('switch one off first');
    const fifth = edited(four, add(whatIf('e', [], false)));
    expect(refusal(fifth, { do: 'switch what-if', whatIf: 'e', on: true })).toContain('switch one off first');
    expect(refusal(four, add(whatIf('a', [], false)))).toContain('in the notebook already');
    expect(refusal(four, { do: 'rename what-if', whatIf: 'a', name: ' ' })).toContain('needs a name');
    expect(refusal(four, { do: 'remove what-if', whatIf: 'z' })).toContain('no longer');
    expect(refusal(four, { do: 'change what-if', whatIf: 'a', change: change({ cell: 'lost' }) })).toContain(
      'no longer in the notebook',
    );
    const lost = edited(plain, add(whatIf('a', [change({ cell: 'lost' })])));
    expect(refusal(lost, { do: 'make what-if', whatIf: 'a' })).toContain('no longer in the notebook');
  });

  test('renaming a cell renames it in the formulas of what-ifs, and leaves the other what-ifs themselves', () => {
    const named = whatIf('a', [{ cell: 'own', key: 'value', size: null, formula: 'bust + half' }]);
    const notebook = edited(plain, add(named), add(whatIf('b')));
    const renamed = edited(notebook, { do: 'rename', cell: 'half', name: 'half_bust' });
    expect(renamed.whatIfs![0]!.changes[0]!.formula).toBe('bust + half_bust');
    expect(renamed.whatIfs![1]).toBe(notebook.whatIfs![1]);
  });
});

describe('a file', () => {
  const notebook = edited(
    plain,
    add(whatIf('a', [change(), { cell: 'own', key: 'value', size: null, formula: 'half' }])),
  );
  const read = (change: (data: { notebook: { whatIfs: Record<string, unknown>[] } }) => void): unknown => {
    const data = JSON.parse(writeFile(notebook)) as Parameters<typeof change>[0];
    change(data);
    return readFile(JSON.stringify(data));
  };

  test('keeps what-ifs', () => {
    expect(read(() => {})).toEqual({ notebook });
  });

  test.each([
    ['two with one id', (list: Record<string, unknown>[]) => list.push(list[0]!)],
    [
      'a change with a value and a formula',
      (list: Record<string, unknown>[]) => {
        list[0]!['changes'] = [{ ...change(), formula: 'bust' }];
      },
    ],
    [
      'a change with neither',
      (list: Record<string, unknown>[]) => {
        list[0]!['changes'] = [{ cell: 'bust', key: 'value', size: null }];
      },
    ],
    [
      'a value that is no number',
      (list: Record<string, unknown>[]) => {
        list[0]!['changes'] = [{ ...change(), value: '96' }];
      },
    ],
    [
      'five that are on',
      (list: Record<string, unknown>[]) => {
        for (let i = 0; i < 4; i++) list.push({ ...list[0]!, id: `more ${i}` });
      },
    ],
  ])('with %s is refused', (_what, damage) => {
    expect(read(({ notebook: { whatIfs } }) => void damage(whatIfs))).toMatchObject({
      problem: expect.stringContaining('damaged'),
    });
  });
});
