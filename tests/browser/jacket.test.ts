import type { Page } from 'playwright';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { numbers, plotted, settled, shown, type } from './desk';
import { visiting } from './visiting';

/**
 * The jacket worked out once more by the arithmetic the trade publishes, from the chart's inches and the swatches
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
const cuffs = [22, 23, 24, 25, 26.5, 28, 29.5, 31, 32];
const neckWidths = [17, 17, 17.5, 18, 18.5, 19, 19.5, 20, 20.5];
const rib = { sts: 1.7, rows: 1.3 };
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

/** Per size, from stitches and rows to the cm of each fabric. */
function jacketOf(body: { sts: number; rows: number }, sleeve: { sts: number; rows: number }) {
  let ratio = { pick: 1, of: 1 };
  const wanted = sleeve.sts / body.rows;
  for (let of = 1; of <= 8; of++) {
    for (let pick = 1; pick <= 40; pick++) {
      if (Math.abs(pick / of - wanted) < Math.abs(ratio.pick / ratio.of - wanted) - 1e-12)
        ratio = { pick, of };
    }
  }
  const even = (count: number): boolean => count % 2 === 0;
  return chart.bust.map((_inches, size) => {
    const bust = cm(chart.bust[size]!) + 20;
    const armhole = Math.max(cm(chart.depth[size]!), (cm(chart.upperArm[size]!) + 10) / 2);
    const back = nearest((bust / 2) * body.sts, (count) => count % 8 === 3 && count >= 11);
    const front = nearest(
      ((bust - back / body.sts - 2 * 4) / 2) * body.sts,
      (count) => count % 8 === 3 && count >= 11,
    );
    const lowerRows = nearest((cm(chart.backWaist[size]!) + 14 - armhole) * body.rows, even);
    const armholeRows = nearest(armhole * body.rows, even);
    // A repeat of 8 is left at each underarm; the repeats that stay lose a stitch each.
    const shoulderWidth = 7 * ((back - 3) / 8 - 2) + 3;
    const shoulder = halfUp((shoulderWidth - neckWidths[size]! * body.sts) / 2);
    const pickedUp = 2 * halfUp((armholeRows * ratio.pick) / ratio.of) + 16;
    const cuff = nearest(cuffs[size]! * rib.sts, (count) => count % 4 === 0);
    const sleeveLength = cm(chart.neckToWrist[size]!) - shoulderWidth / body.sts / 2 - 6;
    const rounds = halfUp(sleeveLength * sleeve.rows) + halfUp(6 * rib.rows);
    return { back, front, rows: lowerRows + armholeRows, shoulderWidth, shoulder, pickedUp, cuff, rounds };
  });
}

const body = { sts: 1.4, rows: 1.2 };
const sleeve = { sts: 1.6, rows: 1.4 };

const visit = visiting();
let page: Page;

async function expectJacket(worked: ReturnType<typeof jacketOf>): Promise<void> {
  expect(await numbers(page, 'back-sts', 'count')).toEqual(worked.map((size) => size.back));
  expect(await numbers(page, 'back', 'rows')).toEqual(worked.map((size) => size.rows));
  expect(await numbers(page, 'sleeve-sts', 'value')).toEqual(worked.map((size) => size.pickedUp));
  expect(await numbers(page, 'front-sts', 'count')).toEqual(worked.map((size) => size.front));
  expect(await numbers(page, 'back', 'end')).toEqual(worked.map((size) => size.shoulderWidth));
  expect(await numbers(page, 'shoulder-sts', 'value')).toEqual(worked.map((size) => size.shoulder));
  expect(await numbers(page, 'front', 'end')).toEqual(worked.map((size) => size.shoulder));
  expect(await numbers(page, 'cuff-sts', 'count')).toEqual(worked.map((size) => size.cuff));
  expect(await numbers(page, 'sleeve', 'rows')).toEqual(worked.map((size) => size.rounds));
}

/** The lines that are drawn, first and last stitch and rounds of every size. */
async function expectPlotted(worked: ReturnType<typeof jacketOf>): Promise<void> {
  await page.locator('[data-place][data-cell="sleeve"]').first().focus();
  await page.getByRole('button', { name: 'Stitches by row' }).click();
  const lines = (await plotted(page)).lines.filter((line) => line.kind === 'worked');
  const sizes = ['xs', 's', 'm', 'l', 'xl', '2x', '3x', '4x', '5x'];
  const drawn = sizes.map((id) => lines.find((line) => line.id === id)!.points);
  expect(drawn.map((points) => points[0]!.y)).toEqual(worked.map((size) => size.pickedUp));
  expect(drawn.map((points) => points.at(-1)!.y)).toEqual(worked.map((size) => size.cuff));
}

describe('the jacket', () => {
  beforeEach(async () => {
    page = await visit();
  });

  it('shows in every size the counts that the published arithmetic gives, and draws them', async () => {
    const worked = jacketOf(body, sleeve);
    await expectJacket(worked);
    await expectPlotted(worked);
  });

  it('follows another body swatch: counts in every size, and the plot', async () => {
    await type(page, 'body', 'sts.0.count', '15');
    await type(page, 'body', 'rows.0.count', '13.5');
    await settled(page);
    const worked = jacketOf({ sts: 1.5, rows: 1.35 }, sleeve);
    expect(worked).not.toEqual(jacketOf(body, sleeve));
    await expectJacket(worked);
    await expectPlotted(worked);
  });

  it('with another hook for the sleeve changes the sleeve alone', async () => {
    const before = [await shown(page, 'back-sts', 'count'), await shown(page, 'back', 'rows')];
    await type(page, 'sleeve-fabric', 'sts.0.count', '18');
    await type(page, 'sleeve-fabric', 'rows.0.count', '16');
    await settled(page);
    const worked = jacketOf(body, { sts: 1.8, rows: 1.6 });
    await expectJacket(worked);
    await expectPlotted(worked);
    expect([await shown(page, 'back-sts', 'count'), await shown(page, 'back', 'rows')]).toEqual(before);
  });

  it('a wider body makes a shorter sleeve', async () => {
    const before = await numbers(page, 'sleeve', 'length');
    await type(page, 'finished-bust', 'ease', '40');
    await settled(page);
    const after = await numbers(page, 'sleeve', 'length');
    for (const [size, length] of after.entries()) expect(length).toBeLessThan(before[size]!);
  });

  it('shown in inches is the same jacket', async () => {
    const before = [await shown(page, 'back-sts', 'count'), await shown(page, 'sleeve', 'rows')];
    await page.getByLabel('inches').check();
    expect(await shown(page, 'bust', 'value')).toEqual(chart.bust.map(String));
    expect([await shown(page, 'back-sts', 'count'), await shown(page, 'sleeve', 'rows')]).toEqual(before);
    await page.getByLabel('cm', { exact: true }).check();
    expect(await shown(page, 'bust', 'value')).toEqual(chart.bust.map((inches) => cm(inches).toFixed(1)));
  });
});

describe('what cannot be', () => {
  // All in one page: each leaves the jacket as it was.
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
    await expectJacket(jacketOf(body, sleeve));
  });

  it.each([
    ['finished_bust + 10', 'CM(10)'],
    ['finished_bust + body_sts', 'cannot be added'],
    ['finished_bust +', 'missing after +'],
    ['finished_bost', 'no cell called finished_bost'],
    ['body_length', 'cannot be worked from itself'],
    ['back_length', 'go in a circle'],
  ])('the formula %s is refused with a sentence', async (formula, sentence) => {
    await type(page, 'body-length', 'value', `=${formula}`);
    await page.getByRole('alert').filter({ hasText: sentence }).waitFor();
    await page.keyboard.press('Escape');
    // The first Escape may have put away the names that were offered.
    if (await page.locator('main input:focus').count()) await page.keyboard.press('Escape');
    expect(await page.locator('[data-formula][data-cell="body-length"]').innerText()).toContain('CM(14)');
    await settled(page);
    await expectJacket(jacketOf(body, sleeve));
  });

  it('a taper too steep for its rows says so on the sleeve, in the sizes it concerns, and the others are drawn', async () => {
    await type(page, 'cuff', 'value', '160', 'xs');
    await settled(page);
    const said = page.locator('[data-cell-rows="sleeve"]').getByText('XS:');
    await said.first().waitFor();
    expect((await shown(page, 'sleeve', 'rows'))[0]).toBe('–');
    expect(await numbers(page, 'sleeve', 'rows')).toHaveLength(9);
    await page.locator('figure').getByText('is not drawn').waitFor();
    await page.keyboard.press('ControlOrMeta+z');
    await settled(page);
    await expectJacket(jacketOf(body, sleeve));
  });

  it('a file that is no notebook, or is from a newer version, leaves the notebook on the desk', async () => {
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
    await expectJacket(jacketOf(body, sleeve));
  });
});
