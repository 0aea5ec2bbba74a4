import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { begin, settled, type } from './workspace';
import { wrong } from './appearances';
import { vNeck } from '../notebooks/v-neck';
import { openNotebook } from './open-notebook';
import { visiting } from './visiting';

const visit = visiting();

async function opened(view: string, width = 1280): Promise<Page> {
  const page = await visit({ viewport: { width, height: 900 } });
  await page.evaluate(() => {
    window.print = () => {};
  });
  if (view === 'Pattern') await openNotebook(page, vNeck());
  else await begin(page, 'Three lessons on gauge');
  await page.getByRole('button', { name: view, exact: true }).click();
  return page;
}

const proof = (page: Page) => page.locator('.proof');

async function proven(page: Page): Promise<void> {
  await proof(page).getByText('Recounted in').waitFor();
}

async function reworded(page: Page, key: string, words: string): Promise<void> {
  await page.locator(`[data-reword="${key}"]`).focus();
  await page.keyboard.press('Enter');
  const field = page.getByRole('textbox', { name: 'Sentence' });
  await field.waitFor();
  await page.keyboard.press('End');
  await page.keyboard.type(words);
  await page.keyboard.press('Enter');
}

describe('the V-neck’s pattern, in nine sizes', () => {
  it('has everything a maker looks for, and recounts in every size', async () => {
    const page = await opened('Pattern');
    await proven(page);
    expect(await proof(page).innerText()).toContain('in all 9 sizes');
    const article = page.locator('article.pattern');
    const headings = await article.locator('h3').allInnerTexts();
    for (const heading of [
      'Materials',
      'Gauge',
      'Finished measurements',
      'Terms and abbreviations',
      'Back',
      'Front',
      'Band, worked',
      'Making up',
    ]) {
      expect(headings).toContain(heading);
    }
    const text = await article.innerText();
    expect(text).toContain('Sizes XS (S, M, L, XL, 2X, 3X, 4X, 5X)');
    expect(text).toMatch(/US terms/);
    expect(text).toMatch(/balls of 50 g/);
    expect(text).toMatch(/6\.5 mm hook/);
    expect(text).toMatch(/14 sts and 12 rows to 10 cm/);
    // One number for each of the nine sizes, at the first row of the back.
    expect(text).toContain('[67 (75, 83, 83, 91, 99, 107, 115, 123) sts]');
    // The cautions that concern women’s sizes from a chart; a child’s are for a child’s.
    const cautions = await article.locator('.caution').allInnerTexts();
    for (const about of [/estimates with a reserve/, /averages of some bodies/]) {
      expect(cautions.some((caution) => about.test(caution))).toBe(true);
    }
    // Every stretch of every piece has its line.
    for (const stretch of ['Hem to underarm', 'Neck to shoulder', 'Rib']) {
      expect(text).toContain(stretch);
    }
    expect(await article.locator('table').first().locator('thead th').count()).toBeGreaterThanOrEqual(9);
  });

  it('in one size has that size’s numbers and no lists', async () => {
    const page = await opened('Pattern');
    await page.getByLabel('Sizes', { exact: true }).selectOption('m');
    await page.getByText('Row 1 (RS): sc in the 2nd ch from hook and in each ch across [83 sts].').waitFor();
    await proven(page);
    const lines = await page.locator('article .line').allInnerTexts();
    expect(lines.filter((line) => /\d \(\d+, \d/.test(line))).toEqual([]);
  });

  it('keeps a sentence in the person’s words, its number live when a swatch changes, until it is given back', async () => {
    const page = await opened('Pattern');
    await proven(page);
    const key = 'gauge body';
    await reworded(page, key, ' Measure it blocked.');
    const sentence = page.locator('.sentence', { has: page.locator(`[data-reword="${key}"]`) });
    await sentence.getByText('Measure it blocked.').waitFor();
    expect(await sentence.innerText()).toContain('14 sts');
    await proven(page);

    await page.getByRole('button', { name: 'Leaf', exact: true }).click();
    await type(page, 'body', 'sts.0.count', '15');
    await settled(page);
    await page.getByRole('button', { name: 'Pattern', exact: true }).click();
    await sentence.getByText('15 sts').waitFor();
    expect(await sentence.innerText()).toContain('Measure it blocked.');
    await proven(page);

    await page.locator(`[data-reword="${key}"]`).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Back to its own words' }).click();
    await sentence.waitFor();
    expect(await sentence.innerText()).not.toContain('Measure it blocked.');
  });

  it('refuses words that leave a number out, says which, and offers to put it back in', async () => {
    const page = await opened('Pattern');
    await page.locator('[data-reword="piece back lower"]').focus();
    await page.keyboard.press('Enter');
    const field = page.getByRole('textbox', { name: 'Sentence' });
    await field.waitFor();
    await page.keyboard.press('Control+a');
    await page.keyboard.type('Work on.');
    await page.keyboard.press('Enter');
    expect(await page.getByRole('alert').innerText()).toMatch(/leaves out \{rows\}/);
    await page.getByRole('button', { name: /^Put 45 .* in$/ }).click();
    expect(await page.getByRole('alert').count()).toBe(0);
    await field.focus();
    await page.keyboard.press('Escape');
    await page
      .locator('#sentence-piece-back-lower')
      .getByText('Work 45 (45, 45, 45, 43, 41, 39, 37, 37) more rows even.')
      .waitFor();
  });

  it('marks an instruction that does not recount, goes to it, and prints and saves it as not proven', async () => {
    const page = await opened('Pattern');
    await proven(page);
    await reworded(page, 'piece back lower', ' Then work 2 rows more.');
    await proof(page).getByText('Recount failed.').waitFor();
    await proof(page)
      .getByRole('link', { name: /^Back, every size/ })
      .click();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain(
      'Then work 2 rows more.',
    );

    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as Markdown' }).click();
    const file = await (await saved).createReadStream();
    let text = '';
    for await (const chunk of file) text += String(chunk);
    expect(text).toMatch(/Recount failed/);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('article .not-proven').isVisible()).toBe(true);
    expect(await proof(page).isVisible()).toBe(false);
  });

  it('leaves as Markdown and as HTML, whole and with its proof', async () => {
    const page = await opened('Pattern');
    await proven(page);
    for (const [button, ending] of [
      ['Save as Markdown', '.md'],
      ['Save as HTML', '.html'],
    ] as const) {
      const saved = page.waitForEvent('download');
      await page.getByRole('button', { name: button }).click();
      const download = await saved;
      expect(download.suggestedFilename()).toMatch(new RegExp(`^skerry_vest\\${ending}$`));
      let text = '';
      for await (const chunk of await download.createReadStream()) text += String(chunk);
      expect(text).toMatch(/Making up/);
      expect(text).toMatch(/Recounted from this text, row by row/);
      expect(text).not.toMatch(/undefined|NaN|<script/);
      // The schematic goes with it, and what its letters stand for in every size.
      expect(text).toMatch(
        ending === '.md' ? /^\[schematic\]: data:image\/svg\+xml,%3Csvg/m : /<figure><svg /,
      );
      expect(text).toMatch(/Front: width at the end\D+15\D+7\D/);
    }
  });

  it.each([1280, 320])(
    'has its schematic, drawn as wide as it stands at %i px, and for paper as wide as that',
    async (width) => {
      const page = await opened('Pattern', width);
      const figure = page.locator('article figure');
      const drawn = async (): Promise<{ natural: number; shown: number; letters: string[] }> => {
        const image = figure.locator('img').filter({ visible: true });
        await image.waitFor();
        return image.evaluate(async (one) => {
          const img = one as HTMLImageElement;
          await img.decode();
          const svg = decodeURIComponent(img.src.slice(img.src.indexOf(',') + 1));
          const texts = [...new DOMParser().parseFromString(svg, 'image/svg+xml').querySelectorAll('text')];
          const letters = texts.map((text) => text.textContent ?? '').filter((text) => /^[A-Z]$/.test(text));
          return { natural: img.naturalWidth, shown: img.clientWidth, letters };
        });
      };
      const onScreen = await drawn();
      expect(Math.abs(onScreen.natural - onScreen.shown)).toBeLessThanOrEqual(1);
      // Every letter on it is a line of the table under it.
      const lines = await page
        .getByRole('group', { name: 'The schematic in centimetres' })
        .locator('tbody th')
        .allInnerTexts();
      expect(new Set(lines.map((line) => line[0]))).toEqual(new Set(onScreen.letters));
      await page.emulateMedia({ media: 'print' });
      await page.setViewportSize({ width: 688, height: 1000 });
      const printed = await drawn();
      expect(printed.letters.toSorted()).toEqual(onScreen.letters.toSorted());
      // Of 11 px, this leaves 7 points.
      expect(printed.shown / printed.natural).toBeGreaterThan(0.84);
    },
  );

  it.each(['A4', 'Letter'] as const)('prints to %s without the page round it, and whole', async (format) => {
    const page = await opened('Pattern');
    await proven(page);
    const onScreen = await page.locator('article .text').allInnerTexts();
    expect((await page.pdf({ format })).byteLength).toBeGreaterThan(20_000);
    await page.emulateMedia({ media: 'print' });
    for (const furniture of ['[data-furniture]', 'nav', '.proof', '.reword']) {
      for (const one of await page.locator(furniture).all()) expect(await one.isVisible()).toBe(false);
    }
    const article = page.locator('article');
    expect(await article.locator('.text').allInnerTexts()).toEqual(onScreen);
    // Nothing is wider than the paper, the table of nine sizes neither: 210 mm less the margins.
    await page.setViewportSize({ width: Math.round(((210 - 28) / 25.4) * 96), height: 1000 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(688);
    expect(
      await article
        .locator('h3')
        .first()
        .evaluate((h) => getComputedStyle(h).breakAfter),
    ).toBe('avoid');
  });

  it('counts a pasted line, and says where it does not come out', async () => {
    const page = await opened('Pattern');
    await page.getByText('Count a line').click();
    const line = page.getByLabel('A line of instructions, as it is written');
    await line.fill('from 60: *k4, k2tog; rep from * to end');
    const result = page.locator('.result');
    expect(await result.innerText()).toContain('From 60 sts it comes to 50');
    await line.fill('*k4, k2tog; rep from * to end');
    await page.getByLabel(/^Stitches before it/).fill('52');
    expect(await result.innerText()).toMatch(/4 stitches are left/);
  });
});

describe('the class sheet of the lessons', () => {
  it('covers every answer, and uncovers them one by one with the keyboard alone', async () => {
    const page = await opened('Class sheet');
    const sheet = page.locator('.class-sheet');
    await sheet.getByRole('heading', { name: 'Stitches of the scarf' }).waitFor();
    const answers = sheet.locator('[data-answer]');
    const many = await answers.count();
    expect(many).toBeGreaterThan(12);
    expect(await sheet.locator('[data-answer].hidden').count()).toBe(many);
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await page.keyboard.press('Space');
    expect(await answers.nth(0).innerText()).toBe('18 sts / 10 cm');
    expect(await sheet.locator('[data-answer].hidden').count()).toBe(many - 1);
    await page.keyboard.press('Space');
    expect(await answers.nth(1).innerText()).toBe('58.5 sts');
    // An arrow passes one by, still covered; Space uncovers the one it comes to.
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Space');
    expect(await answers.nth(2).innerText()).toBe('');
    expect(await answers.nth(3).innerText()).toBe('32.8 cm');
    await page.keyboard.press('Enter');
    expect(await answers.nth(3).innerText()).toBe('');
  });

  it('prints as a sheet with blanks, and as its key with every answer', async () => {
    const page = await opened('Class sheet');
    await page.locator('[data-answer]').first().waitFor();
    await page.getByRole('button', { name: 'Show all' }).click();
    await page.emulateMedia({ media: 'print' });
    const text = () => page.locator('.class-sheet').innerText();

    await page.evaluate(() =>
      [...document.querySelectorAll('button')].find((one) => one.textContent === 'Print the sheet')!.click(),
    );
    await page.locator('[data-answer].hidden').first().waitFor();
    expect(await page.locator('[data-answer]:not(.hidden)').count()).toBe(0);
    expect(await text()).toContain('nearest whole number');
    expect(await text()).not.toContain('58.5 sts =');
    expect(await text()).not.toContain('59 above');
    expect(await text()).toContain('Name');
    expect((await page.pdf({ format: 'A4' })).byteLength).toBeGreaterThan(10_000);
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));

    await page.emulateMedia({ media: 'screen' });
    await page.getByRole('button', { name: 'Cover all', exact: true }).click();
    await page.getByRole('button', { name: 'Print its key' }).click();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('[data-answer].hidden').count()).toBe(0);
    expect(await text()).toContain('58.5 sts');
    expect(await text()).toContain('58 is below, 59 above');
    expect(await text()).toContain(': key');
    expect(await page.locator('.class-sheet > .buttons').isVisible()).toBe(false);
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    expect(await page.locator('[data-answer].hidden').count()).toBeGreaterThan(12);
  });

  it('takes a result from the grid, and its working stands there too', async () => {
    const page = await opened('Pattern');
    await page.getByRole('button', { name: 'Leaf', exact: true }).click();
    const cell = page.locator('[data-cell-rows="back-sts"]');
    await cell.locator('.more').click();
    await cell.getByRole('button', { name: 'Working of Back stitches', exact: true }).click();
    const working = cell.getByRole('group', { name: /^Working, size/ });
    await working.waitFor();
    await working.getByLabel('Size').selectOption('m');
    expect(await working.innerText()).toMatch(/113\.98 cm ÷ 2 × 14 sts \/ 10 cm = 79\.79 sts/);
    expect(await working.innerText()).toMatch(/nearest multiple of 8 \+ 3 = 83 sts/);
    await working.getByRole('button', { name: 'put on the class sheet' }).click();
    await page.getByRole('button', { name: 'Class sheet', exact: true }).click();
    await page.locator('.class-sheet').getByRole('heading', { name: 'Back stitches' }).waitFor();
  });
});

describe('anyone can use', () => {
  it.each(['Pattern', 'Class sheet'])('the view %s, whatever it is seen in', async (view) => {
    const page = await opened(view);
    if (view === 'Pattern') {
      await proven(page);
      await reworded(page, 'piece back lower', ' More.');
      await proof(page).getByText('Recount failed.').waitFor();
      await page.getByText('Count a line').click();
      await page.locator('[data-reword="piece back end"]').focus();
      await page.keyboard.press('Enter');
      await page.getByRole('textbox', { name: 'Sentence' }).waitFor();
    } else {
      await page.getByRole('button', { name: 'Choose and order' }).click();
      await page.keyboard.press('Tab');
    }
    expect(await wrong(page)).toEqual([]);
  });
});
