import { readFileSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { startBrowser } from '../browser/browser';
import { opened } from '../browser/burst';
import { begin, settled, type } from '../browser/workspace';
import { hand } from '../browser/kept';
import { damages, type Damaging } from '../storage/damages';

/** How often: `RECORDS=12 CLOCKS=10 npm run soak -- -t records` for less. */
const recordRounds = Number(process.env['RECORDS'] ?? 100);
const clockRounds = Number(process.env['CLOCKS'] ?? 100);
const day = 86_400_000;

const figures = { damaged: 0, clocks: 0, lost: 0, falseWords: 0 };
let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(async () => {
  await browser.close();
  const { damaged, clocks, lost, falseWords } = figures;
  console.log(
    `${damaged} databases damaged, ${clocks} wrong clocks: ${lost} edits lost, ${falseWords} false words.`,
  );
});

/** Waits until what was done is on the device, however long that takes. */
const kept = (page: Page): Promise<void> => page.locator('[data-standing="kept"]').waitFor();

interface Database {
  readonly entries: readonly { id: string; title: unknown; deleted?: unknown }[];
  readonly texts: readonly string[];
  readonly stateTexts: readonly string[];
}

/** What the database holds, read past the page. */
function stored(page: Page): Promise<Database> {
  return page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const open = indexedDB.open('easewright');
      open.onsuccess = () => resolve(open.result);
      open.onerror = () => reject(open.error!);
    });
    const read = database.transaction(['notebooks', 'texts', 'stateTexts']);
    const all = (store: string) =>
      new Promise<never[]>((resolve) => {
        const request = read.objectStore(store).getAll();
        request.onsuccess = () => resolve(request.result as never[]);
      });
    const [entries, texts, stateTexts] = await Promise.all(['notebooks', 'texts', 'stateTexts'].map(all));
    database.close();
    return { entries: entries!, texts: texts!, stateTexts: stateTexts! };
  });
}

/** Damages the notebook whose text has a value, in the page's own database. */
async function spoilt(page: Page, { damage }: Damaging, value: string): Promise<void> {
  await page.evaluate(
    async ([source, value]) => {
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        const open = indexedDB.open('easewright');
        open.onsuccess = () => resolve(open.result);
        open.onerror = () => reject(open.error!);
      });
      const damaging = (window as unknown as { damaging: Record<string, Damaging['damage']> }).damaging[
        source!
      ]!;
      const write = database.transaction([...database.objectStoreNames], 'readwrite');
      const texts = write.objectStore('texts');
      const [keys, all] = await Promise.all(
        [texts.getAllKeys(), texts.getAll()].map(
          (request) =>
            new Promise<unknown[]>((resolve) => (request.onsuccess = () => resolve(request.result))),
        ),
      );
      const at = all!.findIndex((text) => String(text).includes(`"value": ${value}`));
      damaging((name) => write.objectStore(name), keys![at] as string);
      await new Promise((resolve) => (write.oncomplete = resolve));
      database.close();
    },
    [damages.findIndex((one) => one.damage === damage).toString(), value],
  );
}

/** Functions cannot be handed to a page, and its policy lets none be made of text: they come as a script of the test. */
const damaging = `window.damaging = [${damages.map(({ damage }) => damage.toString()).join(',')}];`;

async function profile(script?: string): Promise<{ context: BrowserContext; page: Page; wrong: string[] }> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 900 },
    serviceWorkers: 'block',
  });
  if (script) await context.addInitScript(script);
  const page = await context.newPage();
  const wrong: string[] = [];
  page.on('pageerror', (error) => wrong.push(error.message));
  return { context, page, wrong };
}

/** What the list of notebooks says, opened and read; the dialog stays open. */
async function listOf(page: Page): Promise<string[]> {
  await page.getByRole('button', { name: 'Notebooks', exact: true }).click();
  const list = page.getByRole('dialog').locator('ul').first().locator('li');
  await list.first().waitFor();
  return list.allInnerTexts();
}

it.each(Array.from({ length: recordRounds }, (_one, at) => at))(
  'records %i: a damaged database costs the damaged notebook at most, and its text can be had',
  async (round) => {
    const { context, page, wrong } = await profile(damaging);
    const one = damages[round % damages.length]!;
    const value = `${20 + (round % 60)}.25`;
    await page.clock.setFixedTime(new Date(2026, 2, 2, 12, 0));
    await opened(page, inject('address'));
    // An earlier state, what is damaged after it, and a notebook beside it that nothing happens to.
    await type(page, 'hand', 'value', '19.75');
    await kept(page);
    await page.clock.setFixedTime(new Date(2026, 2, 2, 12, 20));
    await type(page, 'hand', 'value', value);
    await expect
      .poll(async () => (await stored(page)).texts.some((text) => text.includes(`"value": ${value}`)))
      .toBe(true);
    await begin(page, 'Hat crown');
    await kept(page);
    await spoilt(page, one, value);

    await page.reload();
    await settled(page);
    const entries = await listOf(page);
    figures.damaged++;
    const own = entries.find((text) => text.includes('Saltmarsh cardigan'));
    const whole = entries.find((text) => text.includes('A hat with eight wedges'));
    // What is said of each is true of it.
    const isReported =
      own?.includes('Damaged') === one.reported && whole !== undefined && !whole.includes('Damaged');
    if (!isReported || /NaN|undefined|Invalid/.test(entries.join())) figures.falseWords++;
    expect(own?.includes('Damaged'), entries.join('\n')).toBe(one.reported);
    expect(whole).not.toMatch(/Damaged|NaN|undefined/);

    const dialog = page.getByRole('dialog');
    const wanted = one.left === 'earlier' ? '"value": 19.75' : `"value": ${value}`;
    let text: string;
    if (one.left === 'opens') {
      await dialog.getByRole('button', { name: /^Saltmarsh cardigan/ }).click();
      await expect
        .poll(async () => page.getByRole('heading', { level: 1 }).innerText())
        .toBe('Saltmarsh cardigan');
      await settled(page);
      const shown = await hand(page);
      text = Math.abs(Number(shown) - Number(value)) < 0.06 ? wanted : shown;
      // The work goes on from there.
      await type(page, 'hand', 'value', '33.5');
      await expect
        .poll(async () => (await stored(page)).texts.some((one) => String(one).includes('"value": 33.5')))
        .toBe(true);
    } else {
      if (one.left === 'text') {
        await dialog.getByRole('button', { name: /^Saltmarsh cardigan/ }).click();
        await dialog.getByRole('alert').waitFor();
      }
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        dialog.getByRole('button', { name: 'Save the text of Saltmarsh cardigan as a file' }).click(),
      ]);
      text = readFileSync(await file.path(), 'utf8');
    }
    // A text that was cut short has what is left of it.
    const found =
      one.left === 'text' ? text.includes('"title": "Saltmarsh cardigan"') : text.includes(wanted);
    if (!found) figures.lost++;
    expect(found).toBe(true);
    expect(wrong).toEqual([]);
    await context.close();
  },
);

it.each(Array.from({ length: clockRounds }, (_one, at) => at))(
  'clocks %i: set ahead or behind, an earlier state, a deleted notebook and an edit all stay',
  async (round) => {
    const { context, page, wrong } = await profile();
    const right = new Date(2026, 2, 2, 12, 0).getTime();
    // From an hour to a year and a half, both ways: within five minutes an edit becomes no state of its own.
    const days = (round % 2 ? -1 : 1) * (1 / 24) * 1.1 ** round;
    const set = (time: number): Promise<void> => page.clock.setFixedTime(time);
    await set(right);
    await opened(page, inject('address'));
    const change = async (value: string): Promise<void> => {
      await type(page, 'hand', 'value', value);
      await expect
        .poll(async () => (await stored(page)).texts.some((text) => text.includes(`"value": ${value}`)))
        .toBe(true);
    };
    for (const [at, value] of ['20.25', '21.25', '22.25'].entries()) {
      await set(right + at * 6 * 60_000);
      await change(value);
    }
    await begin(page, 'Hat crown');
    await kept(page);
    await listOf(page);
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: 'Delete A hat with eight wedges' }).click();
    await dialog.getByText('Deleted A hat with eight wedges.').waitFor();
    await dialog.getByRole('button', { name: 'Done' }).click();
    await settled(page);
    const before = await stored(page);

    await set(right + days * day);
    await page.reload();
    await settled(page);
    await change('23.25');
    await set(right + 60 * 60_000);
    await page.reload();
    await settled(page);
    await change('24.25');
    const after = await stored(page);
    figures.clocks++;
    const gone = before.stateTexts.filter((text) => !after.stateTexts.includes(text));
    const deleted = after.entries.filter((entry) => entry.deleted !== undefined);
    const edit = [...after.texts, ...after.stateTexts].some((text) => text.includes('"value": 22.25'));
    figures.lost += gone.length + (deleted.length === 1 ? 0 : 1) + (edit ? 0 : 1);
    expect(gone).toEqual([]);
    expect(deleted).toHaveLength(1);
    expect(edit).toBe(true);
    const [first] = await listOf(page);
    const says = (await page.locator('[data-standing]').innerText()) + first;
    if (/NaN|Invalid|undefined|clock set/.test(says)) figures.falseWords++;
    expect(says).not.toMatch(/NaN|Invalid|undefined|clock set/);
    expect(first).toContain('Saltmarsh cardigan');
    expect(wrong).toEqual([]);
    await context.close();
  },
);
