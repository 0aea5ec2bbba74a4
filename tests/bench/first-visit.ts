import { served } from './browser';

export interface FirstVisit {
  /** Milliseconds from going to the page to the first cells being painted, and to the first result. */
  readonly readable: number;
  readonly worked: number;
}

/** A first visit with nothing stored, on a processor so many times as slow as this one. */
export function firstVisit(slower: number): Promise<FirstVisit> {
  return served(async (page, address) => {
    const session = await page.context().newCDPSession(page);
    await session.send('Network.enable');
    await session.send('Network.setCacheDisabled', { cacheDisabled: true });
    await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
    await page.addInitScript(() => {
      const times = { readable: 0, worked: 0 };
      Object.assign(globalThis, { firstVisit: times });
      const check = (): void => {
        const element = document.querySelector('main [data-place][data-key="start_width"][data-size]');
        if (element && times.readable === 0) times.readable = performance.now();
        if (/\d/.test(element?.textContent ?? '')) times.worked = performance.now();
        else requestAnimationFrame(check);
      };
      // A frame is asked for in the one before it: what is found in it has been painted once already.
      requestAnimationFrame(check);
    });
    await page.goto(address);
    const times = await page.waitForFunction(
      () => {
        const { firstVisit } = globalThis as unknown as { firstVisit: FirstVisit };
        return firstVisit.worked > 0 && firstVisit;
      },
      undefined,
      { timeout: 60_000 },
    );
    return (await times.jsonValue()) as FirstVisit;
  });
}
