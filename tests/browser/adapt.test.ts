import { readFile as readDisk } from 'node:fs/promises';
import type { Page } from 'playwright';
import { beforeAll, describe, expect, it } from 'vitest';
import { workPiece } from '../../src/craft';
import { allCells, readFile, type Notebook } from '../../src/notebook';
import { patternOf, prove } from '../../src/pattern';
import { heronPullover } from '../../src/starters/adapted-pullover';
import { sourceOf } from '../pattern/write/source-of';
import { settled } from './workspace';
import { faults } from './faults';
import { visiting } from './visiting';

const visit = visiting();
let page: Page;
beforeAll(async () => {
  page = await visit();
});

/** Types over one of the maker's own numbers, as a person does. */
async function typeOwn(group: string, label: string, value: string): Promise<void> {
  const field = page.getByRole('group', { name: group }).getByLabel(label).first();
  await field.fill(value);
  await field.press('Tab');
}

/** A row of the comparison: the pattern's number, mine, and the difference, as shown. */
async function sideBySide(group: string, label: string): Promise<string[]> {
  return page.$$eval(
    'section[aria-labelledby="adapt-beside"] tbody',
    (bodies, [wanted, row]) =>
      bodies
        .filter((body) => body.querySelector('.group th')?.textContent?.trim() === wanted)
        .flatMap((body) => [...body.querySelectorAll('tr')])
        .filter((tr) => tr.querySelector('th[scope="row"]')?.textContent?.trim() === row)
        .flatMap((tr) => [...tr.querySelectorAll('td')].slice(0, 3).map((td) => td.textContent!.trim())),
    [group, label] as const,
  );
}

async function savedNotebook(): Promise<Notebook> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /^Save/u }).first().click(),
  ]);
  const read = readFile(await readDisk(await download.path(), 'utf8'));
  if ('problem' in read) throw new Error(read.problem);
  return read.notebook;
}

describe('a printed pattern in nine sizes, put in by pasting', () => {
  it('is doubted where it is misprinted, at its line, and the text shows the place', async () => {
    await page.getByRole('button', { name: 'Adapt', exact: true }).click();
    const area = page.getByLabel('The pattern’s text');
    await area.focus();
    // As a clipboard puts it in: all at once.
    await page.keyboard.insertText(heronPullover.replace('row 17 (15, 9, 3', 'row 17 (15, 8, 3'));
    await page
      .getByText('In size M the line comes to 52, and the pattern says 50', { exact: false })
      .waitFor();
    expect(await page.getByRole('status').first().textContent()).toContain('1 doubt');
    expect(await faults(page)).toEqual([]);
    await page.getByRole('button', { name: /Show it in the text.*line 43/u }).click();
    const selected = await area.evaluate((field: HTMLTextAreaElement) =>
      field.value.slice(field.selectionStart, field.selectionEnd),
    );
    expect(selected).toBe('46 (46, 50, 50, 54, 54, 58, 58, 62)');
  });

  it('once mended, becomes a notebook with a column for each size and one of mine', async () => {
    const area = page.getByLabel('The pattern’s text');
    await area.fill('');
    await area.focus();
    await page.keyboard.insertText(heronPullover);
    await page.getByText('no doubts').waitFor();
    await page.getByRole('button', { name: 'Make the notebook', exact: true }).click();
    await page.getByRole('heading', { name: '2. Your swatch, your body' }).waitFor();
    // It stands below the text, and is gone to.
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('adapt-maker');
    await page.getByText('The joins are proven in every column', { exact: false }).waitFor();
    await settled(page);
    // At the pattern's own gauge every number is the pattern's.
    await page.getByLabel('Shown for').selectOption({ label: '5X' });
    expect(await sideBySide('Back', 'Start')).toEqual(['182', '182', '0']);
    expect(await sideBySide('Sleeves', 'Stitches picked up')).toEqual(['138', '138', '0']);
  });

  it('with another swatch and a larger upper arm, is fitted to that body and its joins match', async () => {
    await page.getByLabel('Shown for').selectOption({ label: 'Mine' });
    await typeOwn('My fabric', 'Stitches counted', '20');
    await typeOwn('My fabric', 'Rows counted', '28');
    await typeOwn('My finished bust', 'Body', '101');
    await typeOwn('My finished bust', 'Ease', '10');
    await typeOwn('My finished upper arm', 'Body', '46');
    await typeOwn('My finished upper arm', 'Ease', '5');
    await settled(page);
    await page.getByText('The joins are proven in every column', { exact: false }).waitFor();
    // 111 cm is nearest to 114.5 (L), 51 cm of arm are XL: 126 ÷ 2.2 × 111 ÷ 114.5 × 2 = 111.04, of 4 plus 2: 110.
    expect(await sideBySide('Back', 'Start')).toEqual(['126', '110', '−16']);
    // XL picks up 112: 112 ÷ 2.2 × 2 = 101.8; the underarm has 6 × 0.88 = 5 twice, and each side 46.
    expect(await sideBySide('Sleeves', 'Stitches picked up')).toEqual(['112', '102', '−10']);
    expect(await page.getByLabel('At the upper arm').locator('option:checked').textContent()).toBe(
      'nearest: XL',
    );
    expect(await page.getByLabel('At the bust').locator('option:checked').textContent()).toBe('nearest: L');
    expect(await faults(page)).toEqual([]);
  });

  it('is written out as a pattern for one maker that recounts, with front, back and sleeve meeting', async () => {
    await page.getByRole('button', { name: 'Keep only my column' }).click();
    await settled(page);
    const notebook = await savedNotebook();
    expect(notebook.sizes.map(({ label }) => label)).toEqual(['Mine']);
    const source = await sourceOf(notebook);
    const pattern = patternOf(source);
    expect(prove(pattern, source)).toEqual({ proven: true });
    expect(pattern.parts.filter(({ kind }) => kind === 'piece').map(({ heading }) => heading)).toEqual([
      'Back',
      'Front',
      'Front shoulder',
      'Sleeves',
    ]);
    const rows = Object.fromEntries(
      allCells(notebook).flatMap((cell) => {
        if (cell.kind !== 'piece' || cell.aside) return [];
        const plan = source.plan('mine', cell.id);
        if ('problem' in plan) throw new Error(plan.problem);
        return [[cell.label, workPiece(plan).map(({ count }) => count)]];
      }),
    );
    const [back, front, side, sleeve] = ['Back', 'Front', 'Front shoulder', 'Sleeves'].map(
      (label) => rows[label]!,
    );
    expect(front!.length + side!.length).toBe(back!.length);
    expect(front!.slice(0, 60)).toEqual(back!.slice(0, 60));
    const left = 110 - back!.at(-1)!;
    // Two sides of the armhole, and the stitches left at the underarms of back and front.
    expect(sleeve![0]).toBe(2 * 46 + left);
  });
});
