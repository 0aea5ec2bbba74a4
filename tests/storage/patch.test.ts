import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isEmptyPatch, patchBetween, type NotebookPatch } from '../../src/storage/patch';
import { patched } from '../../src/storage/patched';
import { allCells, apply, begin, advance, redo, undo, type Edit, type Notebook } from '../../src/notebook';
import { adaptedPullover, cardigan } from '../../src/starters';
import { cells, entries, sizes } from '../engine/random-cells';
import { edited } from '../notebook/edited';

/** As it comes back from a text. */
const asText = <Data>(data: Data): Data => JSON.parse(JSON.stringify(data)) as Data;

/** Anything a person may do, in places that are picked from what is there. */
const at = fc.nat(1000);
const pick = <One>(list: readonly One[], number: number): One => list[number % list.length]!;
type Act = (notebook: Notebook) => Edit;
const acts: fc.Arbitrary<Act> = fc.oneof(
  fc.tuple(at, fc.double({ noNaN: true, min: 1, max: 99 })).map(([where, value]): Act => (notebook) => ({
    do: 'give',
    cell: pick(allCells(notebook), where).id,
    key: 'value',
    size: null,
    value,
  })),
  fc.tuple(at, entries).map(([where, entry]): Act => (notebook) => ({
    do: 'enter',
    cell: pick(allCells(notebook), where).id,
    key: 'value',
    entry,
  })),
  fc.tuple(at, fc.string({ minLength: 1, maxLength: 12 })).map(([where, label]): Act => (notebook) => ({
    do: 'relabel',
    cell: pick(allCells(notebook), where).id,
    label,
  })),
  fc.tuple(at, at, cells).map(([where, index, cell]): Act => (notebook) => ({
    do: 'add cell',
    section: pick(notebook.sections, where).id,
    at: index % 5,
    cell: { ...cell, id: `new ${where} ${index}` },
  })),
  at.map((where): Act => (notebook) => ({ do: 'remove cell', cell: pick(allCells(notebook), where).id })),
  fc.tuple(at, at).map(([where, id]): Act => (notebook) => ({
    do: 'duplicate cell',
    cell: pick(allCells(notebook), where).id,
    id: `copy ${id}`,
  })),
  fc.tuple(at, at, at).map(([where, to, index]): Act => (notebook) => ({
    do: 'move cell',
    cell: pick(allCells(notebook), where).id,
    section: pick(notebook.sections, to).id,
    at: index % 6,
  })),
  fc.tuple(at, at).map(([id, index]): Act => (notebook) => ({
    do: 'add section',
    at: index % (notebook.sections.length + 1),
    section: { id: `section ${id}`, label: 'New', cells: [] },
  })),
  at.map((where): Act => (notebook) => ({
    do: 'remove section',
    section: pick(notebook.sections, where).id,
  })),
  fc.tuple(at, at).map(([where, id]): Act => (notebook) => ({
    do: 'duplicate section',
    section: pick(notebook.sections, where).id,
    id: `copied ${id}`,
  })),
  fc.tuple(at, at).map(([where, index]): Act => (notebook) => ({
    do: 'move section',
    section: pick(notebook.sections, where).id,
    at: index % 4,
  })),
  sizes.map((taken): Act => () => ({ do: 'take sizes', sizes: taken })),
  fc.constant<Act>(() => ({ do: 'set', settings: { length: 'in' } })),
  fc.string({ maxLength: 20 }).map((title): Act => () => ({ do: 'retitle', title })),
  fc
    .tuple(fc.constantFrom('one', 'two', 'three'), fc.option(fc.constant('Work even.')))
    .map(([key, template]): Act => () => ({
      do: 'reword',
      key,
      wording: template === null ? null : { template, terms: 'US' },
    })),
  at.map((id): Act => () => ({
    do: 'add what-if',
    whatIf: { id: `what-if ${id}`, name: `Smaller ${id}`, on: false, changes: [] },
  })),
  fc.constant<Act>((notebook) => ({
    do: 'set class sheet',
    sheet: notebook.classSheet ? null : { results: [{ cell: 'hand', key: 'value' }] },
  })),
);

describe('a patch', () => {
  it('gives the same state again after any edits, undo and redo, when it went through a text', () => {
    const step = fc.oneof(
      { weight: 8, arbitrary: acts },
      { weight: 1, arbitrary: fc.constant('undo' as const) },
      { weight: 1, arbitrary: fc.constant('redo' as const) },
      { weight: 1, arbitrary: fc.constant('exchange' as const) },
    );
    fc.assert(
      fc.property(
        fc.constantFrom(cardigan, adaptedPullover),
        fc.array(step, { minLength: 1, maxLength: 15 }),
        (make, steps) => {
          let history = begin(make());
          let replayed: Notebook = asText(history.now);
          for (const act of steps) {
            const before = history.now;
            if (act === 'undo') history = undo(history);
            else if (act === 'redo') history = redo(history);
            else if (act === 'exchange') history = advance(history, asText(history.now), 'brought back');
            else if (allCells(before).length > 0 && before.sections.length > 0) {
              const applied = apply(before, act(before));
              if ('notebook' in applied) history = advance(history, applied.notebook, 'an edit');
            }
            const after = patched(replayed, asText(patchBetween(before, history.now)));
            expect(after).toEqual(asText(history.now));
            replayed = after!;
          }
        },
      ),
      { numRuns: 25 },
    );
  });

  it('of an edit of one value holds that cell alone, and of undo the one it was', () => {
    const before = cardigan();
    const after = edited(before, { do: 'give', cell: 'hand', key: 'value', size: null, value: 23 });
    expect(Object.keys(patchBetween(before, after))).toEqual(['cells']);
    expect(patchBetween(before, after).cells!.map(({ id }) => id)).toEqual(['hand']);
    expect(patchBetween(after, before).cells).toEqual([allCells(before).find(({ id }) => id === 'hand')]);
    expect(isEmptyPatch(patchBetween(after, after))).toBe(true);
  });

  it('of a cell that goes to another section holds no cell: it is there already', () => {
    const before = cardigan();
    const section = before.sections.at(-1)!.id;
    const after = edited(before, { do: 'move cell', cell: 'hand', section, at: 0 });
    expect(Object.keys(patchBetween(before, after))).toEqual(['sections']);
    expect(patched(before, asText(patchBetween(before, after)))).toEqual(after);
  });

  it('from nothing holds the whole notebook', () => {
    const notebook = cardigan();
    expect(patched(null, asText(patchBetween(null, notebook)))).toEqual(asText(notebook));
  });

  it('of a long list of sentences holds those that changed', () => {
    const wording = Object.fromEntries(
      Array.from({ length: 500 }, (_one, number) => [
        `${number}`,
        { template: 'Work even.', terms: 'US' as const },
      ]),
    );
    const before: Notebook = { ...cardigan(), wording };
    const after = edited(before, { do: 'reword', key: '7', wording: { template: 'Knit.', terms: 'US' } });
    expect(patchBetween(before, after)).toEqual({ wording: { 7: { template: 'Knit.', terms: 'US' } } });
    const back = edited(after, { do: 'reword', key: '7', wording: null });
    const patch = asText(patchBetween(after, back));
    expect(patch).toEqual({ wording: { 7: null } });
    expect(Object.keys(patched(after, patch)!.wording!)).toHaveLength(499);
  });

  it.each<[string, NotebookPatch]>([
    ['a section that is not there', { sections: [{ id: 'nowhere' }] }],
    [
      'more of a list than there is',
      { sections: [{ id: 'swatches', cells: { start: 1e9, ids: [], end: 0 } }] },
    ],
    ['less than nothing', { sections: [{ id: 'swatches', cells: { start: -1, ids: [], end: 0 } }] }],
    ['a cell that is not there', { sections: [{ id: 'swatches', cells: { start: 0, ids: ['x'], end: 0 } }] }],
  ])('that names %s does not fit', (_what, patch) => {
    const notebook = cardigan();
    const named = {
      ...patch.sections![0]!,
      id: patch.sections![0]!.id === 'nowhere' ? 'nowhere' : notebook.sections[0]!.id,
    };
    expect(patched(notebook, { ...patch, sections: [named] })).toBeUndefined();
  });
});
