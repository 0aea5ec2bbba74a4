import { expect, test } from 'vitest';
import { changesBetween } from '../../src/notebook/changes';
import type { Notebook, PieceCell } from '../../src/notebook/document';
import { Results } from '../../src/engine/results';
import { WorkedSheet } from '../../src/engine/sheet';
import { allChanges } from './all-changes';
import { formula, measure, notebookOf, swatch } from './notebook-of';

const sizes = ['s', 'm', 'l'].map((id) => ({ id, label: id }));
const bust = measure('bust', 'length', { each: { s: 84, m: 94, l: 104 } });
const rest = [formula('half', 'bust / 2'), formula('sts', 'half * body_sts'), formula('apart', 'CM(3) * 2')];

test('an edit tells the results it changes and no others', async () => {
  const sheet = new WorkedSheet();
  const first = notebookOf([bust, swatch('body', 14, 16), ...rest], sizes);
  const opened = await sheet.update(changesBetween(null, first));
  const next = notebookOf([bust, swatch('body', 15, 16), ...rest], sizes);
  const answer = await sheet.update(changesBetween(first, next));
  const seen = new Set<string>();
  for (let i = 1; i < answer.numbers.length; i += 3)
    seen.add(Object.values(opened.slots[answer.numbers[i]!]!).join(' '));
  expect([...seen].sort()).toEqual(['body sts', 'body sts.0.count', 'sts value']);
  expect(answer.texts).toHaveLength(sizes.length);
  expect([answer.slots, answer.gone, answer.errors, answer.units]).toEqual([[], [], [], []]);
});

test('an edit in one size leaves the others alone', async () => {
  const sheet = new WorkedSheet();
  const first = notebookOf([bust, swatch('body', 14, 16), ...rest], sizes);
  await sheet.update(changesBetween(null, first));
  const wider = measure('bust', 'length', { each: { s: 84, m: 95, l: 104 } });
  const answer = await sheet.update(
    changesBetween(first, notebookOf([wider, ...first.sections[0]!.cells.slice(1)], sizes)),
  );
  const inSizes = answer.numbers.filter((_, index) => index % 3 === 0);
  expect([...new Set(inSizes)]).toEqual([1]);
  expect(answer.numbers).toHaveLength(3 * 3);
});

test('nothing changed, nothing told', async () => {
  const sheet = new WorkedSheet();
  const notebook = notebookOf([bust, ...rest], sizes);
  await sheet.update(changesBetween(null, notebook));
  const answer = await sheet.update(changesBetween(notebook, { ...notebook, title: 'Another' }));
  expect(answer.numbers).toHaveLength(0);
  expect(answer.errors).toHaveLength(0);
});

test('a size that is added is worked whole, and the others are not told again', async () => {
  const sheet = new WorkedSheet();
  const few = notebookOf([bust, swatch('body', 14, 16), ...rest], sizes.slice(0, 2));
  await sheet.update(changesBetween(null, few));
  const answer = await sheet.update(changesBetween(few, { ...few, sizes }));
  const results = new Results();
  results.apply(await new WorkedSheet().update(changesBetween(null, { ...few, sizes })));
  expect([...new Set(answer.numbers.filter((_, index) => index % 3 === 0))]).toEqual([2]);
  expect(answer.numbers).toContain(results.number('l', 'sts', 'value'));
});

test('a sheet that has seen thousands of inputs come and go begins again and tells the same', async () => {
  const piece: PieceCell = {
    kind: 'piece',
    id: 'back',
    label: 'Back',
    name: 'back',
    worked: 'flat',
    start: { value: 40 },
    ends: 'held',
    stretches: [{ kind: 'even', name: 'rib', label: 'Rib', fabric: 'body', rows: { value: 8 } }],
  };
  const without = notebookOf([bust, swatch('body', 14, 16), ...rest], sizes.slice(0, 1));
  const sheet = new WorkedSheet();
  const results = new Results();
  let before: Notebook | null = null;
  let beginnings = 0;
  for (let i = 0; i < 520; i++) {
    const next: Notebook =
      i % 2 === 0 ? without : notebookOf([...without.sections[0]!.cells, piece], without.sizes);
    const hold: string[] = i === 1 ? ['half'] : [];
    const answer = await sheet.update(changesBetween(before, next), hold);
    results.apply(answer);
    if (answer.firstSlot === 0) beginnings++;
    before = next;
  }
  expect(beginnings).toBe(2);
  const fresh = new Results();
  fresh.apply(await new WorkedSheet().update(changesBetween(null, before!), ['half']));
  expect(allChanges(results, before!)).toEqual(allChanges(fresh, before!));
  expect(results.error('s', 'sts', 'value')?.message).toBe('Needs half.');
});
