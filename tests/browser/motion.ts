import type { Page } from 'playwright';

/** What would move although the person asked for less motion, in words: transitions and animations longer than nothing. */
export function motionIn(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const long = (durations: string): boolean => durations.split(',').some((each) => parseFloat(each) > 0);
    const found = document
      .getAnimations()
      .filter(({ effect }) => Number(effect?.getComputedTiming().duration ?? 0) > 0)
      .map(() => 'an animation runs');
    for (const one of document.querySelectorAll('*')) {
      for (const part of [undefined, '::before', '::after', '::backdrop']) {
        const style = getComputedStyle(one, part);
        if (
          long(style.transitionDuration) ||
          (style.animationName !== 'none' && long(style.animationDuration))
        )
          found.push(`${one.tagName.toLowerCase()}.${one.className}${part ?? ''}`);
      }
    }
    return [...new Set(found)];
  });
}
