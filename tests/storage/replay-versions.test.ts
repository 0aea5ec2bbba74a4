import { beforeEach, describe, expect, it, vi } from 'vitest';
import {
  Journal,
  journalKey,
  journalKeys,
  journalled,
  memoryStore,
  recover,
  replay,
  writtenOf,
  type JournalEntry,
  type Stored,
} from '../../src/storage';
import { patchBetween } from '../../src/storage/patch';
import { allCells, readFile, writeFile, type Cell, type Notebook } from '../../src/notebook';
import { fileVersion } from '../../src/notebook/file-head';
import { findOn } from '../../src/features/notebooks/in-store';
import { edited } from '../notebook/edited';
import { vNeck } from '../notebooks/v-neck';
import { MapStorage } from './journal-storage';

/*
 * The step from version 1 to 2 changes nothing, so it is another one here: it notes on every cell, once more each time it
 * is taken, how many cells it found, and marks the title. What was brought to version 2 once, twice or never can then be
 * told apart, and a whole notebook from a part of one.
 */
vi.mock('../../src/notebook/migrations', async (original) => {
  const real = await original<typeof import('../../src/notebook/migrations')>();
  const step = (file: Record<string, unknown>) => {
    const notebook = file['notebook'] as Notebook;
    const many = notebook.sections.flatMap(({ cells }) => cells).length;
    const inWords = (cell: Cell): Cell => ({ ...cell, note: `${cell.note ?? ''}+${many}` });
    const sections = notebook.sections.map((one) => ({ ...one, cells: one.cells.map(inWords) }));
    return { ...file, notebook: { ...notebook, title: `${notebook.title}+`, sections } };
  };
  const steps = { 1: step };
  const migrated: typeof real.migrated = (file, version, _steps, to) =>
    real.migrated(file, version, steps, to);
  return { ...real, migrations: steps, migrated };
});

let storage: MapStorage;
beforeEach(() => {
  storage = new MapStorage();
});

const plain = (): Notebook => {
  const notebook = vNeck();
  const sections = notebook.sections.map((section) => ({
    ...section,
    cells: section.cells.map(({ note: _note, ...cell }) => cell as Cell),
  }));
  return { ...notebook, sections };
};
const neck = (value: number, notebook: Notebook): Notebook =>
  edited(notebook, { do: 'give', cell: 'neck-width', key: 'value', size: 'm', value });
const titled = (title: string, notebook: Notebook): Notebook => edited(notebook, { do: 'retitle', title });
const noted = (notebook: Notebook | null) => new Set(allCells(notebook!).map(({ note = '' }) => note));
const neckIn = (notebook: Notebook | null) =>
  allCells(notebook!).find(({ id }) => id === 'neck-width') as unknown as { entry: { each: object } };
const whole = () => new Set([`+${allCells(plain()).length}`]);
const chains = () => journalled(storage).get('a') ?? [];

/** The text of a file of version 1. */
const textOfOne = (notebook: Notebook): string =>
  writeFile(notebook).replace(`"version": ${fileVersion}`, '"version": 1');

/** What the store holds in a text. */
function storedAs(text: string, revision: number, more: Partial<Stored> = {}): Stored {
  const read = readFile(text);
  if ('problem' in read) throw new Error(read.problem);
  return { notebook: read.notebook, text, revision, ...more };
}

function put(writer: string, number: number, entry: Partial<Record<keyof JournalEntry, unknown>>): void {
  storage.setItem(journalKey('a', writer, number), JSON.stringify({ version: 1, at: number, ...entry }));
}

describe('an edit in the journal', () => {
  it('says the version of the file in whose form its cells are', () => {
    new Journal('a', plain(), { revision: 4 }, storage).note(titled('One', plain()));
    const [key] = journalKeys(storage);
    expect(JSON.parse(storage.getItem(key!)!)).toMatchObject({ version: 1, file: fileVersion });
  });

  it('of an older version is made on the text as it was, and the whole is brought to this version, once', () => {
    const base = plain();
    put('w', 1, { file: 1, over: 4, patch: patchBetween(base, neck(25, base)) });
    put('w', 2, { file: 1, patch: patchBetween(base, titled('Two', base)) });
    const { notebook, made, unread } = replay(storedAs(textOfOne(base), 4), chains());
    expect([made, unread]).toEqual([{ w: 2 }, false]);
    expect(notebook?.title).toBe('Two+');
    expect(neckIn(notebook).entry.each).toMatchObject({ m: 25 });
    expect(noted(notebook)).toEqual(whole());
  });

  it('of this version is made on an older text once that is brought to this version', () => {
    const text = textOfOne(plain());
    const read = storedAs(text, 4);
    const { notebook: base } = read;
    put('w', 1, { file: 2, over: 4, patch: patchBetween(base, neck(25, base)) });
    const { notebook } = replay(read, chains());
    expect(neckIn(notebook).entry.each).toMatchObject({ m: 25 });
    expect(noted(notebook)).toEqual(whole());
    expect(notebook?.title).toBe(`${plain().title}+`);
  });

  it('that does not say its version is of version 2', () => {
    const read = storedAs(textOfOne(plain()), 4);
    put('w', 1, { over: 4, patch: patchBetween(read.notebook, neck(25, read.notebook)) });
    expect(noted(replay(read, chains()).notebook)).toEqual(whole());
  });

  it('of an older version, gone on with by a window of that and then of this version, is brought here once', () => {
    const base = plain();
    const one = neck(25, base);
    const two = neck(26, one);
    put('v', 1, { file: 1, over: 4, patch: patchBetween(base, one) });
    put('w', 1, { file: 1, over: 4, replayed: { v: 1 }, patch: patchBetween(one, two) });
    const stored = storedAs(textOfOne(base), 4);
    const { notebook: seen, made } = replay(stored, chains());
    put('x', 1, { file: 2, over: 4, replayed: made, patch: patchBetween(seen, titled('Three', seen!)) });
    const { notebook, apart } = replay(stored, chains());
    expect([notebook?.title, apart]).toEqual(['Three', []]);
    expect(neckIn(notebook).entry.each).toMatchObject({ m: 26 });
    expect(noted(notebook)).toEqual(whole());
  });

  it('of an older version that a later one has gone past stands apart, its cells brought to this version', () => {
    const base = plain();
    put('w', 1, { file: 1, over: 4, patch: patchBetween(base, titled('Mine', neck(25, base))) });
    const theirs = storedAs(writeFile(base), 6, { edits: { by: 'another', upTo: 1 } });
    const { notebook, apart } = replay(theirs, chains());
    expect(notebook).toEqual(base);
    expect(apart.map(({ title }) => title)).toEqual(['Mine+']);
    expect(neckIn(apart[0]!)).toMatchObject({ note: '+1', entry: { each: { m: 25 } } });
    // The others are as the later version wrote them.
    expect(noted(apart[0]!)).toEqual(new Set(['', '+1']));
  });

  it('of an older version that made a notebook the store does not hold is brought to this version', () => {
    put('w', 1, { file: 1, over: 0, patch: patchBetween(null, plain()) });
    expect(noted(replay(null, chains()).notebook)).toEqual(whole());
  });

  it.each([
    ['a newer version of the file', { file: fileVersion + 1 }],
    ['a newer form of the journal', { version: 2 }],
  ])('of %s is left in the journal, and it is said', async (_what, newer) => {
    const base = plain();
    put('w', 1, { over: 1, patch: patchBetween(base, neck(25, base)), ...newer });
    put('v', 1, { over: 1, patch: patchBetween(base, titled('Ours', base)) });
    const {
      notebook,
      made,
      unread,
      newer: isReported,
      keys,
    } = replay(storedAs(writeFile(base), 1), chains());
    expect([notebook?.title, made, unread, isReported]).toEqual(['Ours', { v: 1 }, false, true]);
    expect(keys).toEqual([journalKey('a', 'v', 1)]);
    expect(neckIn(notebook)).toEqual(neckIn(base));

    vi.stubGlobal('localStorage', storage);
    const store = memoryStore();
    await store.write('a', writtenOf(base), 0, { now: 1, remember: false });
    expect(await recover(store, 'a', chains())).toEqual({ apart: [], newer: 'Ours' });
    expect(journalKeys(storage)).toEqual([journalKey('a', 'w', 1)]);
    vi.unstubAllGlobals();
  });

  it('is made on the text of the store as it was, by whoever asks the store for it', async () => {
    vi.stubGlobal('localStorage', storage);
    const base = plain();
    put('w', 1, { file: 1, over: 1, patch: patchBetween(base, neck(25, base)) });
    const store = memoryStore();
    await store.write('a', { ...writtenOf(base), text: textOfOne(base) }, 0, { now: 1, remember: false });
    const found = await findOn(store, 'a');
    expect(noted(found && 'notebook' in found ? found.notebook : null)).toEqual(whole());
    await recover(store, 'a', chains());
    const kept = readFile((await store.read('a'))!.text);
    expect(noted('notebook' in kept ? kept.notebook : null)).toEqual(whole());
    vi.unstubAllGlobals();
  });

  it.each([0, 1.5, '2', null])('whose version is %j is damaged', (file) => {
    const base = plain();
    put('w', 1, { file, over: 4, patch: patchBetween(base, neck(25, base)) });
    expect(replay(storedAs(writeFile(base), 4), chains())).toMatchObject({ unread: true, newer: false });
  });
});
