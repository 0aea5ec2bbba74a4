import { describe, expect, it } from 'vitest';
import {
  apply,
  changesBetween,
  downstream,
  feedsOf,
  nothingChanged,
  type Notebook,
} from '../../src/notebook';
import { jacket } from '../../src/starters';

const start = jacket();
const after = (edit: Parameters<typeof apply>[1]): Notebook => {
  const applied = apply(start, edit);
  if ('refused' in applied) throw new Error(applied.refused);
  return applied.notebook;
};

describe('what a cell feeds', () => {
  it('the body swatch feeds the back, and through its width the length of the sleeve', () => {
    const reached = downstream(start, 'body');
    expect(reached).toEqual(
      expect.arrayContaining(['back-sts', 'back', 'armhole-rows', 'sleeve-wanted', 'sleeve']),
    );
    expect(reached).not.toContain('bust');
  });

  it('the sleeve’s swatch feeds the sleeve alone', () => {
    const reached = downstream(start, 'sleeve-fabric');
    expect(reached).toContain('sleeve');
    expect(reached).not.toContain('back');
  });

  it('is the other side of what a cell is fed by', () => {
    const { feeds, fedBy } = feedsOf(start);
    for (const [id, sources] of fedBy) for (const source of sources) expect(feeds.get(source)).toContain(id);
    for (const [id, fed] of feeds) for (const target of fed) expect(fedBy.get(target)).toContain(id);
  });
});

describe('the changes between two notebooks', () => {
  it('are all of it where there was none, and nothing where there is no difference', () => {
    expect(changesBetween(null, start).put).toHaveLength(
      start.sections.flatMap((section) => section.cells).length,
    );
    expect(nothingChanged(changesBetween(start, start))).toBe(true);
  });

  it('are one cell for one value', () => {
    const changes = changesBetween(
      start,
      after({ do: 'give', cell: 'cuff', key: 'value', size: 'm', value: 25 }),
    );
    expect(changes.put.map((cell) => cell.id)).toEqual(['cuff']);
    expect(changes).not.toHaveProperty('sizes');
  });

  it('tell a removed cell and a removed size', () => {
    expect(changesBetween(start, after({ do: 'remove cell', cell: 'cuff' })).drop).toEqual(['cuff']);
    expect(changesBetween(start, after({ do: 'remove size', size: 'm' })).sizes).toHaveLength(8);
  });

  it('are none for a label of a section, a title or a unit', () => {
    expect(nothingChanged(changesBetween(start, after({ do: 'set', settings: { length: 'in' } })))).toBe(
      true,
    );
    expect(nothingChanged(changesBetween(start, after({ do: 'retitle', title: 'Another' })))).toBe(true);
  });
});
