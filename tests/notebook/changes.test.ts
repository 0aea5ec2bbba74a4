import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changesBetween, nothingChanged } from '../../src/notebook/changes';
import { usualSettings, type Cell, type Notebook } from '../../src/notebook/document';

const note = (id: string, text = ''): Cell => ({ kind: 'note', id, label: id, name: id, text });

function notebookOf(sections: readonly (readonly Cell[])[]): Notebook {
  return {
    title: '',
    settings: usualSettings,
    sizes: [{ id: 'one', label: 'One' }],
    sections: sections.map((cells, at) => ({ id: `section-${at}`, label: '', cells })),
  };
}

const ids = ['a', 'b', 'c', 'd', 'e', 'f', 'g'];
const known = new Map(ids.flatMap((id) => [0, 1].map((state) => [`${id}${state}`, note(id, String(state))])));
/** Some of seven cells, each in one of two states, in any order, over two sections. */
const anyNotebook = fc
  .tuple(
    fc.shuffledSubarray(ids),
    fc.array(fc.integer({ min: 0, max: 1 }), { minLength: 7, maxLength: 7 }),
    fc.nat(7),
  )
  .map(([some, states, split]) => {
    const cells = some.map((id, at) => known.get(`${id}${states[at]}`)!);
    return notebookOf([cells.slice(0, split), cells.slice(split)]);
  });

describe('what differs between two notebooks', () => {
  it('is the cells that are not the very same, wherever they stand, and those that are gone', () => {
    fc.assert(
      fc.property(anyNotebook, anyNotebook, (before, after) => {
        const cells = (notebook: Notebook): Map<string, Cell> =>
          new Map(notebook.sections.flatMap((section) => section.cells).map((cell) => [cell.id, cell]));
        const { put, drop } = changesBetween(before, after);
        const [old, now] = [cells(before), cells(after)];
        expect(put).toEqual([...now.values()].filter((cell) => old.get(cell.id) !== cell));
        expect([...drop].sort()).toEqual([...old.keys()].filter((id) => !now.has(id)).sort());
      }),
    );
  });

  it('from nothing is every cell and the sizes', () => {
    const after = notebookOf([[note('a')], [note('b')]]);
    expect(changesBetween(null, after)).toEqual({
      sizes: after.sizes,
      put: after.sections.flatMap((section) => section.cells),
      drop: [],
    });
  });

  it('is nothing where only the title is another', () => {
    const before = notebookOf([[note('a')]]);
    expect(nothingChanged(changesBetween(before, { ...before, title: 'Other' }))).toBe(true);
  });
});
