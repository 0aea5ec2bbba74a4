import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright';
import { beforeAll, expect, it } from 'vitest';
import { settled, toolsWithDialogs } from './workspace';
import { visiting } from './visiting';

/** A stand-in for the device's own ways to send something on. */
interface Seen {
  readonly given: { readonly title: string; readonly url: string; readonly files: readonly string[][] }[];
  readonly takesFiles: boolean;
  /** The name of the error it answers with; empty where it takes what it is given. */
  readonly refuses: string;
}

const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };
const visit = visiting();
let page: Page;
beforeAll(async () => {
  page = await visit(phone);
});

const tap = (name: string | RegExp): Promise<void> => page.getByRole('button', { name }).first().tap();

/** A place of the grid whose name, as it is read out, begins so. */
const cellNamed = (called: string): Locator =>
  page.locator(`main [data-place][aria-label^="${called}"]:not(button, select)`).first();

/** Where the fingers are on the keys on the glass: the page is told the letters, and Enter. */
async function write(text: string): Promise<void> {
  await page.locator('main input:focus').waitFor();
  await page.keyboard.type(text);
}

async function enter(called: string, text: string): Promise<void> {
  await cellNamed(called).tap();
  await write(text);
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement?.tagName !== 'INPUT');
  await settled(page);
}

async function call(label: string): Promise<void> {
  await page.locator('dialog input[maxlength]:focus').waitFor();
  await page.keyboard.type(label);
  await tap('Add it');
  await cellNamed(label).waitFor();
  await settled(page);
}

async function add(kind: string, label: string): Promise<void> {
  await tap(/^Add a cell to/);
  await page
    .getByRole('option', { name: new RegExp(`^${kind}`) })
    .first()
    .tap();
  await call(label);
}

/** Opens a place for a formula, and points at what goes in, with a sign between. */
async function point(called: string, from: string, then?: { sign: string; at: string }): Promise<void> {
  await cellNamed(called).tap();
  if (!(await page.locator('main [role=combobox]:focus').isVisible())) await write('=');
  await page.locator('main [role=combobox]:focus').waitFor();
  await cellNamed(from).tap();
  if (then) {
    await tap(then.sign);
    await cellNamed(then.at).tap();
  }
  await tap('Enter');
  await page.locator('main [role=combobox]').waitFor({ state: 'detached' });
  await settled(page);
}

const shownAt = async (called: string): Promise<string> =>
  ((await cellNamed(called).getAttribute('aria-label')) ?? '').replace(/^.*: /, '');

/** What would keep a finger from the page as it stands. */
const hindrances = (): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const root = document.documentElement;
    if (root.scrollWidth > innerWidth) found.push(`the page scrolls sideways, to ${root.scrollWidth} px`);
    if (visualViewport!.scale !== 1) found.push('the page was zoomed');
    const within = document.querySelector('dialog[open]') ?? document.body;
    for (const one of within.querySelectorAll<HTMLElement>(
      'button, [role="button"], select, input, summary',
    )) {
      if (!one.checkVisibility()) continue;
      const { type } = one as HTMLInputElement;
      const target = type === 'radio' || type === 'checkbox' ? (one.closest('label') ?? one) : one;
      const { width, height } = target.getBoundingClientRect();
      const called = one.getAttribute('aria-label') ?? one.textContent;
      if (width > 0 && Math.min(width, height) < 23.9) found.push(`${called}: ${width} × ${height} px`);
      if (one.matches('input, select') && parseFloat(getComputedStyle(one).fontSize) < 16)
        found.push(`${called}: letters that phones zoom into`);
    }
    return found;
  });

it('from a blank notebook, by touch alone on a phone: swatch, measure, ease, formula, repeat fit, a taper, a check and the pattern', async () => {
  expect(await hindrances()).toEqual([]);
  await tap('Start my own');
  await page.getByRole('dialog').waitFor();
  expect(await hindrances()).toEqual([]);
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Blank/ })
    .tap();
  await settled(page);

  await tap('Add a swatch');
  await call('Wool');
  await enter('Wool, stitches counted', '14');
  await enter('Wool, rows counted', '20');
  await add('Measure', 'Arm');
  await enter('Arm, every size', '31,5');
  await add('Ease', 'Top');
  await point('Top, body', 'Arm: change');
  await enter('Top, ease', '6');
  await add('Formula', 'Wanted');
  await point('Wanted, size', 'Top: change', { sign: 'times', at: 'Wool, stitch gauge' });
  await add('Repeat fit', 'Top stitches');
  await point('Top stitches, wanted', 'Wanted: change');
  await enter('Top stitches, multiple of', '4');
  await enter('Top stitches, plus', '2');
  // (31.5 + 6) × 1.4 = 52.5, to a multiple of 4 plus 2: 54.
  expect(await shownAt('Top stitches, size')).toBe('54 sts');

  await add('Piece', 'Sleeve');
  await enter('Sleeve, start with', '30');
  await enter('Sleeve, rows, every size', '10');
  await page.getByRole('button', { name: 'Add a stretch to Sleeve' }).tap();
  await page.getByRole('combobox', { name: 'Add a stretch to Sleeve' }).selectOption({ label: 'a taper' });
  await point('Sleeve, to', 'Top stitches: change');
  await enter('Sleeve, over', '60');
  expect(await shownAt('Sleeve, stitches at the end')).toBe('54 sts');
  expect(await shownAt('Sleeve, length')).toBe('35.0 cm');
  expect(await hindrances()).toEqual([]);

  // The drawing stands under its cell, and no wider than the phone.
  const drawing = page.locator('[data-cell-rows] figure canvas');
  await drawing.waitFor();
  const box = (await drawing.boundingBox())!;
  expect(box.x).toBeGreaterThanOrEqual(0);
  expect(box.x + box.width).toBeLessThanOrEqual(360);

  await add('Check', 'Long enough');
  await cellNamed('Long enough, size').tap();
  await page.locator('main [role=combobox]:focus').waitFor();
  await cellNamed('Sleeve, length').tap();
  await write('>=CM(30)');
  await tap('Enter');
  await page.getByText('The check holds.').waitFor();
  await tap('Pattern');
  await page.getByText('Recounted in').waitFor();
  expect(await page.locator('main').innerText()).toContain('[54 sts]');
  expect(await hindrances()).toEqual([]);
});

it('a result is looked at with a tap and opened with another; what was typed wrong says so within the phone', async () => {
  await tap('Leaf');
  await cellNamed('Top stitches, size').tap();
  expect(await page.locator('main .editor input').count()).toBe(0);
  await cellNamed('Arm, every size').tap();
  await write('a lot');
  await page.keyboard.press('Enter');
  const message = page.locator('main [role=alert]').first();
  await message.waitFor();
  const box = (await message.boundingBox())!;
  expect(box.x).toBeGreaterThanOrEqual(0);
  expect(box.x + box.width).toBeLessThanOrEqual(360);
  await page.keyboard.press('Escape');
  await cellNamed('Top stitches: change').tap();
  expect(await page.locator('main .editor input').count()).toBe(0);
  await cellNamed('Top stitches: change').tap();
  await page.locator('main input:focus').waitFor();
  await page.keyboard.press('Escape');
});

it('every dialog of the tools fits the phone and can be closed by touch', async () => {
  for (const tool of toolsWithDialogs) {
    await tap('More tools');
    await page.getByRole('button', { name: tool, exact: true }).tap();
    const dialog = page.locator('dialog[open]');
    await dialog.waitFor();
    expect(await hindrances(), tool).toEqual([]);
    const box = (await dialog.boundingBox())!;
    expect(box.x >= 0 && box.y >= 0 && box.x + box.width <= 360 && box.y + box.height <= 740, tool).toBe(
      true,
    );
    await dialog
      .getByRole('button', { name: /^(Done|Cancel|Stay|Back|Close)/ })
      .last()
      .tap();
    await dialog.waitFor({ state: 'detached' }).catch(() => dialog.waitFor({ state: 'hidden' }));
  }
});

it('a sleeve to one’s own measure, by touch alone: own swatch and arm, the pattern taken along in one size', async () => {
  page = await visit({ ...phone, acceptDownloads: true });
  await tap('Start my own');
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^One sleeve/ })
    .tap();
  await cellNamed('Sleeve fabric, stitches counted').waitFor();
  await settled(page);
  await enter('Sleeve fabric, stitches counted', '17 sts');
  await enter('Sleeve fabric, rows counted', '13,5');
  await enter('Upper arm, size For me', '36,5');
  await enter('Wrist, size For me', '18');
  await enter('Hand, size For me', '23.5');
  await enter('Underarm to wrist, size For me', '44');
  // 20 cm of rib at 16 to 10 cm are 32, and 2 in the seam; 42.5 cm at 17 are 72.25, the even count 72, and a stitch of the seam on each side.
  expect(await shownAt('Cuff stitches, size For me')).toBe('34 sts');
  expect(await shownAt('Stitches at the underarm, size For me')).toBe('74 sts');
  await page.getByText('Both checks hold in every size.').first().waitFor();

  await tap('Pattern');
  await page.getByLabel('Sizes', { exact: true }).selectOption({ label: 'For me alone' });
  await page.getByText('Recounted in size For me').waitFor();
  expect(await hindrances()).toEqual([]);
  const [file] = await Promise.all([page.waitForEvent('download'), tap('Save as HTML')]);
  const taken = readFileSync(await file.path(), 'utf8');
  expect(taken).toContain('Ch 35.');
  expect(taken).toContain('[74 sts]');
  expect(taken).not.toContain('34.0');
});

it('what is said of keys is not said where there are none', async () => {
  page = await visit(phone);
  await tap('What-ifs');
  await page.getByText('A what-if is other values').waitFor();
  expect(await page.locator('kbd, .keys').filter({ visible: true }).count()).toBe(0);
});

it('no hint, and no name that is read out, speaks of keys where there are none', async () => {
  page = await visit(phone);
  const spoken = (): Promise<string[]> =>
    page.evaluate(() =>
      [...document.querySelectorAll('[title], [aria-label]')]
        .filter((one) => one.checkVisibility())
        .flatMap((one) => [one.getAttribute('title') ?? '', one.getAttribute('aria-label') ?? ''])
        .filter((text) => /\b(Enter|Escape|Alt|Control|double click|arrow)\b/i.test(text)),
    );
  await page.getByRole('button', { name: /^Body texture: all that is worked out/ }).tap();
  await page.getByTitle('Tap it twice to change the label').first().waitFor();
  await page.locator('main [data-formula]').first().waitFor();
  expect(await spoken()).toEqual([]);
  for (const view of ['Pictures', 'Pattern', 'Range', 'Give or take']) {
    await page.getByRole('navigation').getByRole('button', { name: view, exact: true }).tap();
    await page.locator('main h2').first().waitFor();
    await settled(page);
    expect(await spoken(), view).toEqual([]);
  }
  await tap('More tools');
  await page.getByRole('button', { name: 'Sizes', exact: true }).tap();
  await page.getByRole('dialog').waitFor();
  expect(await spoken(), 'Sizes').toEqual([]);
});

it('a hat to one’s own head, by touch alone: two swatches and a head, the pattern for it alone', async () => {
  page = await visit(phone);
  await tap('Start my own');
  await page.getByRole('dialog').getByRole('button', { name: /^Hat/ }).tap();
  await cellNamed('Hat fabric, stitches counted').waitFor();
  await settled(page);
  await enter('Rib, stitches counted', '20');
  await enter('Rib, rows counted', '26');
  await enter('Hat fabric, stitches counted', '18');
  await enter('Hat fabric, rows counted', '24');
  await enter('Head, size For me', '58');
  await enter('Depth of the hat, size For me', '22');
  // 58 cm less 8 % are 53.36 cm, at 18 sts to 10 cm 96.05: 96, twelve to a wedge. Of the depth 5 cm are 13 rounds of rib;
  // 17 cm at 24 rounds to 10 cm are 40.8: 41, of which 8 and 7 close the crown. 13 + 41 rounds in all.
  expect(await shownAt('Stitches, size For me')).toBe('96 sts');
  expect(await shownAt('Rounds to the crown, size For me')).toBe('26 rows');
  expect(await shownAt('Hat, rounds in all, size For me')).toBe('54 rows');
  expect(await shownAt('Hat, stitches at the end, size For me')).toBe('8 sts');
  await page.getByText('All 3 checks hold in every size.').first().waitFor();
  expect(await hindrances()).toEqual([]);

  await tap('Pattern');
  await page.getByLabel('Sizes', { exact: true }).selectOption({ label: 'For me alone' });
  await page.getByText('Recounted in size For me').waitFor();
  const text = await page.locator('main').innerText();
  expect(text).toContain('Cast on 96 sts.');
  expect(text).toContain('[8 sts]');
  expect(await hindrances()).toEqual([]);
});

it('two fingers make the page larger, and smaller again', async () => {
  page = await visit(phone);
  const fingers = await page.context().newCDPSession(page);
  const scale = () => page.evaluate(() => visualViewport!.scale);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', apart?: number) =>
    fingers.send('Input.dispatchTouchEvent', {
      type,
      touchPoints:
        apart === undefined ? [] : [-1, 1].map((side, id) => ({ id, x: 180, y: 400 + side * apart })),
    });
  const pinch = async (from: number, to: number): Promise<void> => {
    await touch('touchStart', from);
    for (let step = 1; step <= 10; step++) await touch('touchMove', from + ((to - from) * step) / 10);
    await touch('touchEnd');
  };
  await pinch(60, 150);
  await expect.poll(scale).toBeGreaterThan(1.5);
  await pinch(200, 20);
  await expect.poll(scale).toBe(1);
});

it('Share hands the notebook to the device’s own ways: a link, the file where it is taken; closing them is no fault', async () => {
  page = await visit(phone);
  await page.evaluate(() => {
    Object.assign(window, { given: [], takesFiles: true, refuses: 'AbortError' });
    const shown = window as unknown as Seen;
    navigator.canShare = () => shown.takesFiles;
    navigator.share = async ({ title, url, files } = {}) => {
      shown.given.push({
        title: title ?? '',
        url: url ?? '',
        files: await Promise.all((files ?? []).map(async (file) => [file.name, await file.text()])),
      });
      if (shown.refuses) throw new DOMException('', shown.refuses);
    };
  });
  await tap('More tools');
  await page.getByRole('button', { name: 'Share', exact: true }).tap();
  const dialog = page.getByRole('dialog');
  const given = (): Promise<Seen['given']> => page.evaluate(() => (window as unknown as Seen).given);
  const send = async (set: Partial<Seen>): Promise<Seen['given'][number]> => {
    const before = (await given()).length;
    await page.evaluate((set) => void Object.assign(window, set), set);
    await dialog.getByRole('button', { name: 'Send it on' }).tap();
    await expect.poll(async () => (await given()).length).toBe(before + 1);
    return (await given())[before]!;
  };
  const whole = await send({});
  expect(whole.title).toBe('Saltmarsh cardigan');
  expect(whole.files.map(([name]) => name)).toEqual(['saltmarsh_cardigan.notebook.json']);
  expect(JSON.parse(whole.files[0]![1]!)).toHaveProperty('format');
  expect(await dialog.getByRole('status').innerText()).toBe('');
  expect(await dialog.getByRole('alert').count()).toBe(0);
  // The link opens the notebook that was sent.
  const theirs = await visit(phone);
  await theirs.goto(whole.url);
  await theirs.getByText('came in a link').first().waitFor();

  expect((await send({ takesFiles: false })).files).toEqual([]);
  await send({ refuses: 'NotAllowedError' });
  await dialog.getByText('This device could not send it.').waitFor();
  await send({ refuses: '' });
  expect(await dialog.getByRole('status').innerText()).toBe('');
});
