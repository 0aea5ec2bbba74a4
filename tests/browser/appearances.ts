import type { Page } from 'playwright';
import { beyondReach } from './beyond-reach';
import { clipped } from './clipped';
import { faults } from './faults';
import { motionIn } from './motion';
import {
  day,
  dark,
  doubled,
  ownColours,
  spaced,
  spacedAndZoomed,
  under,
  zoomed,
  type Setting,
} from './settings';
import { smallTargets } from './targets';

type Appearance = (page: Page) => Promise<string[]>;
const colours: Appearance = (page) => faults(page, 'colours');

/** What is looked for in every state, under every setting in which it could be otherwise. */
const appearances: readonly (readonly [Setting, readonly Appearance[]])[] = [
  [day, [faults, smallTargets, beyondReach, clipped, motionIn]],
  [dark, [colours]],
  [ownColours, [colours, shownByBackgroundAlone]],
  [zoomed, [faults, smallTargets, beyondReach, clipped]],
  [spacedAndZoomed, [beyondReach, clipped]],
  [spaced, [beyondReach, clipped]],
  [doubled, [beyondReach, clipped]],
];

/** Everything that is wrong with the page as it stands, each with the setting it was seen under. */
export async function wrong(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const [setting, each] of appearances) {
    await under(page, setting);
    for (const appearance of each)
      found.push(...(await appearance(page)).map((fault) => `${setting.name}: ${fault}`));
  }
  await under(page, day);
  return found;
}

/** What is marked as chosen or shown, and looks like the rest once the colours of the page are taken away. */
function shownByBackgroundAlone(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const marked = ['aria-selected', 'aria-pressed', 'aria-checked', 'aria-current'];
    const check = (of: Element): string => {
      const { outlineStyle, borderColor, borderStyle, fontWeight, textDecorationLine } = getComputedStyle(of);
      return JSON.stringify([
        // An outline is gone from where the focus is not, and is no mark where it is.
        of === document.activeElement ? '' : outlineStyle,
        borderColor,
        borderStyle,
        fontWeight,
        textDecorationLine,
        getComputedStyle(of, '::before').content,
      ]);
    };
    return marked.flatMap((mark) =>
      [...document.querySelectorAll(`[${mark}]:not([${mark}=false])`)].flatMap((one) => {
        if (!one.checkVisibility() || one.querySelector('svg')) return [];
        const others = [
          ...(one.parentElement?.closest('tr, ul, nav, p, div')?.querySelectorAll(one.tagName) ?? []),
        ];
        const rest = others.find(
          (other) => !other.hasAttribute(mark) || other.getAttribute(mark) === 'false',
        );
        if (!rest || check(rest) !== check(one)) return [];
        return [
          `${one.tagName.toLowerCase()} "${one.textContent.trim().slice(0, 40)}" is not told by ${mark}`,
        ];
      }),
    );
  });
}
