import type { Page } from 'playwright';
import { beforeAll, expect, it } from 'vitest';
import { numbers, settled } from './workspace';
import { visiting } from './visiting';

const visit = visiting();
let page: Page;
beforeAll(async () => {
  page = await visit();
});

const focused = (): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    return at?.getAttribute('aria-label') ?? at?.textContent?.trim() ?? '';
  });

/** Presses a key until the focus is on what is called so; fails where it never comes there. */
async function until(key: string, name: string | RegExp, most = 80): Promise<void> {
  for (let tries = 0; tries < most; tries++) {
    const at = await focused();
    if (typeof name === 'string' ? at === name : name.test(at)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${key} never came to ${name}; the focus is on "${await focused()}".`);
}

/** Adds a cell by typing what it is and what it is called; the focus is then on its first value. */
async function add(kind: string, label: string): Promise<void> {
  await page.keyboard.press('+');
  await page.locator('input[role=combobox]:focus').waitFor();
  await page.keyboard.type(kind);
  await page.keyboard.press('Enter');
  await page.locator('dialog input[maxlength]:focus').waitFor();
  await page.keyboard.type(label);
  await page.keyboard.press('Enter');
  await page.waitForFunction(
    (called) => document.activeElement?.getAttribute('aria-label')?.startsWith(called),
    label,
  );
}

/** Types over the value in focus. */
async function enter(text: string): Promise<void> {
  await page.keyboard.press('Enter');
  await page.locator('input:focus').waitFor();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
  await page
    .waitForFunction(() => document.activeElement?.tagName !== 'INPUT', undefined)
    .catch(async () => {
      const why = await page.locator('main [role=alert]').allInnerTexts();
      throw new Error(`${text} was not taken at ${await announced()}: ${why.join(' ')}`);
    });
  await settled(page);
}

it('from an empty notebook, by keyboard alone: swatch, measure, ease, formula, repeat fit and piece in three sizes', async () => {
  // An empty notebook in the women's sizes S, M and L.
  await until('Tab', 'Starters');
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor();
  await until('Tab', /^Blank/);
  await page.keyboard.press('Enter');
  await until('Tab', 'Sizes');
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor();
  for (const size of ['XS', 'XL', '2X', '3X', '4X', '5X']) {
    await page.getByRole('checkbox', { name: size, exact: true }).focus();
    await page.keyboard.press('Space');
  }
  await until('Tab', /^Replace my sizes with these/);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');

  await until('Tab', /^Section Swatches/);
  await add('swatch', 'Wool');
  expect(await focused()).toMatch(/^Wool, stitches counted: no /);
  expect(await page.locator('.said').textContent()).toBe('Added Wool. Its first value waits to be typed.');
  await enter('14');
  await until('ArrowRight', /^Wool, rows counted/);
  await enter('20');

  await add('measure', 'Bust');
  for (const [size, bust] of [
    ['S', '84'],
    ['M', '94'],
    ['L', '104'],
  ] as const) {
    // The first value is one for all; after "a value for each" every size has its own.
    if (size === 'S') await onePerSize();
    await until('ArrowRight', new RegExp(`^Bust, size ${size}`));
    await enter(bust);
  }

  await add('ease', 'Finished bust');
  expect(await focused()).toMatch(/^Finished bust, body/);
  await enter('=bust');
  await until('ArrowDown', /^Finished bust, ease/);
  await enter('10');

  await add('formula', 'Half');
  expect(await focused()).toMatch(/^Half, size S/);
  await enter('=finished_bust / 2');

  await add('repeat', 'Back stitches');
  expect(await focused()).toMatch(/^Back stitches, wanted/);
  await enter('=half * wool_sts');
  await until('ArrowDown', /which count is taken/);
  await until('ArrowRight', /^Back stitches, multiple of/);
  await enter('8');
  await until('ArrowRight', /^Back stitches, plus/);
  await enter('3');

  await add('piece', 'Back');
  expect(await focused()).toMatch(/^Back, start with/);
  await enter('=back_stitches');
  await until('ArrowDown', /^Back, rows/);
  await enter('60');

  const cells = await page.$$eval('[data-cell-rows]', (rows) =>
    rows.map((row) => [row.querySelector('.label')?.textContent?.trim(), row.getAttribute('data-cell-rows')]),
  );
  const id = (label: string): string => cells.find(([called]) => called === label)![1]!;
  // (84 + 10) ÷ 2 × 1.4 = 65.8, (94 + 10) ÷ 2 × 1.4 = 72.8, (104 + 10) ÷ 2 × 1.4 = 79.8: to a multiple of 8 plus 3.
  expect(await numbers(page, id('Back stitches'), 'count')).toEqual([67, 75, 83]);
  expect(await numbers(page, id('Back'), 'end')).toEqual([67, 75, 83]);
  expect(await numbers(page, id('Back'), 'length')).toEqual([30, 30, 30]);
});

/** Makes the measure in focus one for each size, through the menu of what stands there, in the opened cell. */
async function onePerSize(): Promise<void> {
  await until('ArrowLeft', /^Bust: all that is worked out/);
  await page.keyboard.press('Enter');
  await page.locator('[aria-label="Bust: this value"]').waitFor();
  await until('ArrowRight', 'Bust: this value');
  await page.keyboard.press('Enter');
  await page.getByRole('menu').waitFor();
  await until('ArrowDown', /^Different in each size/);
  await page.keyboard.press('Enter');
  await page.locator('[data-place][aria-label^="Bust, size S"]').waitFor();
  await until('ArrowLeft', /^Bust: change the label/);
}

it('all of it can be undone, step by step, and redone to the same notebook', async () => {
  const whole = async (): Promise<string> =>
    (await page.locator('main table').innerText()).replace(/\s+/g, ' ');
  await settled(page);
  const built = await whole();
  let steps = 0;
  while (await page.getByRole('button', { name: 'Undo', exact: true }).isEnabled()) {
    await page.keyboard.press('ControlOrMeta+z');
    steps++;
    if (steps > 60) break;
  }
  await settled(page);
  expect(steps).toBeGreaterThan(18);
  expect(steps).toBeLessThanOrEqual(60);
  // A starter is a notebook of its own: its history begins with it, empty.
  expect(await page.getByRole('heading', { level: 1 }).innerText()).toBe('Untitled');
  expect(await page.locator('[data-cell-rows]').count()).toBe(0);
  for (let step = 0; step < steps; step++) await page.keyboard.press('ControlOrMeta+y');
  await settled(page);
  // What moved is marked for a while.
  await expect.poll(whole).toBe(built);
});

/** What a screen reader says of where the focus is: role and name, as the browser works them out. */
const announced = async (): Promise<string> => {
  const text = await page.locator(':focus').ariaSnapshot();
  return /^- '?(\w+(?: "[^"]*")?(?: \[[^\]]*\])*)/.exec(text)?.[1] ?? text;
};
/** What it is told without being asked. */
const announcementNow = (): Promise<string> => page.locator('.said[role=status]').innerText();

/** Waits for what a screen reader is told without being asked. */
async function hears(sentence: RegExp): Promise<void> {
  await expect.poll(announcementNow).toMatch(sentence);
}

/** Into the grid, which is one stop: to the place that was in focus last. */
async function gridText(): Promise<void> {
  for (let stops = 0; stops < 80; stops++) {
    if (await page.evaluate(() => document.activeElement?.matches('[data-place]'))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('Tab never came to the leaf.');
}

/** To the label of a cell, row by row from the top of the grid. */
async function toCell(label: string): Promise<void> {
  await gridText();
  await page.keyboard.press('ControlOrMeta+Home');
  for (let row = 0; row < 120; row++) {
    if ((await focused()) === `${label}: change the label`) return;
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Home');
  }
  throw new Error(`No row of the leaf is called ${label}.`);
}

/** On from here, row by row and each from its first place to its last, to what is called so. */
async function onTo(name: string | RegExp): Promise<void> {
  for (let decimals = 0; decimals < 200; decimals++) {
    const at = await focused();
    if (typeof name === 'string' ? at === name : name.test(at)) return;
    const before = await page.evaluateHandle(() => document.activeElement);
    await page.keyboard.press('ArrowRight');
    if (!(await before.evaluate((before) => before === document.activeElement))) continue;
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Home');
  }
  throw new Error(`The arrows never came to ${name}; the focus is on "${await focused()}".`);
}

/** Presses a key until what is heard of the focus is this. */
async function hearing(pattern: RegExp, key: string): Promise<void> {
  for (let tries = 0; tries < 60; tries++) {
    if (pattern.test(await announced())) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${key} never came to ${pattern}; what is heard is ${await announced()}.`);
}

/** Chooses from the list in focus by the first letters of an entry. */
async function choose(entry: string): Promise<void> {
  await page.keyboard.type(entry);
  expect(
    await page.locator(':focus').evaluate((list) => (list as HTMLSelectElement).selectedOptions[0]?.label),
  ).toMatch(new RegExp(`^${entry}`));
}

it('joins and border: a second piece, a check that both edges match, and stitches picked up for a border, each step told', async () => {
  await toCell('Back');
  await add('piece', 'Front');
  expect.soft(await announcementNow()).toBe('Added Front. Its first value waits to be typed.');
  expect
    .soft(await announced())
    .toMatch(/^button "Front, start with[^"]*: no value yet"|^button "Front, start with[^"]*: no result/);
  await enter('=back_stitches');
  await onTo(/^Front, rows/);
  expect
    .soft(await announced())
    .toBe('button "Front, rows, every size: no result. Rows is empty: type a value, or = and a formula."');
  await enter('58');
  expect.soft(await announced()).toBe('button "Front, rows, every size: 58 rows"');
  await hears(/^Front changed\./);

  await until('Tab', 'Add a check', 120);
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor();
  expect.soft(await announced()).toMatch(/^radio "Neighboring sizes differ/);
  await hearing(/^radio "Joined edges match/, 'ArrowDown');
  await page.keyboard.press('Tab');
  expect.soft(await announced()).toMatch(/^combobox "One edge"/);
  await choose('Back: rows');
  await page.keyboard.press('Tab');
  expect.soft(await announced()).toMatch(/^combobox "The other edge"/);
  await choose('Front: rows');
  await until('Tab', 'Add this check');
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor({ state: 'hidden' });
  await hears(/^Added the check .*joined to/);
  expect.soft(await announced()).toMatch(/^button "[^"]*joined to[^"]*"/);
  // 60 rows against 58: the line over the grid says so by itself, and is a live region.
  const checks = page.locator('[aria-live=polite]', { hasText: 'check' });
  await expect.poll(() => checks.innerText()).toMatch(/^The check does not hold:[\s\S]*joined to/);
  await toCell('Front');
  await onTo(/^Front, rows/);
  await enter('60');
  await expect.poll(() => checks.innerText()).toMatch(/^The check holds in every size\.$/);

  await add('pick', 'Band');
  await onTo(/^Band, row ends/);
  await enter('60');
  expect.soft(await announced()).toBe('button "Band, row ends, every size: 60 rows"');
  await onTo(/^Band, multiple of/);
  await enter('2');
  // 60 row ends at 3 in every 4 are 45 stitches: to a multiple of 2, half way goes up.
  await toCell('Band');
  await onTo(/^Band, size M/);
  expect.soft(await announced()).toBe('button "Band, size M: 46 sts"');
  await add('piece', 'Border');
  await onTo(/^Border, start with/);
  await enter('=band');
  await onTo(/^Border, rows/);
  await enter('6');
  await onTo(/^Border, stitches at the end, size S/);
  await until('ArrowRight', /size L/);
  expect.soft(await announced()).toMatch(/: 46 sts"$|: \d+\.\d cm"$/);
});

it('yarn, a check of one’s own, a what-if, the pattern, and a result put on the class sheet: each step told', async () => {
  await toCell('Wool');
  await until('ArrowRight', /^Wool: all that is worked out/);
  expect.soft(await announced()).toMatch(/^button "Wool: all that is worked out[^"]*"/);
  await page.keyboard.press('Enter');
  await onTo('add the whole swatch on the scales');
  await page.keyboard.press('Enter');
  // The button is another now; the focus is still in the grid.
  expect(await page.evaluate(() => document.activeElement?.closest('[role=grid]') !== null)).toBe(true);
  await toCell('Wool');
  await onTo(/^Wool, whole swatch, width/);
  await enter('20');
  expect.soft(await announced()).toBe('button "Wool, whole swatch, width: 20.0 cm"');
  await onTo(/^Wool, whole swatch, length/);
  await enter('20');
  await onTo(/^Wool, whole swatch, weight/);
  await enter('18');
  expect.soft(await announced()).toMatch(/^button "Wool, whole swatch, weight: 18(\.0)? g"/);

  await toCell('Border');
  await add('yarn', 'Main yarn');
  await onTo(/^Main yarn, area/);
  await enter('=back_piece_area * 2');
  await onTo(/^Main yarn, a ball weighs/);
  await enter('50');
  expect.soft(await announced()).toMatch(/^button "Main yarn, a ball weighs: 50(\.0)? g"/);
  await onTo(/^Main yarn, balls, size S/);
  // 67 sts ÷ 1.4 × 30 cm × 2 = 2871 cm², at 18 g to 400 cm² 129 g, with a tenth in reserve 142 g: three balls of 50 g.
  expect.soft(await announced()).toBe('button "Main yarn, balls, size S: 3"');

  await add('check', 'Long enough');
  await onTo(/^Long enough, size S/);
  await enter('=back_piece_length >= CM(29)');
  expect.soft(await announced()).toBe('button "Formula of Long enough: = back_piece_length ≥ CM(29)"');

  // What is deleted is told, and the focus stays among the cells.
  await toCell('Long enough');
  await page.keyboard.press('Delete');
  await hears(/^Deleted Long enough\. Undo brings it back\./);
  expect
    .soft(await page.evaluate(() => document.activeElement?.closest('[role=grid]') !== null), 'on the leaf')
    .toBe(true);
  await page.keyboard.press('ControlOrMeta+z');
  await hears(/^Undone: /);

  // What if: asked at the value itself; what comes of it stands beside the notebook.
  await toCell('Wool');
  await page.keyboard.press('ArrowDown');
  await onTo(/^Wool, stitches counted/);
  await page.keyboard.press('w');
  await page.getByRole('dialog').waitFor();
  expect.soft(await announced()).toMatch(/^textbox "Stitches counted/i);
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('16');
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor({ state: 'hidden' });
  await hears(/^What if .*: its results stand in What-ifs\.$/);
  expect.soft(await announced()).toMatch(/^button "Wool, stitches counted[^"]*: 14 sts"/);

  await view('What-ifs');
  await page
    .getByRole('region')
    .filter({ has: page.getByRole('table') })
    .first()
    .waitFor();
  // (84 + 10) ÷ 2 × 1.6 = 75.2: 75 instead of 67.
  expect(await page.locator('main table').first().ariaSnapshot()).toMatch(/Back stitches[\s\S]*75/);

  await view('Pattern');
  await page.getByText('Recounted in').waitFor();
  const pattern = await page.getByRole('article').ariaSnapshot();
  expect(pattern).toMatch(/heading "Untitled" \[level=2\]/);
  expect(pattern).toContain('67 (75, 83) sts');

  await view('Class sheet');
  await page.locator('main h2').first().waitFor();
  await hearing(/^combobox "Cell"/, 'Tab');
  await choose('Back stitches');
  await page.keyboard.press('Tab');
  expect.soft(await announced()).toMatch(/^combobox "Result"/);
  await page.keyboard.press('Tab');
  expect.soft(await announced()).toBe('button "Put on the sheet"');
  await page.keyboard.press('Enter');
  await hears(/^Back stitches is on the class sheet\.$/);
  // One goes on from there: to choose another, or to its first answer and through it.
  expect.soft(await announced()).toBe('button "It is on the sheet" [disabled]');
  await page.keyboard.press('ArrowDown');
  expect.soft(await announced()).toBe('button "Back stitches, wanted, step 1: answer covered"');
  await page.keyboard.press('Space');
  // In the size in the middle: (94 + 10) ÷ 2 × 1.4.
  await hears(/^72\.8 sts$/);
  await page.keyboard.press('Space');
  await hears(/^75 sts, /);
  expect.soft(await announced()).toBe('button "Back stitches, step 1: 75 sts, 67 is below, 75 above"');

  // The sheet that is printed has its answers as blanks again; the one on the screen stays as it was.
  await page.evaluate(() => {
    window.print = () => {
      document.documentElement.dataset['printed'] = String(document.querySelectorAll('.blank').length);
    };
  });
  await until('Shift+Tab', 'Print the sheet');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.documentElement.dataset['printed'] === '2');
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await page.waitForFunction(() => document.querySelectorAll('.class-sheet .blank').length === 0);
  expect(await announced()).toBe('button "Print the sheet"');
});

/** To the notebook of a starter, from wherever the focus is. */
async function starter(label: RegExp): Promise<void> {
  await until('Tab', 'Starters');
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor();
  await until('Tab', label);
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor({ state: 'hidden' });
  await settled(page);
}

async function view(label: string): Promise<void> {
  await until('Tab', label, 120);
  await page.keyboard.press('Enter');
  await page.locator(`nav button[aria-current]`, { hasText: label }).waitFor();
}

it('a screen reader is told what stands at a place, what it is worth, and in one sentence what an edit changed', async () => {
  await starter(/^Cardigan/);
  // The grid is one stop; the arrows go on from there.
  while (!(await page.evaluate(() => document.activeElement?.matches('[data-place]'))))
    await page.keyboard.press('Tab');
  await until('ArrowUp', /^Section Swatches/, 200);
  await until('ArrowDown', /^Body texture: change the label/);
  await page.keyboard.press('ArrowDown');
  await until('ArrowRight', /^Body texture, stitches counted/);
  expect(await announced()).toMatch(/^button "Body texture, stitches counted[^"]*: 14 sts"/);
  await enter('15');
  expect(await announced()).toMatch(/^button "Body texture, stitches counted[^"]*: 15 sts"/);
  await page.waitForFunction(() =>
    / and \d+ more changed\.$/.test(document.querySelector('.said')!.textContent),
  );
  expect(await announcementNow()).toMatch(/^Body texture, Back stitches, [^,]+ and \d+ more changed\.$/);
  await page.keyboard.press('ControlOrMeta+z');
  await settled(page);
  expect(await announced()).toMatch(/^button "Body texture, stitches counted[^"]*: 14 sts"/);
});

it('every view is come to, and into, by keyboard', async () => {
  for (const label of [
    'Pictures',
    'Pattern',
    'What-ifs',
    'Range',
    'Work back',
    'Give or take',
    'Class sheet',
  ]) {
    await view(label);
    await page.locator('#page main h2').first().waitFor();
    // The first stop behind the ways to the views stands in the view itself.
    await page.locator('nav button', { hasText: /^Class sheet$/ }).focus();
    await page.keyboard.press('Tab');
    expect(
      await page.evaluate(() => document.activeElement?.closest('main, .class-sheet, .view') !== null),
      label,
    ).toBe(true);
    expect(await announced(), label).toMatch(/^\w+/);
    await page.locator('nav button', { hasText: /^Leaf$/ }).focus();
  }
});

it('a class sheet is uncovered one by one, each answer said as it is, and covered again', async () => {
  await view('Leaf');
  await starter(/^Three lessons/);
  await view('Class sheet');
  await page.getByRole('heading', { name: 'Three lessons on gauge', level: 2 }).waitFor();
  // The focus is on the sheet: Space goes on from answer to answer.
  await page.keyboard.press('Space');
  expect(await announced()).toBe('button "Practice swatch, stitch gauge, step 1: 18 sts / 10 cm"');
  expect(await announcementNow()).toBe('18 sts / 10 cm');
  await page.keyboard.press('ArrowDown');
  expect(await announced()).toBe('button "Stitches of the scarf, step 1: answer covered"');
  await page.keyboard.press('Space');
  await page.keyboard.press('Space');
  expect(await announcementNow()).toBe('59 sts, 58 is below, 59 above');
  await page.keyboard.press('Enter');
  expect(await announcementNow()).toBe('Covered.');
  expect(await announced()).toBe('button "Stitches of the scarf, step 2: answer covered"');
  // The buttons of the sheet keep their Space; the arrows lead from them to the answers.
  await page.getByRole('button', { name: 'Cover all', exact: true }).focus();
  await page.keyboard.press('Space');
  expect(await announcementNow()).toBe('All answers are covered.');
  await page.keyboard.press('ArrowDown');
  expect(await announced()).toBe('button "Practice swatch, stitch gauge, step 1: answer covered"');
});

it('the give or take of a result is chosen by keyboard: what it comes from is read', async () => {
  await view('Give or take');
  await page.locator('main table, table').first().waitFor();
  await until('Tab', /^Bust as planned/);
  await page.keyboard.press('Enter');
  expect(await announced()).toMatch(/^button "Bust as planned.*" \[pressed\]/);
  await until('Shift+Tab', /^S\s*M\s*L$|Size/);
  await page.keyboard.press('ArrowDown');
  const from = await page.getByRole('region', { name: 'What it comes from' }).innerText();
  expect(from).toMatch(/^[\s\S]*Bust as planned, size L: 1\d\d\.\d ± \d\.\d cm \(about 19 times in 20\)/);
  expect(from).toContain('Practice swatch, stitch gauge');
});
