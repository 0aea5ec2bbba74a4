import { readFile } from 'node:fs/promises';
import type { Download, Page } from 'playwright';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { lengthOf, workPiece, type Row } from '../../src/craft';
import { vNeck } from '../notebooks/v-neck';
import { specOf } from '../pictures/schematic/spec-of';
import { begin, settled, type } from './workspace';
import { openNotebook } from './open-notebook';
import { visiting } from './visiting';

/** The rows of every piece of the V-neck in every size, worked in Node. */
type Rows = ReadonlyMap<string, readonly Row[]>;
const rowsOf = new Map<string, Row[]>();
const sizes = ['xs', 's', 'm', 'l', 'xl', '2x', '3x', '4x', '5x'];
const pieces = ['back', 'front', 'band-worked'];

const visit = visiting();
let page: Page;

beforeAll(async () => {
  const { pieces: planned } = await specOf(vNeck());
  for (const piece of planned) {
    for (const { id, plan } of piece.sizes) rowsOf.set(`${piece.id} ${id}`, workPiece(plan!));
  }
});
beforeEach(async () => {
  page = await visit();
  await openNotebook(page, vNeck());
});

async function toPictures(): Promise<void> {
  await page.getByRole('button', { name: 'Pictures', exact: true }).click();
  await page.locator('[data-picture="schematic"] svg').first().waitFor();
}

async function choose(size: string): Promise<void> {
  await page.getByRole('combobox', { name: 'Size' }).selectOption(size);
}

/** The lines of the schematic's table: what is measured, and the numbers. */
async function measured(): Promise<[label: string, ...numbers: number[]][]> {
  const rows = await page
    .locator('[data-picture="schematic"] tbody tr')
    .evaluateAll((lines) => lines.map((line) => [...line.children].map((cell) => cell.textContent ?? '')));
  return rows.map(([, label, ...numbers]) => [label!.replace(/[\u2068\u2069]/g, ''), ...numbers.map(Number)]);
}

const tenth = (x: number): number => Number(x.toFixed(1));

/** Width at the start and at the end, and length, as they are worked. */
function expectedOf(rows: Rows, piece: string, size: string): [number, number, number] {
  const worked = rows.get(`${piece} ${size}`)! as Row[];
  return [tenth(worked[0]!.width), tenth(worked.at(-1)!.width), tenth(lengthOf(worked))];
}

const called: Record<string, string> = {
  back: 'Back',
  front: 'Front',
  'band-worked': 'Band, worked',
};

describe('the schematic', () => {
  it('has in every size the widths and lengths of the worked rows, in its table and on its lines', async () => {
    await toPictures();
    await choose('all');
    const lines = await measured();
    for (const [at, size] of sizes.entries()) {
      for (const piece of pieces) {
        const [start, end, length] = expectedOf(rowsOf, piece, size);
        const own = lines.filter(([label]) => label.startsWith(`${called[piece]}: `));
        expect(own[0]![1 + at]).toBe(start);
        expect(own.at(-1)![1 + at]).toBe(length);
        const last = own.find(([label]) => /at the end$/.test(label));
        expect(last ? last[1 + at] : start).toBe(end);
      }
    }
    for (const size of sizes) {
      await choose(size);
      const written = await page
        .locator('[data-picture="schematic"] .drawn text.figure')
        .evaluateAll((texts) => texts.map((text) => Number.parseFloat(text.textContent ?? '')));
      for (const piece of pieces) {
        for (const number of expectedOf(rowsOf, piece, size)) expect(written).toContain(number);
      }
    }
  });

  it('no text of it lies on another, in the typeface of the page and at 320 px', async () => {
    await toPictures();
    for (const width of [1280, 320]) {
      await page.setViewportSize({ width, height: 900 });
      for (const size of ['m', 'all']) {
        await choose(size);
        const boxes = await page.locator('.drawn text').evaluateAll((texts) =>
          texts.map((text) => {
            const { x, y, width: wide, height } = text.getBoundingClientRect();
            // A line of type is higher than its letters.
            return {
              text: text.textContent,
              left: x,
              right: x + wide,
              top: y + height * 0.2,
              foot: y + height * 0.8,
            };
          }),
        );
        expect(boxes.length).toBeGreaterThan(10);
        const lying = boxes.flatMap((one, i) =>
          boxes
            .slice(i + 1)
            .filter((other) => {
              return (
                one.left < other.right - 0.5 &&
                other.left < one.right - 0.5 &&
                one.top < other.foot - 0.5 &&
                other.top < one.foot - 0.5
              );
            })
            .map((other) => `${one.text} / ${other.text}`),
        );
        expect(lying).toEqual([]);
      }
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
  });

  it('is saved as an SVG that stands by itself, and as a PNG of 300 dots to the inch', async () => {
    await toPictures();
    const bytesOf = async (button: RegExp): Promise<[Buffer, Download]> => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.locator('[data-picture="schematic"]').getByRole('button', { name: button }).click(),
      ]);
      return [await readFile((await download.path())!), download];
    };
    const [svg, download] = await bytesOf(/SVG/);
    expect(download.suggestedFilename()).toMatch(/^skerry_vest.*\.svg$/);
    const size = await page.evaluate((text) => {
      const read = new DOMParser().parseFromString(text, 'image/svg+xml');
      if (read.querySelector('parsererror')) return null;
      const root = read.documentElement;
      return [
        root.nodeName,
        Number(root.getAttribute('width')),
        Number(root.getAttribute('height')),
      ] as const;
    }, svg.toString('utf8'));
    expect(size?.[0]).toBe('svg');
    const [, width, height] = size!;

    const [png] = await bytesOf(/PNG/);
    expect(png.subarray(1, 4).toString('latin1')).toBe('PNG');
    expect(png.readUInt32BE(16)).toBe(Math.round((width * 300) / 96));
    expect(png.readUInt32BE(20)).toBe(Math.round((height * 300) / 96));
    const physical = png.indexOf('pHYs');
    expect(physical).toBe(37);
    // 300 dots to the inch are 11 811 to the metre.
    expect(png.readUInt32BE(physical + 4)).toBe(11_811);
    // A browser that reads the PNG takes it as it is: its check sums are right.
    const read = await page.evaluate(async (data) => {
      const image = new Image();
      image.src = `data:image/png;base64,${data}`;
      await image.decode();
      return [image.naturalWidth, image.naturalHeight];
    }, png.toString('base64'));
    expect(read).toEqual([png.readUInt32BE(16), png.readUInt32BE(20)]);
  });
});

describe('the silhouettes', () => {
  it('are drawn in every size as wide as the worked rows and as long, to one scale', async () => {
    await toPictures();
    for (const size of sizes) {
      await choose(size);
      const boxes = await page
        .locator('[data-picture="silhouettes"] path.outline')
        .evaluateAll((paths) =>
          paths.map((path) => (path as SVGPathElement).getBBox()).map((box) => [box.width, box.height]),
        );
      const shapes = pieces.slice(0, 2).map((piece) => rowsOf.get(`${piece} ${size}`)!);
      const scale = boxes[0]![1]! / lengthOf(shapes[0]!);
      for (const [at, rows] of shapes.entries()) {
        const widest = Math.max(...rows.map(({ width }) => width));
        expect(boxes[at]![0]! / scale).toBeCloseTo(widest, 1);
        expect(boxes[at]![1]! / scale).toBeCloseTo(lengthOf(rows), 1);
      }
    }
  });

  it('have their rows in numbers, every one as it is worked', async () => {
    await toPictures();
    await choose('m');
    await page.locator('[data-picture="silhouettes"]').getByText('As a table').click();
    const tables = page.locator('[data-picture="silhouettes"] table');
    await tables.nth(pieces.length - 1).waitFor();
    for (const [at, piece] of pieces.entries()) {
      const lines = await tables
        .nth(at)
        .locator('tbody tr')
        .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent ?? '')));
      const counts = lines.flatMap(([run, count]) => {
        const [first, last = first] = run!.split('–').map(Number);
        return Array.from({ length: last! - first! + 1 }, () => Number(count));
      });
      expect(counts).toEqual(rowsOf.get(`${piece} m`)!.map(({ count }) => count));
    }
  });
});

it('a piece with an error in one size is missing there with its reason, and the others are drawn', async () => {
  await type(page, 'neck-width', 'value', '160', 'xs');
  await settled(page);
  await toPictures();
  await choose('all');
  await page.locator('[data-picture="schematic"]').getByText('Front is not drawn in XS').waitFor();
  const [line] = (await measured()).filter(([label]) => label.startsWith('Front: '));
  expect(line![1]).toBeNaN();
  expect(line!.slice(2)).toEqual(sizes.slice(1).map((size) => expectedOf(rowsOf, 'front', size)[0]));
});

it('a notebook without a piece says what to do', async () => {
  await begin(page, 'Blank');
  await page.getByRole('button', { name: 'Pictures', exact: true }).click();
  await page.getByText('this notebook has no piece').waitFor();
});
