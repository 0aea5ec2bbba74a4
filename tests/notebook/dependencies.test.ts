import { describe, expect, it } from 'vitest';
import {
  allCells,
  type Edit,
  chainOf,
  changesBetween,
  downstream,
  dependenciesOf,
  nothingChanged,
  upstream,
  type Notebook,
} from '../../src/notebook';
import { edited } from './edited';
import { vNeck } from '../notebooks/v-neck';

const start = vNeck();
const after = (edit: Edit): Notebook => edited(start, edit);

describe('what a cell feeds', () => {
  it('the body swatch feeds the back, and through its slope the band', () => {
    const reached = downstream(start, 'body');
    expect(reached).toEqual(
      expect.arrayContaining(['back-sts', 'back', 'armhole-rows', 'band', 'band-worked']),
    );
    expect(reached).not.toContain('bust');
  });

  it('the rib’s swatch feeds the band, and no piece of the body fabric', () => {
    const reached = downstream(start, 'rib');
    expect(reached).toContain('band-worked');
    expect(reached).not.toContain('back');
  });

  it('is the other side of what a cell is fed by', () => {
    const { dependents, precedents } = dependenciesOf(start);
    for (const [id, sources] of precedents)
      for (const source of sources) expect(dependents.get(source)).toContain(id);
    for (const [id, reached] of dependents)
      for (const target of reached) expect(precedents.get(target)).toContain(id);
  });
});

describe('what a cell is fed by', () => {
  it('the back stitches by the bust, its ease and the body swatch, and not by the rib’s', () => {
    const reached = upstream(start, 'back-sts');
    expect(reached).toEqual(expect.arrayContaining(['bust', 'finished-bust', 'body']));
    expect(reached).not.toContain('rib');
    expect(reached).not.toContain('back-sts');
  });

  it('is told nearest first', () => {
    const reached = upstream(start, 'back-sts');
    const near = dependenciesOf(start).precedents.get('back-sts')!;
    expect(new Set(reached.slice(0, near.size))).toEqual(near);
  });

  it('is, however far, what it depends on: one is upstream of another where that is downstream of it', () => {
    const ids = allCells(start).map((cell) => cell.id);
    const up = new Set(ids.flatMap((id) => upstream(start, id).map((source) => `${source} > ${id}`)));
    const down = new Set(ids.flatMap((id) => downstream(start, id).map((target) => `${id} > ${target}`)));
    expect(up.size).toBeGreaterThan(ids.length);
    expect(up).toEqual(down);
  });
});

describe('the chain of a cell', () => {
  it('is what it is fed by, itself and what it feeds, in the order of the notebook', () => {
    const chain = chainOf(start, 'back-sts');
    expect(new Set(chain)).toEqual(
      new Set([...upstream(start, 'back-sts'), 'back-sts', ...downstream(start, 'back-sts')]),
    );
    const order = allCells(start).map((cell) => cell.id);
    expect(chain).toEqual(order.filter((id) => chain.includes(id)));
  });

  it('leaves out what is only fed by the same: the bust’s chain has no swatch that is beside it', () => {
    expect(chainOf(start, 'bust')).toContain('back');
    expect(chainOf(start, 'bust')).not.toContain('body');
  });

  it('of cells that feed each other in a circle is finite, and has each once', () => {
    const round: Notebook = {
      ...start,
      sections: [
        {
          id: 's',
          label: 'S',
          cells: [
            { kind: 'formula', id: 'a', label: 'A', name: 'a', formula: 'b' },
            { kind: 'formula', id: 'b', label: 'B', name: 'b', formula: 'a' },
          ],
        },
      ],
    };
    expect(chainOf(round, 'a')).toEqual(['a', 'b']);
    expect(upstream(round, 'a')).toEqual(['b']);
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
      after({ do: 'give', cell: 'neck-width', key: 'value', size: 'm', value: 25 }),
    );
    expect(changes.put.map((cell) => cell.id)).toEqual(['neck-width']);
    expect(changes).not.toHaveProperty('sizes');
  });

  it('tell a removed cell and a removed size', () => {
    expect(changesBetween(start, after({ do: 'remove cell', cell: 'neck-width' })).drop).toEqual([
      'neck-width',
    ]);
    expect(changesBetween(start, after({ do: 'remove size', size: 'm' })).sizes).toHaveLength(8);
  });

  it('are none for a label of a section, a title or a unit', () => {
    expect(nothingChanged(changesBetween(start, after({ do: 'set', settings: { length: 'in' } })))).toBe(
      true,
    );
    expect(nothingChanged(changesBetween(start, after({ do: 'retitle', title: 'Another' })))).toBe(true);
  });
});
