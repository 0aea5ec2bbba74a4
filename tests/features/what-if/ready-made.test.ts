import { describe, expect, it } from 'vitest';
import { allCells, withWhatIf } from '../../../src/notebook';
import { readyMade } from '../../../src/features/what-if/ready-made';
import { blank } from '../../../src/starters';
import { notebookOf, swatch } from '../../engine/notebook-of';
import { workspaceWith } from '../../workspace/local-workspace';
import { vNeck } from '../../notebooks/v-neck';

async function of(notebook = vNeck()) {
  const { workspace, settled } = workspaceWith(notebook);
  await settled();
  return readyMade(workspace.notebook, workspace.allResults);
}

describe('what-ifs that are ready to be asked', () => {
  it('move the stitches of each swatch by one, and each ease by 5 cm, up and down', async () => {
    expect((await of()).filter(({ guess }) => !guess).map(({ name }) => name)).toEqual([
      'Body fabric, 15 sts to 10 cm instead of 14',
      'Body fabric, 13 sts to 10 cm instead of 14',
      'Rib, 18 sts to 10 cm instead of 17',
      'Rib, 16 sts to 10 cm instead of 17',
      'Finished bust, 5 cm more ease',
      'Finished bust, 5 cm less ease',
    ]);
  });

  it('guess at the fabric of a hook half a millimetre thinner, and thicker, by its stitches and its rows', async () => {
    const guesses = (await of()).filter(({ guess }) => guess);
    expect(guesses.map(({ name }) => name).slice(0, 2)).toEqual([
      // 14 × 6.5 ÷ 6 = 15.17 and 12 × 6.5 ÷ 6 = 13; 14 × 6.5 ÷ 7 = 13 and 12 × 6.5 ÷ 7 = 11.14.
      'Body fabric, 6 mm instead of 6.5 mm: about 15.2 sts and 13 rows to 10 cm, a guess to be swatched',
      'Body fabric, 7 mm instead of 6.5 mm: about 13 sts and 11.1 rows to 10 cm, a guess to be swatched',
    ]);
    expect(guesses[0]!.changes).toEqual([
      { cell: 'body', key: 'sts.0.count', size: null, value: 15.2 },
      { cell: 'body', key: 'rows.0.count', size: null, value: 13 },
    ]);
    expect(guesses).toHaveLength(4);
  });

  it('guess by a stitch where the swatch names no hook, in the words of the craft, and of several counts by per cent', async () => {
    const unnamed = swatch('wool', 14, 12);
    const [thinner] = (await of(notebookOf([unnamed]))).filter(({ guess }) => guess);
    expect(thinner!.name).toBe(
      'wool, a thinner hook or yarn: about 15 sts and 12.9 rows to 10 cm, a guess to be swatched',
    );
    const knitted = notebookOf([{ ...unnamed, stitches: [...unnamed.stitches, ...unnamed.stitches] }]);
    const [, thicker] = (
      await of({ ...knitted, settings: { ...knitted.settings, craft: 'knitting' } })
    ).filter(({ guess }) => guess);
    // 13 for 14 stitches.
    expect(thicker!.name).toBe(
      'wool, thicker needles or yarn: about 7.1 % fewer sts and rows, a guess to be swatched',
    );
    expect(thicker!.changes.map(({ value }) => value)).toEqual([13, 13, 11.1]);
  });

  it('guess at no fabric that has not been counted whole', async () => {
    expect(
      await of(notebookOf([swatch('wool', 14, null)])).then((all) => all.filter(({ guess }) => guess)),
    ).toEqual([]);
  });

  it('keep what eases differ by from size to size', async () => {
    const notebook = vNeck();
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
    const notebook = vNeck();
    const names = await of({ ...notebook, settings: { ...notebook.settings, length: 'in' } });
    expect(names.map(({ name }) => name)).toContain('Finished bust, 2 in more ease');
  });

  it('leave a count of one stitch at one or more, and a swatch not counted alone', async () => {
    const notebook = vNeck();
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
    expect(names.filter((name) => /^Body.*instead of 1$/.test(name))).toEqual([
      'Body fabric, 2 sts to 10 cm instead of 1',
    ]);
  });

  it('are none in an empty notebook', async () => {
    expect(await of(blank())).toEqual([]);
  });
});
