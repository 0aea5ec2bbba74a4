import { expect, test } from 'vitest';
import { sentence } from '../../src/craft';
import { allCells, cellById, type Change, type Notebook } from '../../src/notebook';
import type { Checked } from '../../src/engine';
import { Workspace } from '../../src/workspace/workspace.svelte';
import { openFile } from '../../src/features/notebooks/open-file';
import { paste } from '../../src/features/grid/clipboard';
import { formula, measure, notebookOf } from '../engine/notebook-of';
import { until } from '../until';

/** A workspace whose sheet answers a question when it is told to; and how often it was asked. */
function slowWorkspace(notebook: Notebook) {
  const waiting: ((checked: Checked) => void)[] = [];
  const workspace = new Workspace(notebook, () => ({
    show() {},
    check: () => new Promise<Checked>((answer) => waiting.push(answer)),
    trials: () => Promise.reject(new Error('Not here.')),
    followWhatIfs: () => Promise.resolve(() => {}),
    settled: true,
  }));
  const answer = async (checked: Checked = { unit: {} }): Promise<void> => {
    await until(() => expect(waiting).not.toHaveLength(0));
    waiting.shift()!(checked);
  };
  return { workspace, answer, waiting };
}

const titled = (title: string): Notebook => ({
  ...notebookOf([measure('a', 'number', 1), formula('b', 'a * 2'), measure('c', 'number', 5)]),
  title,
});
const entryOf = (workspace: Workspace, id: string): unknown => {
  const cell = cellById(workspace.notebook, id)!;
  return cell.kind === 'measure' ? cell.entry : cell.kind === 'formula' ? cell.formula : undefined;
};

test('a formula that was being checked when another notebook was opened lands in neither, and that is told', async () => {
  const { workspace, answer } = slowWorkspace(titled('Jacket'));
  const entering = workspace.formulas.enter('a', 'value', '= c + 1');
  const other = titled('Cardigan');
  workspace.document.begin(other);
  await answer();
  const why = '"= c + 1" was not entered: it was for Jacket, which is no longer open. Open it and try again.';
  expect(await entering).toBe(why);
  expect(workspace.complaint).toBe(why);
  expect(workspace.notebook).toBe(other);
});

test('nor does one that was to be put instead of a cell’s own', async () => {
  const { workspace, answer } = slowWorkspace(titled('Jacket'));
  const taking = workspace.formulas.takeOver('b', 'value', '= c + 1');
  const other = titled('Cardigan');
  workspace.document.begin(other);
  await answer({ problem: sentence('Wrong.') });
  expect(await taking).toContain('was for Jacket');
  expect(workspace.notebook).toBe(other);
});

test('nor in a notebook that is looked at, or in the one gone back to', async () => {
  const { workspace, answer } = slowWorkspace(titled('Jacket'));
  const mine = workspace.notebook;
  const looked = titled('Yesterday');
  const entering = workspace.formulas.enter('a', 'value', '= c + 1');
  workspace.document.preview(looked);
  await answer();
  expect(await entering).toContain('was for Jacket');
  expect(workspace.notebook).toBe(looked);
  const meanwhile = workspace.formulas.enter('a', 'value', '= c + 2');
  workspace.document.exitPreview();
  await answer();
  expect(await meanwhile).toContain('was for Yesterday');
  expect(workspace.notebook).toBe(mine);
});

test('one whose notebook was changed elsewhere meanwhile is checked again, and entered', async () => {
  const { workspace, answer, waiting } = slowWorkspace(titled('Jacket'));
  const entering = workspace.formulas.enter('a', 'value', '= c + 1');
  await until(() => expect(waiting).toHaveLength(1));
  workspace.do({ do: 'give', cell: 'c', key: 'value', size: null, value: 7 });
  await answer({ problem: sentence('Of the notebook as it was.') });
  await answer();
  expect(await entering).toBeUndefined();
  expect(waiting).toEqual([]);
  expect(entryOf(workspace, 'a')).toEqual({ formula: 'c + 1' });
  expect(entryOf(workspace, 'c')).toEqual({ value: 7 });
});

test('one for a value that was changed meanwhile is not put over it', async () => {
  const { workspace, answer, waiting } = slowWorkspace(titled('Jacket'));
  const entering = workspace.formulas.enter('a', 'value', '= c + 1');
  await until(() => expect(waiting).toHaveLength(1));
  workspace.do({ do: 'give', cell: 'a', key: 'value', size: null, value: 7 });
  await answer();
  await answer();
  expect(await entering).toBe(
    '"a" was changed meanwhile, so this was not entered. Look at it and try again.',
  );
  expect(entryOf(workspace, 'a')).toEqual({ value: 7 });
});

test('an edit made of several is refused whole where one of them was prepared for something else', () => {
  const { workspace } = slowWorkspace(titled('Jacket'));
  const start = workspace.document.startState;
  workspace.do({ do: 'give', cell: 'a', key: 'value', size: null, value: 7 });
  const give = (cell: string) => ({ do: 'give', cell, key: 'value', size: null, value: 9 }) as const;
  const before = workspace.notebook;
  expect(workspace.do({ do: 'several', edits: [give('c'), give('a')], what: 'two' }, start)).toContain(
    '"a" was changed',
  );
  expect(workspace.notebook).toBe(before);
  expect(workspace.do({ do: 'several', edits: [give('c')], what: 'one' }, start)).toBeUndefined();
  expect(workspace.do(give('a'), workspace.document.open)).toBeUndefined();
});

test('a change to a what-if is not put in one that was changed meanwhile', () => {
  const { workspace } = slowWorkspace(titled('Jacket'));
  const change: Change = { cell: 'a', key: 'value', size: null, value: 3 };
  workspace.do({ do: 'add what-if', whatIf: { id: 'w', name: 'W', on: false, changes: [] } });
  const start = workspace.document.startState;
  workspace.do({ do: 'rename what-if', whatIf: 'w', name: 'V' });
  expect(workspace.do({ do: 'change what-if', whatIf: 'w', change }, start)).toContain('changed meanwhile');
});

test('what was pasted in a notebook does not land in the next', async () => {
  const { workspace } = slowWorkspace(titled('Jacket'));
  const pasting = paste(workspace, { cell: 'a', key: 'value', size: 'm' }, '12');
  const other = titled('Cardigan');
  workspace.document.begin(other);
  await pasting;
  expect(workspace.notebook).toBe(other);
  expect(workspace.complaint).toContain('Nothing was pasted: Jacket is no longer open');
});

test('a file that is read slowly does not replace the notebook opened meanwhile, nor the file picked after it', async () => {
  const { workspace } = slowWorkspace(titled('Jacket'));
  const file = (title: string, text: Promise<string>): File =>
    Object.assign(new File(['x'], `${title}.json`), { text: () => text });
  const textOf = (title: string): string => new Workspace(titled(title), () => slow).document.file();
  let read = (_text: string): void => {};
  const slowly = new Promise<string>((resolve) => (read = resolve));
  const first = openFile(workspace, file('First', slowly));
  await openFile(workspace, file('Second', Promise.resolve(textOf('Second'))));
  read(textOf('First'));
  await first;
  expect([workspace.notebook.title, workspace.complaint]).toEqual(['Second', null]);

  const third = openFile(workspace, file('Third', Promise.resolve(textOf('Third'))));
  workspace.document.begin(titled('Cardigan'));
  await third;
  expect(workspace.notebook.title).toBe('Cardigan');
  expect(workspace.complaint).toBe(
    'Third.json was not opened, since you opened another notebook meanwhile. Pick it again.',
  );
  expect(allCells(workspace.notebook)).toHaveLength(3);
});

const slow = {
  show() {},
  check: () => new Promise<Checked>(() => {}),
  trials: () => Promise.reject(new Error('Not here.')),
  followWhatIfs: () => Promise.resolve(() => {}),
  settled: true,
};
