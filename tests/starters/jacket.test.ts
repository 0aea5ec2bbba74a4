import { describe, expect, it } from 'vitest';
import { allCells, apply, changesBetween, inputsOf, nameTable, namesOf, outputsOf } from '../../src/notebook';
import { Results } from '../../src/sheet';
import { WorkedSheet } from '../../src/sheet/sheet';
import { starters } from '../../src/starters';

describe.each(starters.map((starter) => [starter.label, starter.make()] as const))(
  '%s',
  (_label, notebook) => {
    it('has a name of its own for everything', () => {
      const names = allCells(notebook).flatMap((cell) => namesOf(cell));
      expect(nameTable(notebook).size).toBe(names.length);
    });

    it('is worked with no trouble in any size, and all its checks hold', async () => {
      const results = new Results();
      results.apply(await new WorkedSheet().update(changesBetween(null, notebook)));
      const troubles = allCells(notebook).flatMap((cell) =>
        [...inputsOf(cell), ...outputsOf(cell)].flatMap(({ key, name }) =>
          notebook.sizes.flatMap((size) => {
            const trouble = results.trouble(size.id, cell.id, key);
            const fails = results.truth(size.id, cell.id, key) === false;
            return trouble || fails ? [`${name}, ${size.label}: ${trouble?.message ?? 'does not hold'}`] : [];
          }),
        ),
      );
      expect(troubles).toEqual([]);
    });

    it('keeps its names when every cell takes another', () => {
      let renamed = notebook;
      for (const cell of allCells(notebook)) {
        const applied = apply(renamed, { do: 'rename', cell: cell.id, name: `${cell.name}_x` });
        if ('refused' in applied) throw new Error(applied.refused);
        renamed = applied.notebook;
      }
      const table = nameTable(renamed);
      expect(table.size).toBe(nameTable(notebook).size);
    });
  },
);
