import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright';
import { beforeEach, describe, expect, it } from 'vitest';
import { workPiece, type Row } from '../../src/craft';
import { allCells, type Notebook } from '../../src/notebook';
import type { Plotted } from '../../src/pictures';
import { readPiece } from '../../src/formulas/piece-text';
import { longFile } from '../long-notebook';
import { blouseSleeve } from '../notebooks/blouse-sleeve';
import { vNeck } from '../notebooks/v-neck';
import { Worked } from '../engine/worked';
import { canvasesHeld } from './canvases-held';
import { plotted, settled, type } from './workspace';
import { openNotebook } from './open-notebook';
import { visiting } from './visiting';

const visit = visiting();
let page: Page;
beforeEach(async () => {
  page = await visit();
  await openNotebook(page, vNeck());
});

/** The rows of every piece of a notebook in every size, worked here from the texts of a sheet of our own. */
async function rowsOf(notebook: Notebook): Promise<Map<string, Map<string, Row[]>>> {
  const { results } = await new Worked().show(notebook);
  const pieces = allCells(notebook).filter((cell) => cell.kind === 'piece');
  return new Map(
    pieces.map(({ id }) => [
      id,
      new Map(
        notebook.sizes.map((size) => [size.id, workPiece(readPiece(results.text(size.id, id, 'piece')!))]),
      ),
    ]),
  );
}

/** What a stair stands at in the middle of every row, the rows as high as they are told to be. */
function readStair(points: readonly { x: number; y: number }[], heights: readonly number[]): number[] {
  let along = 0;
  return heights.map((height) => {
    const middle = along + height / 2;
    along += height;
    const at = points.findIndex((point, i) => point.x <= middle && middle < (points[i + 1]?.x ?? -1));
    return points[at]!.y;
  });
}

const worked = ({ lines }: Plotted) => lines.filter(({ kind }) => kind === 'worked');

async function toPictures(): Promise<void> {
  await page.getByRole('button', { name: 'Pictures' }).click();
  await page.locator('[data-drawing] canvas').waitFor();
}

/** Of the plot itself, which may stand under others. */
const plot = () =>
  page.$eval('[data-drawing] canvas', (canvas) =>
    (canvas as unknown as { plotted(): Plotted | undefined }).plotted(),
  ) as Promise<Plotted>;

const drawn = () =>
  page.waitForFunction(() => {
    const canvas = document.querySelector('[data-drawing] canvas') as unknown as {
      plotted?: () => unknown;
    } | null;
    return canvas?.plotted?.() !== undefined;
  });

describe('the plots', () => {
  it('hold the rows of workPiece, for every piece in every size: counts, widths, and tapers', async () => {
    const rows = await rowsOf(vNeck());
    await toPictures();
    await drawn();
    for (const [id, bySize] of rows) {
      await page.getByLabel('Piece').selectOption(id);
      await page.waitForSelector(`[data-drawing="${id}"]`);
      for (const [view, across, along] of [
        ['Stitches by row', (row: Row) => row.count, (row: Row) => row.height * row.fabric.stitches],
        ['Width by row', (row: Row) => row.width, (row: Row) => row.height],
        ['Taper', (row: Row) => row.width, (row: Row) => row.height],
      ] as const) {
        const button = page.locator('[data-drawing]').getByRole('button', { name: view });
        if (view === 'Taper' && (await button.count()) === 0) continue;
        await button.click();
        if (view === 'Taper') await page.getByRole('checkbox', { name: 'All sizes' }).check();
        const lines = worked(await plot());
        expect(lines.map((line) => line.id).sort(), `${id}, ${view}`).toEqual([...bySize.keys()].sort());
        for (const { id: size, points } of lines) {
          const own = bySize.get(size)!;
          const stated = readStair(points, own.map(along));
          own.forEach((row, i) =>
            expect(stated[i], `${id} ${size} row ${i + 1}`).toBeCloseTo(across(row), 9),
          );
        }
      }
    }
  });

  it('compare the three orders: each line steps on the rows where its intervals end', async () => {
    await openNotebook(page, blouseSleeve());
    await toPictures();
    await drawn();
    await page.getByLabel('Piece').selectOption('sleeve');
    await page.getByLabel('Compare shaping orders').check();
    const { lines } = await plot();
    const own = lines.find(({ kind }) => kind === 'worked')!;
    const rows = (await rowsOf(blouseSleeve()))
      .get('sleeve')!
      .get(own.id)!
      .filter(({ stretch }) => stretch === 0);
    const before = 3;
    const shapings = rows.filter(({ change }) => change !== 0).length;
    const units = rows.length - before;
    const [short, longer] = [Math.floor(units / shapings), units % shapings];
    const endsOf = (length: (k: number) => number): number[] => {
      let row = before;
      return Array.from({ length: shapings }, (_, k) => (row += length(k)));
    };
    const expected = {
      [own.id]: endsOf((k) => short + (k < longer ? 1 : 0)),
      shortFirst: endsOf((k) => short + (k >= shapings - longer ? 1 : 0)),
    };
    const stepsOf = (points: readonly { x: number; y: number }[]) => {
      const widths = readStair(
        points,
        rows.map(({ height }) => height),
      );
      return widths.flatMap((width, i) => (i > 0 && width < widths[i - 1]! - 1e-9 ? [i + 1] : []));
    };
    expect(stepsOf(own.points)).toEqual(expected[own.id]);
    const overlaid = (id: string) => lines.find(({ overlay }) => overlay === id)!.points;
    expect(stepsOf(overlaid('shortFirst'))).toEqual(expected['shortFirst']);
    stepsOf(overlaid('spread')).forEach((row, k) => {
      expect(Math.abs(row - before - ((k + 1) * units) / shapings)).toBeLessThanOrEqual(0.5 + 1e-9);
    });
    await page.getByRole('heading', { name: 'how far each order is off the straight line' }).waitFor();
  });

  it('are read row by row with the keys: number, count, width, what is worked, how far off', async () => {
    await openNotebook(page, blouseSleeve());
    const own = (await rowsOf(blouseSleeve())).get('sleeve')!.get('c4')!;
    await page.locator('[data-place][data-cell="sleeve"]').first().focus();
    const sheet = page.locator('[data-drawing] [role=application]');
    await sheet.focus();
    await page.keyboard.press('Control+ArrowRight');
    const row = own.find(({ change }) => change !== 0)!;
    const saying = page.locator('[data-drawing] .saying');
    expect(await saying.textContent()).toMatch(
      new RegExp(
        `Child 4, Armhole to wrist\\. Round ${row.number}: ${row.count} sts, ${row.width.toFixed(1)} cm\\. Decrease 2 in the round\\. .*straight line`,
      ),
    );
    await page.keyboard.press('ArrowRight');
    expect(await saying.textContent()).toContain(`Round ${row.number + 1}: ${row.count} sts`);
    expect(await saying.textContent()).toContain('Plain');
    await page.keyboard.press('End');
    expect(await saying.textContent()).toContain(`Round ${own.length}: ${own.at(-1)!.count} sts`);
    await page.locator('[data-drawing]').getByRole('button', { name: 'Width by row' }).click();
    await sheet.focus();
    await page.keyboard.press('Home');
    expect(await saying.textContent()).toContain('Plain');
    await page.keyboard.press('ArrowDown');
    expect(await saying.textContent()).toContain('Child 6, Armhole to wrist. Round 1:');
  });

  it('stay at a row that is being read through an undo, and say what has come of it', async () => {
    await openNotebook(page, blouseSleeve());
    await type(page, 'sleeve-fabric', 'sts.0.count', '20');
    await settled(page);
    await page.locator('[data-place][data-cell="sleeve"]').first().focus();
    const sheet = page.locator('[data-drawing] [role=application]');
    await sheet.focus();
    await page.keyboard.press('Home');
    const saying = page.locator('[data-drawing] .saying');
    const before = await saying.textContent();
    expect(before).toContain('Round 1: ');
    expect(before).not.toContain('Round 1: 52 sts');
    await page.keyboard.press('Control+z');
    await saying.filter({ hasText: 'Round 1: 52 sts' }).waitFor();
    expect((await plotted(page)).pointed).toEqual({ id: 'c4', row: 1 });
  });

  it('point at the row under the pointer, of the line that is nearest, and at none beside the paper', async () => {
    await openNotebook(page, blouseSleeve());
    const rows = (await rowsOf(blouseSleeve())).get('sleeve')!.get('c4')!;
    const canvas = page.locator('[data-drawing] canvas');
    const { width } = (await canvas.boundingBox())!;
    await canvas.hover({ position: { x: width / 2, y: 120 } });
    const pointed = (await plotted(page)).pointed;
    expect(pointed?.id).toBe('c4');
    // The middle of the paper, in the cm that are drawn on it; its edges take less than a tenth of it.
    const middle = rows.findIndex(
      (_, i) => rows.slice(0, i + 1).reduce((sum, row) => sum + row.height, 0) > 16.9,
    );
    expect(Math.abs(pointed!.row - middle)).toBeLessThan(rows.length / 10);
    await canvas.hover({ position: { x: 3, y: 120 } });
    expect((await plotted(page)).pointed).toBeNull();
  });
});

describe('before and after', () => {
  it('the old line stays after an edit, is said and in the table, and is put aside with a key', async () => {
    await openNotebook(page, blouseSleeve());
    await page.locator('[data-place][data-cell="sleeve"]').first().focus();
    await page.getByRole('button', { name: 'Stitches by row' }).click();
    const before = worked(await plotted(page));
    expect((await plotted(page)).lines.some(({ kind }) => kind === 'before')).toBe(false);
    await type(page, 'sleeve-fabric', 'sts.0.count', '20');
    await settled(page);
    await page.getByRole('list', { name: 'Beside them' }).waitFor();
    const after = (await plotted(page)).lines;
    const old = after.filter(({ kind }) => kind === 'before');
    expect(old.map(({ id }) => id).sort()).toEqual(before.map(({ id }) => id).sort());
    for (const { id, points } of old) expect(points).toEqual(before.find((line) => line.id === id)!.points);
    expect(after.filter(({ kind }) => kind === 'worked').map(({ points }) => points)).not.toEqual(
      before.map(({ points }) => points),
    );
    const drawing = page.locator('[data-drawing]');
    await drawing.getByText('Child 4, before the change: from 52 sts').waitFor();
    await drawing.getByText('As a table').click();
    await drawing.getByRole('columnheader', { name: 'Child 4, before the change' }).waitFor();
    await drawing.locator('[role=application]').focus();
    await page.keyboard.press('Escape');
    await drawing.getByText('before the change').first().waitFor({ state: 'detached' });
    expect((await plotted(page)).lines.some(({ kind }) => kind === 'before')).toBe(false);
  });

  it('an edit that leaves the piece as it was takes the old line away', async () => {
    await openNotebook(page, blouseSleeve());
    await type(page, 'sleeve-fabric', 'sts.0.count', '20');
    await settled(page);
    await page.getByRole('list', { name: 'Beside them' }).waitFor();
    await type(page, 'hand', 'value', '14', 'c4');
    await settled(page);
    await page.getByRole('list', { name: 'Beside them' }).waitFor({ state: 'detached' });
  });
});

describe('grading', () => {
  const plotted = () =>
    page.$eval('[data-picture=grading] canvas', (canvas) =>
      (canvas as unknown as { plotted(): { id: string; values: (number | null)[] }[] | undefined }).plotted(),
    );

  it('draws the chart’s bust and the finished bust with its ease, and says the ease', async () => {
    // Women, the middle of each range, inches: after the Craft Yarn Council, from memory.
    const bust = [29, 33, 37, 41, 45, 49, 53, 57, 61].map((inches) => inches * 2.54);
    await toPictures();
    await page.waitForFunction(
      () =>
        (
          document.querySelector('[data-picture=grading] canvas') as never as { plotted?: () => unknown }
        )?.plotted?.() !== undefined,
    );
    const lines = (await plotted())!;
    expect(lines.map(({ id }) => id)).toEqual(['bust value', 'finished-bust finished']);
    lines[0]!.values.forEach((value, i) => expect(value).toBeCloseTo(bust[i]!, 9));
    lines[1]!.values.forEach((value, i) => expect(value).toBeCloseTo(bust[i]! + 20, 9));
    const figure = page.locator('[data-picture=grading]');
    await figure.getByText('The ease of finished bust over bust is 20.0 cm in every size.').waitFor();

    await figure.getByText('Choose measurements').click();
    await figure.getByLabel('Back waist length').check();
    // 18 inches twice: the back of a 3X is no longer than that of a 2X.
    await figure.getByText(/Back waist length does not grow from 2X to 3X/).waitFor();
    expect((await plotted())!.map(({ id }) => id)).toContain('back-waist-length value');
    await figure.locator('[role=application]').focus();
    await page.keyboard.press('End');
    expect(await figure.locator('.saying').textContent()).toContain(
      '5X. Bust: 154.9 cm. Finished bust: 174.9 cm. Back waist length: 47.0 cm.',
    );
  });
});

describe('on paper', () => {
  it('a picture is saved as a PNG of 17 cm at 300 dots to the inch, and says so', async () => {
    await toPictures();
    await drawn();
    for (const picture of ['[data-picture=grading]', '[data-drawing]']) {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.locator(picture).getByRole('button', { name: 'Save image' }).click(),
      ]);
      expect(download.suggestedFilename()).toMatch(/^[a-z0-9_]+\.png$/);
      const png = await readFile(await download.path());
      expect(png.subarray(1, 4).toString('latin1')).toBe('PNG');
      expect(png.readUInt32BE(16)).toBe(Math.round((17 / 2.54) * 300));
      expect(png.readUInt32BE(20)).toBeGreaterThan(900);
      expect(png.subarray(37, 41).toString('latin1')).toBe('pHYs');
      expect(png.readUInt32BE(41)).toBe(Math.round(300 / 0.0254));
    }
  });

  it('is printed as fine as it is saved', async () => {
    await toPictures();
    await drawn();
    // What draws it for paper is fetched beside the page.
    const widths = async (): Promise<number[]> => {
      await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
      return page.$$eval('img.printed', (images) =>
        Promise.all(
          images.map(async (image) => {
            await (image as HTMLImageElement).decode();
            return (image as HTMLImageElement).naturalWidth;
          }),
        ),
      );
    };
    await expect.poll(widths).toEqual([2008, 2008]);
  });
});

describe('what cannot be drawn, or is very long', () => {
  const open = async (text: string): Promise<void> => {
    await page.setInputFiles('input[type=file]', {
      name: 'long.notebook.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    await page.getByText('Long panels').first().waitFor();
    await settled(page);
  };

  it('a size in trouble is named with its reason, and the others are drawn', async () => {
    await type(page, 'neck-width', 'value', '160', 'xs');
    await settled(page);
    await page.locator('[data-place][data-cell="front"]').first().focus();
    await page.getByRole('button', { name: 'Width by row' }).click();
    expect(worked(await plotted(page)).map(({ id }) => id)).toHaveLength(8);
    await page.locator('[data-drawing]').getByText('XS is not drawn: Needs Shoulder stitches').waitFor();
  });

  it('nine sizes of 10 000 rows are drawn in few corners and answer the keys', async () => {
    await open(longFile(10_000, 100));
    await page.getByRole('button', { name: 'Width by row' }).click();
    const lines = worked(await plotted(page));
    expect(lines).toHaveLength(9);
    for (const { points } of lines) expect(points.length).toBeLessThan(1700);
    await page.getByRole('button', { name: 'Taper' }).click();
    await page.locator('[data-drawing] [role=application]').focus();
    for (let i = 0; i < 20; i++) await page.keyboard.press('PageDown');
    await page.keyboard.press('End');
    expect(await page.locator('[data-drawing] .saying').textContent()).toContain('Row 10000:');
  });

  it('a piece of one row is drawn', async () => {
    await open(longFile(1, 2));
    await page.getByRole('button', { name: 'Stitches by row' }).click();
    const lines = worked(await plotted(page));
    expect(lines).toHaveLength(9);
    for (const { points } of lines) expect(points).toHaveLength(2);
    await page.locator('[data-drawing] [role=application]').focus();
    await page.keyboard.press('ArrowRight');
    expect(await page.locator('[data-drawing] .saying').textContent()).toContain(
      'Row 1: 180 sts, 75.0 cm. Decrease 1 at each end',
    );
  });

  it('hold no canvas once they are left', async () => {
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('HeapProfiler.enable');
    const held = async (): Promise<number> => {
      await devtools.send('HeapProfiler.collectGarbage');
      return canvasesHeld(devtools);
    };
    await page.locator('[data-drawing] canvas').waitFor();
    const before = await held();
    for (let visit = 0; visit < 3; visit++) {
      await toPictures();
      await page.getByRole('button', { name: 'Leaf', exact: true }).click();
      await page.locator('[data-drawing] canvas').waitFor();
    }
    await expect.poll(held).toBe(before);
  });

  it('nothing scrolls sideways at 320 px', async () => {
    await page.setViewportSize({ width: 320, height: 800 });
    await toPictures();
    await drawn();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });
});
