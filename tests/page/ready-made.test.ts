import { describe, expect, it } from 'vitest';
import { allCells, withWhatIf } from '../../src/notebook';
import { readyMade } from '../../src/page/what-ifs/ready-made';
import { blank, jacket } from '../../src/starters';
import { deskWith } from './desk';

async function of(notebook = jacket()) {
  const { desk, settled } = deskWith(notebook);
  await settled();
  return readyMade(desk.notebook, desk.allResults);
}

describe('what-ifs that are ready to be asked', () => {
  it('move the gauge of each swatch by a stitch, and each ease by 5 cm, up and down', async () => {
    expect((await of()).map(({ name }) => name)).toEqual([
      'Body fabric, 15 sts to 10 cm in place of 14',
      'Body fabric, 13 sts to 10 cm in place of 14',
      'Sleeve fabric, 17 sts to 10 cm in place of 16',
      'Sleeve fabric, 15 sts to 10 cm in place of 16',
      'Rib, 18 sts to 10 cm in place of 17',
      'Rib, 16 sts to 10 cm in place of 17',
      'Finished bust, 5 cm more ease',
      'Finished bust, 5 cm less ease',
    ]);
  });

  it('keep what eases differ by from size to size', async () => {
    const notebook = jacket();
    const each = Object.fromEntries(notebook.sizes.map(({ id }, at) => [id, 10 + at]));
    const sections = notebook.sections.map((section) => ({
      ...section,
      cells: section.cells.map((cell) => (cell.kind === 'ease' ? { ...cell, ease: { each } } : cell)),
    }));
    const more = (await of({ ...notebook, sections })).find(({ name }) => name.endsWith('more ease'))!;
    const made = withWhatIf(notebook, { id: 'more', on: true, ...more });
    const ease = allCells(made).find((cell) => cell.kind === 'ease')!;
    expect(ease.ease).toEqual({
      each: Object.fromEntries(notebook.sizes.map(({ id }, at) => [id, 15 + at])),
    });
  });

  it('step by two inches where lengths are inches', async () => {
    const notebook = jacket();
    const names = await of({ ...notebook, settings: { ...notebook.settings, length: 'in' } });
    expect(names.map(({ name }) => name)).toContain('Finished bust, 2 in more ease');
  });

  it('leave a count of one stitch at one or more, and a swatch not counted alone', async () => {
    const notebook = jacket();
    const sections = notebook.sections.map((section) => ({
      ...section,
      cells: section.cells.map((cell) =>
        cell.kind !== 'swatch'
          ? cell
          : {
              ...cell,
              stitches: [{ count: { value: cell.label === 'Rib' ? null : 1 }, over: { value: 10 } }],
            },
      ),
    }));
    const names = (await of({ ...notebook, sections })).map(({ name }) => name);
    expect(names.filter((name) => name.startsWith('Rib'))).toEqual([]);
    expect(names.filter((name) => name.startsWith('Body'))).toEqual([
      'Body fabric, 2 sts to 10 cm in place of 1',
    ]);
  });

  it('are none in an empty notebook', async () => {
    expect(await of(blank())).toEqual([]);
  });
});
