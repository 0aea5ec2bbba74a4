import fc from 'fast-check';
import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { describe, expect, inject, it, onTestFinished } from 'vitest';
import { handMade, hostileFile } from '../notebook/hostile';
import { opened } from './burst';
import { settled, shown, type } from './workspace';
import { answered, given, watch } from './hostile-files';
import { hand, kept, titlesInList, notice, ownProfile } from './kept';

const own = ownProfile();

describe('a file from outside', () => {
  it('hostile anyhow is refused or opens, and nothing of the open work is lost; no dialog, script or request', async () => {
    const page = await own.context.newPage();
    const { wrong } = watch(page, inject('address'));
    await opened(page, inject('address'));
    await type(page, 'hand', 'value', '21.5');
    await kept(page);
    for (const [at, [what, text, opens]] of handMade.entries()) {
      expect(await given(page, `made ${at}.json`, text()), what).toBe(opens);
    }
    const folder = mkdtempSync(join(tmpdir(), 'easewright-'));
    onTestFinished(() => rmSync(folder, { recursive: true }));
    const large = join(folder, 'large.json');
    writeFileSync(large, '{"format":"easewright notebook",');
    truncateSync(large, 100e6);
    await page.setInputFiles('input[type=file]', large);
    expect(await answered(page, 'large.json')).toBe(false);

    let openedOnes = 0;
    for (const [at, text] of fc.sample(hostileFile, { seed: 9, numRuns: 60 }).entries()) {
      if (await given(page, `fuzzed ${at}.json`, text)) openedOnes++;
    }
    expect(openedOnes).toBeGreaterThan(5);
    expect(openedOnes).toBeLessThan(60);
    expect(await page.evaluate(() => 'ran' in window || 'polluted' in {})).toBe(false);
    expect(wrong).toEqual([]);
    await titlesInList(page);
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Saltmarsh cardigan.*61|^Saltmarsh cardigan/ })
      .last()
      .click();
    await expect.poll(() => hand(page)).toBe('21.5');
  });
});

describe('a notebook goes from one to another', () => {
  it('made in one profile it opens in another, from a file and from a link; the link shows it first', async () => {
    await own.context.grantPermissions(['clipboard-read', 'clipboard-write']);
    const page = await own.open();
    await type(page, 'hand', 'value', '21.5');
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a file' }).click(),
    ]);
    await page.getByRole('button', { name: 'Share', exact: true }).click();
    await page.getByRole('button', { name: 'Make a link' }).click();
    const link = await page.getByLabel('Link').inputValue();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(link);

    const other = await own.another({ viewport: { width: 390, height: 800 } });
    const theirs = await other.newPage();
    await opened(theirs, inject('address'));
    await theirs.setInputFiles('input[type=file]', await file.path());
    await expect.poll(() => hand(theirs)).toBe('21.5');
    await kept(theirs);
    await type(theirs, 'hand', 'value', '19');
    await kept(theirs);

    await theirs.goto('about:blank');
    const { wrong } = watch(theirs, inject('address'));
    const wanted: string[] = [];
    theirs.on('request', (request) => wanted.push(request.url()));
    await opened(theirs, link);
    await notice(theirs, 'came in a link').waitFor();
    expect(await hand(theirs)).toBe('21.5');
    await type(theirs, 'hand', 'value', '30');
    await theirs.getByText('This notebook came in a link').first().waitFor();
    await theirs.keyboard.press('Escape');
    expect(wanted.filter((url) => url.includes(link.slice(-40)) && !url.includes('#'))).toEqual([]);
    await theirs.getByRole('button', { name: 'Go to my own notebook' }).click();
    expect(await hand(theirs)).toBe('19.0');
    expect(theirs.url()).toBe(inject('address'));

    await theirs.goto(link);
    await theirs.getByRole('button', { name: 'Keep a copy' }).click();
    await kept(theirs);
    await type(theirs, 'hand', 'value', '22');
    await kept(theirs);
    await theirs.reload();
    await settled(theirs);
    expect(await hand(theirs)).toBe('22.0');
    expect(await titlesInList(theirs)).toHaveLength(2);
    expect(wrong).toEqual([]);
  });

  it('the numbers go out as CSV and as a table on the clipboard, as the page shows them', async () => {
    await own.context.grantPermissions(['clipboard-read', 'clipboard-write']);
    const page = await own.open();
    await page.getByRole('button', { name: 'Share', exact: true }).click();
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a table (CSV)' }).click(),
    ]);
    const { data } = Papa.parse<string[]>(readFileSync(await file.path(), 'utf8').replace(/^\uFEFF/, ''));
    const row = (rows: string[][], cell: string, value = '') =>
      rows.find((line) => line[1] === cell && line[2] === value)!.slice(4);
    expect(data[0]!.slice(4)).toEqual(['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X']);
    expect(row(data, 'Back stitches')).toEqual(await shown(page, 'back-sts', 'value'));
    expect(row(data, 'Sleeve', 'Rows in all')).toEqual(await shown(page, 'sleeve', 'rows'));
    await page.getByRole('button', { name: 'Copy as a table' }).click();
    await page.getByText('The table is on the clipboard.').waitFor();
    const [text, html] = await page.evaluate(async () => {
      const [item] = await navigator.clipboard.read();
      const as = async (type: string): Promise<string> => (await item!.getType(type)).text();
      return [await as('text/plain'), await as('text/html')];
    });
    const pasted = text!.split('\n').map((line) => line.split('\t'));
    expect(row(pasted, 'Back stitches')).toEqual(await shown(page, 'back-sts', 'value'));
    expect(html).toContain(`<td>Back stitches</td>`);
  });
});
