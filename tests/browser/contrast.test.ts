import axe from 'axe-core';
import type { Page } from 'playwright';
import { beforeAll, describe, expect, it } from 'vitest';
import { distinctSizes, sizeStyle } from '../../src/pictures/charts/palette';
import { themes, type Theme, type ThemeName } from '../../src/pictures/charts/theme';
import { contrast } from '../pictures/charts/colour-vision';
import { begin, settled } from './workspace';
import { day, dark, under } from './settings';
import { visiting } from './visiting';

/*
 * WCAG 2.2: 1.4.3 asks for a contrast of 4.5 between text and what it stands on, 1.4.11 for 3 between what is needed to
 * tell a control or to read a picture, and what lies beside it.
 */
const ofText = 4.5;
const ofParts = 3;

const visit = visiting();
let page: Page;
beforeAll(async () => {
  page = await visit();
  await begin(page, 'One sleeve');
});

it('our ratio is that of axe for any two colours, and 4.54 for #767676 on white', async () => {
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  const colours = [
    '#ffffff',
    '#000000',
    '#767676',
    ...Object.values(themes.light),
    ...Object.values(themes.dark),
  ];
  const pairs = colours.flatMap((one) => colours.map((other) => [one, other] as const));
  await page.evaluate(axe.source);
  const theirs = await page.evaluate((pairs) => {
    const { color } = (window as unknown as { axe: { commons: { color: AxeColours } } }).axe.commons;
    interface AxeColours {
      Color: new () => { parseString(text: string): void };
      getContrast(ground: unknown, text: unknown): number;
    }
    const read = (hex: string) => {
      const one = new color.Color();
      one.parseString(hex);
      return one;
    };
    return pairs.map(([one, other]) => color.getContrast(read(one), read(other)));
  }, pairs);
  pairs.forEach(([one, other], at) => expect(contrast(one, other)).toBeCloseTo(theirs[at]!, 2));
});

describe.each(['light', 'dark'] as const)('in the %s', (name) => {
  const setting = { light: day, dark }[name];

  it('the page and its pictures are drawn in the same colours', async () => {
    await under(page, setting);
    const tokens = ['paper', 'leaf', 'ink', 'soft', 'rule', 'edge', 'accent', 'trouble', 'wash'] as const;
    const shown = await page.evaluate(
      (tokens) =>
        tokens.map((token) => getComputedStyle(document.documentElement).getPropertyValue(`--${token}`)),
      tokens,
    );
    expect(shown.map((colour) => colour.trim())).toEqual(tokens.map((token) => themes[name][token]));
  });

  it.each(figures(name))('%s on %s: %f at least', (_what, _on, least, colour, ground) => {
    expect(contrast(colour, ground)).toBeGreaterThanOrEqual(least);
  });

  it('the border or the ground of every control stands out, and the ring of every one in focus', async () => {
    const found: string[] = [];
    for (const bring of steps) {
      await under(page, day);
      await bring(page);
      await under(page, setting);
      found.push(...(await weakParts(page)));
      await page.keyboard.press('Escape');
    }
    expect([...new Set(found)]).toEqual([]);
  });
});

type Figure = readonly [what: string, on: string, least: number, colour: string, ground: string];

/** What is drawn on what, in a theme. */
function figures(name: ThemeName): Figure[] {
  const theme = themes[name];
  const on = (ground: keyof Theme, what: keyof Theme, least: number): Figure => [
    what,
    ground,
    least,
    theme[what],
    theme[ground],
  ];
  const grounds = ['paper', 'leaf', 'wash'] as const;
  const sizes = Array.from({ length: distinctSizes }, (_, index) => sizeStyle(index, name).colour);
  return [
    ...grounds.flatMap((ground) =>
      (['ink', 'soft', 'accent', 'trouble'] as const).map((what) => on(ground, what, ofText)),
    ),
    // Fields, buttons and the lines under typed values; the line of what was before a change; where a fabric changes.
    ...grounds.map((ground) => on(ground, 'edge', ofParts)),
    ...sizes.flatMap((colour, index) =>
      (['paper', 'leaf'] as const).map((ground): Figure => [
        `line and mark of size ${index + 1}`,
        ground,
        ofParts,
        colour,
        theme[ground],
      ]),
    ),
    // A text selected in a field, and a place that has just changed, lie on the wash.
    on('wash', 'ink', ofText),
  ];
}

const dialogs = ['Units and terms', 'Sizes', 'Add a check', 'Notebooks', 'Share', 'Starters'];

/** Where there are controls to look at. */
const steps: readonly ((page: Page) => Promise<unknown>)[] = [
  async () => {},
  ...dialogs.map((name) => async (page: Page) => {
    await page.getByRole('button', { name, exact: true }).click();
    await page.locator('dialog[open]').waitFor();
  }),
  ...[
    'Pictures',
    'Pattern',
    'Adapt',
    'What-ifs',
    'Range',
    'Work back',
    'Give or take',
    'Class sheet',
    'Leaf',
  ].map((view) => async (page: Page) => {
    const way = page.getByRole('navigation', { name: 'What is shown' });
    await way.getByRole('button', { name: view, exact: true }).click();
    await settled(page);
    await page.waitForFunction(() => !document.querySelector('main progress'));
  }),
];

/** Borders of controls, and rings of what is in focus, with a contrast of less than 3 to what is behind them. */
async function weakParts(page: Page): Promise<string[]> {
  const parts = await page.evaluate(() => {
    const context = document.createElement('canvas').getContext('2d', { willReadFrequently: true })!;
    /** Any colour as it is drawn over another, "#rrggbb". */
    const over = (colour: string, ground: string): string => {
      context.fillStyle = ground;
      context.fillRect(0, 0, 1, 1);
      context.fillStyle = colour;
      context.fillRect(0, 0, 1, 1);
      const [red, green, blue] = context.getImageData(0, 0, 1, 1).data;
      return `#${[red!, green!, blue!].map((part) => part.toString(16).padStart(2, '0')).join('')}`;
    };
    const behind = (at: Element | null): string => {
      if (!at) return '#ffffff';
      const { backgroundColor } = getComputedStyle(at);
      return over(
        backgroundColor,
        /, 0\)$|transparent/.test(backgroundColor) || /\/ |rgba/.test(backgroundColor)
          ? behind(at.parentElement)
          : '#ffffff',
      );
    };
    const found: { called: string; part: string; colour: string; ground: string }[] = [];
    const within = document.querySelector('dialog[open]') ?? document.body;
    const controls = within.querySelectorAll<HTMLElement>(
      'button, input, select, textarea, summary, [role=button]',
    );
    const before = document.activeElement as HTMLElement | null;
    // What was opened by a pointer shows no ring until the focus comes to it by key.
    before?.blur();
    for (const one of controls) {
      if (
        !one.checkVisibility({ opacityProperty: true }) ||
        one.matches(':disabled, [type=radio], [type=checkbox], [hidden]')
      )
        continue;
      const ground = behind(one.parentElement);
      const called = `${one.tagName.toLowerCase()} "${(one.getAttribute('aria-label') ?? one.textContent).trim().slice(0, 40)}"`;
      const style = getComputedStyle(one);
      for (const side of ['borderBlockEnd', 'borderInlineStart'] as const) {
        const colour = style[`${side}Color`];
        const drawn = parseFloat(style[`${side}Width`]) > 0 && style[`${side}Style`] !== 'none';
        if (!drawn || /, 0\)$|transparent/.test(colour)) continue;
        // A line between the items of a list is no border of a control: what is in them tells them apart.
        if (
          one.closest('li') &&
          side === 'borderBlockEnd' &&
          parseFloat(style.borderInlineStartWidth) === 0 &&
          !one.matches('input, select')
        )
          continue;
        found.push({ called, part: 'border', colour: over(colour, ground), ground });
      }
    }
    const shown = [...controls].filter((one) => one.checkVisibility() && !one.matches(':disabled'));
    for (const one of shown.slice(0, 120)) {
      one.focus({ preventScroll: true, focusVisible: true } as FocusOptions);
      if (document.activeElement !== one) continue;
      const { outlineStyle, outlineColor, outlineWidth, borderColor } = getComputedStyle(one);
      const called = `${one.tagName.toLowerCase()} "${(one.getAttribute('aria-label') ?? one.textContent).trim().slice(0, 40)}"`;
      const ground = behind(one.parentElement);
      const ring = outlineStyle !== 'none' && parseFloat(outlineWidth) > 0 ? outlineColor : borderColor;
      found.push({
        called,
        part: 'ring',
        colour: over(ring.split(') ')[0]! + (ring.includes(') ') ? ')' : ''), ground),
        ground,
      });
    }
    before?.focus({ preventScroll: true });
    return found;
  });
  return parts
    .filter(({ colour, ground }) => contrast(colour, ground) < ofParts)
    .map(
      ({ called, part, colour, ground }) =>
        `the ${part} of ${called}: ${colour} on ${ground}, ${contrast(colour, ground).toFixed(2)}`,
    );
}
