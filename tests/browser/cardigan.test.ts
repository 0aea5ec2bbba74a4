import type { Page } from 'playwright';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { numbers, plotted, settled, shown, type } from './workspace';
import { visiting } from './visiting';

/**
 * The cardigan worked out once more by the arithmetic the trade publishes, from the chart's inches and the swatches
 * alone, sharing nothing with the code of the page. Chart: after the Craft Yarn Council's women's sizes XS to 5X,
 * the middle of each range, from memory.
 */
const chart = {
  bust: [29, 33, 37, 41, 45, 49, 53, 57, 61],
  neckToWrist: [27.25, 28.25, 29.25, 30.25, 31.25, 31.75, 32.75, 32.75, 33.25],
  backWaist: [16.5, 17, 17.25, 17.5, 17.75, 18, 18, 18.5, 18.5],
  upperArm: [9.75, 10.25, 11, 12, 13.5, 15.5, 17, 18.5, 19.5],
  depth: [6.25, 6.75, 7.25, 7.75, 8.25, 8.75, 9.25, 9.75, 10.25],
};
const leftAtUnderarm = [4, 4.5, 5, 5.5, 6, 6.5, 7, 7.5, 8];
const neckWidths = [20, 20, 20.5, 21, 21.5, 22, 22.5, 23, 23.5];
const neckDepths = [7, 7, 7, 7.5, 7.5, 7.5, 8, 8, 8];
const cuffs = [18, 18.5, 19.5, 20.5, 21.5, 23, 24.5, 25.5, 26.5];
interface Gauge {
  readonly sts: number;
  readonly rows: number;
}
const body: Gauge = { sts: 1.4, rows: 1.2 };
const rib: Gauge = { sts: 1.5, rows: 1.4 };
const band: Gauge = { sts: 1.6, rows: 1.8 };
const cm = (inches: number): number => inches * 2.54;
const halfUp = (x: number): number => Math.floor(x + 0.5 + 1e-9);

function nearest(wanted: number, allowed: (count: number) => boolean): number {
  let best = 0;
  for (let count = 1; count < 2000; count++) {
    if (allowed(count) && (best === 0 || Math.abs(count - wanted) <= Math.abs(best - wanted) + 1e-9))
      best = count;
  }
  return best;
}
const even = (count: number): boolean => count % 2 === 0;
const odd = (count: number): boolean => count % 2 === 1;

/** An odd back and two fronts: of all pairs with the total nearest to the bust, the pair nearest in width. */
function backAndFront(wanted: number, overlap: number): { back: number; front: number } {
  let best = { back: 0, front: 0, off: Infinity, apart: Infinity };
  for (let back = 1; back < 400; back += 2) {
    for (let front = 1; front < 200; front++) {
      const off = Math.abs(back + 2 * front + overlap - wanted);
      const apart = Math.abs(back - 2 * front - overlap);
      const nearer = off < best.off - 1e-9 || (off < best.off + 1e-9 && apart < best.apart - 1e-9);
      if (nearer) best = { back, front, off, apart };
    }
  }
  return best;
}

/** Per size, from stitches and rows to the cm of the body's fabric, and the ease of the bust. */
function cardiganOf(fabric: Gauge, ease = 16) {
  const bandRows = halfUp(3 * band.rows);
  const [hem, cuffDepth] = [halfUp(6 * rib.sts), halfUp(6 * rib.sts)];
  return chart.bust.map((_inches, size) => {
    const bust = cm(chart.bust[size]!) + ease;
    const overlap = (bandRows / band.rows) * fabric.sts;
    const { back, front } = backAndFront(bust * fabric.sts, overlap);
    const underarm = halfUp(leftAtUnderarm[size]! * fabric.sts);
    const neck = nearest(neckWidths[size]! * fabric.sts, odd);
    const shoulder = (back - 2 * underarm - neck) / 2;
    const armhole = Math.max(cm(chart.depth[size]!) + 2.5, (cm(chart.upperArm[size]!) + 12) / 2);
    const length = cm(chart.backWaist[size]!) + 16;
    const lowerRows = nearest((length - hem / rib.sts - armhole) * fabric.rows, even);
    const armholeRows = halfUp(armhole * fabric.rows);
    const upperRows = nearest((armhole - neckDepths[size]!) * fabric.rows, even);
    const cuffRows = nearest(cuffs[size]! * rib.rows, even);
    const wrist = nearest((cuffRows * 6) / 5, odd);
    const top = nearest(2 * (armholeRows / fabric.rows) * fabric.sts, odd);
    const sleeve = cm(chart.neckToWrist[size]!) - (back - 2 * underarm) / fabric.sts / 2;
    // Two rows of the armhole lie on the front of the shoulder, and as many fewer on the back.
    const rows = { back: lowerRows + armholeRows - 2, front: lowerRows + armholeRows + 2 };
    const sleeveRows = halfUp((sleeve - cuffDepth / rib.sts) * fabric.rows);
    const bust_made = (back + 2 * front) / fabric.sts + bandRows / band.rows;
    return { back, front, shoulder, neck, rows, wrist, top, sleeveRows, upperRows, bust: bust_made };
  });
}

const visit = visiting();
let page: Page;

async function expectCardigan(worked: ReturnType<typeof cardiganOf>): Promise<void> {
  expect(await numbers(page, 'back-sts', 'value')).toEqual(worked.map((size) => size.back));
  expect(await numbers(page, 'front-sts', 'value')).toEqual(worked.map((size) => size.front));
  expect(await numbers(page, 'shoulder-sts', 'value')).toEqual(worked.map((size) => size.shoulder));
  expect(await numbers(page, 'back', 'rows')).toEqual(worked.map(({ rows }) => rows.back));
  for (const front of ['right-front', 'left-front']) {
    expect(await numbers(page, front, 'rows')).toEqual(worked.map(({ rows }) => rows.front));
    expect(await numbers(page, front, 'end')).toEqual(worked.map((size) => size.shoulder));
  }
  expect(await numbers(page, 'back', 'end')).toEqual(worked.map((size) => 2 * size.shoulder + size.neck));
  expect(await numbers(page, 'wrist-sts', 'total')).toEqual(worked.map((size) => size.wrist));
  expect(await numbers(page, 'sleeve', 'end')).toEqual(worked.map((size) => size.top));
  expect(await numbers(page, 'sleeve', 'rows')).toEqual(worked.map((size) => size.sleeveRows));
  const bust = await numbers(page, 'bust-made', 'made');
  for (const [size, { bust: wanted }] of worked.entries()) expect(bust[size]).toBeCloseTo(wanted, 1);
}

/** The lines that are drawn, first and last stitch of every size. */
async function expectPlotted(worked: ReturnType<typeof cardiganOf>): Promise<void> {
  await page.locator('[data-place][data-cell="sleeve"]').first().focus();
  await page.getByRole('button', { name: 'Stitches by row' }).click();
  const lines = (await plotted(page)).lines.filter((line) => line.kind === 'worked');
  const sizes = ['xs', 's', 'm', 'l', 'xl', '2x', '3x', '4x', '5x'];
  const drawn = sizes.map((id) => lines.find((line) => line.id === id)!.points);
  expect(drawn.map((points) => points[0]!.y)).toEqual(worked.map((size) => size.wrist));
  expect(drawn.map((points) => points.at(-1)!.y)).toEqual(worked.map((size) => size.top));
}

describe('the cardigan', () => {
  beforeEach(async () => {
    page = await visit();
  });

  it('shows in every size the counts that the published arithmetic gives, and draws them', async () => {
    const worked = cardiganOf(body);
    await expectCardigan(worked);
    await expectPlotted(worked);
  });

  it('follows another body swatch: counts in every size, and the plot', async () => {
    await type(page, 'body', 'sts.0.count', '15');
    await type(page, 'body', 'rows.0.count', '13.5');
    await settled(page);
    const worked = cardiganOf({ sts: 1.5, rows: 1.35 });
    expect(worked).not.toEqual(cardiganOf(body));
    await expectCardigan(worked);
    await expectPlotted(worked);
  });

  it('grows by the same bust from size to size, within a stitch of the back and one of the fronts', async () => {
    const made = cardiganOf(body).map(({ bust }) => bust);
    for (const [at, bust] of made.entries()) {
      expect(Math.abs(bust - cm(chart.bust[at]!) - 16)).toBeLessThan(1);
      if (at > 0) expect(Math.abs(bust - made[at - 1]! - cm(4))).toBeLessThan(2 / body.sts);
    }
    expect(await numbers(page, 'bust-made', 'made')).toEqual(made.map((bust) => Number(bust.toFixed(1))));
  });

  it('with another hook for the rib changes hems and cuffs, and not the widths of the body', async () => {
    const before = [await shown(page, 'back-sts', 'value'), await shown(page, 'back', 'end')];
    await type(page, 'rib', 'rows.0.count', '16');
    await settled(page);
    const hems = cardiganOf(body).map(({ back }) => halfUp((back / body.sts) * 1.6));
    expect(await numbers(page, 'back-hem', 'rows')).toEqual(hems);
    expect([await shown(page, 'back-sts', 'value'), await shown(page, 'back', 'end')]).toEqual(before);
  });

  it('a wider body makes a shorter sleeve', async () => {
    const before = await numbers(page, 'sleeve', 'length');
    await type(page, 'finished-bust', 'ease', '40');
    await settled(page);
    const after = await numbers(page, 'sleeve', 'length');
    for (const [size, length] of after.entries()) expect(length).toBeLessThan(before[size]!);
  });

  it('shown in inches is the same cardigan', async () => {
    const before = [await shown(page, 'back-sts', 'value'), await shown(page, 'sleeve', 'rows')];
    await page.getByLabel('inches').check();
    expect(await shown(page, 'bust', 'value')).toEqual(chart.bust.map(String));
    expect([await shown(page, 'back-sts', 'value'), await shown(page, 'sleeve', 'rows')]).toEqual(before);
    await page.getByLabel('cm', { exact: true }).check();
    expect(await shown(page, 'bust', 'value')).toEqual(chart.bust.map((inches) => cm(inches).toFixed(1)));
  });
});

describe('what cannot be', () => {
  // All in one page: each leaves the cardigan as it was.
  beforeAll(async () => {
    page = await visit();
  });

  it.each([
    ['a text where a number belongs', 'wide', 'Type a'],
    ['no stitches at all', '0', 'more than 0'],
    ['fewer than none', '-14', 'more than 0'],
  ])('%s is refused with a sentence, and Escape leaves what was there', async (_what, typed, sentence) => {
    await type(page, 'body', 'sts.0.count', typed);
    await page.getByRole('alert').filter({ hasText: sentence }).waitFor();
    await page.keyboard.press('Escape');
    expect(await page.getByRole('alert').count()).toBe(0);
    await expectCardigan(cardiganOf(body));
  });

  it.each([
    ['finished_bust + 10', 'CM(10)'],
    ['finished_bust + body_sts', 'cannot be added'],
    ['finished_bust +', 'missing after +'],
    ['finished_bost', 'no cell called finished_bost'],
    ['body_length', 'uses itself'],
    ['back_length', 'use each other'],
  ])('the formula %s is refused with a sentence', async (formula, sentence) => {
    await type(page, 'body-length', 'value', `=${formula}`);
    await page.getByRole('alert').filter({ hasText: sentence }).waitFor();
    await page.keyboard.press('Escape');
    // The first Escape may have put away the names that were offered.
    if (await page.locator('main input:focus').count()) await page.keyboard.press('Escape');
    expect(await page.locator('[data-formula][data-cell="body-length"]').innerText()).toContain('CM(16)');
    await settled(page);
    await expectCardigan(cardiganOf(body));
  });

  it('a taper too steep for its rows says so on the sleeve, in the sizes it concerns, and the others are drawn', async () => {
    await type(page, 'cuff', 'value', '160', 'xs');
    await settled(page);
    const message = page.locator('[data-cell-rows="sleeve"]').getByText('XS:');
    await message.first().waitFor();
    expect((await shown(page, 'sleeve', 'rows'))[0]).toBe('–');
    expect(await numbers(page, 'sleeve', 'rows')).toHaveLength(9);
    await page.locator('[data-place][data-cell="sleeve"]').first().focus();
    await page.locator('figure').getByText('is not drawn').waitFor();
    await page.keyboard.press('ControlOrMeta+z');
    await settled(page);
    await expectCardigan(cardiganOf(body));
  });

  it('a file that is no notebook, or is from a newer version, leaves the open notebook', async () => {
    const open = (name: string, text: string): Promise<void> =>
      page.setInputFiles('input[type=file]', {
        name,
        mimeType: 'application/json',
        buffer: Buffer.from(text),
      });
    await open('photo.json', 'not json');
    await page.getByRole('alert').filter({ hasText: 'photo.json: This file is not a notebook' }).waitFor();
    await open('later.json', '{"format":"easewright notebook","version":99,"notebook":{}}');
    await page.getByRole('alert').filter({ hasText: 'newer version' }).waitFor();
    await expectCardigan(cardiganOf(body));
  });
});
