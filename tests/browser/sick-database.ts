import type { BrowserContext, Page } from 'playwright';

/** What a test can do to the database of a page whose context was made `sick`. */
interface Sick {
  /** Requests to open it are not answered, until `answers`. */
  silent: boolean;
  /** Every write finds no room. */
  full: boolean;
  /** Keeps every write waiting, until it is called off. */
  hang(): Promise<void>;
  goOn(): void;
  answers(): void;
}

declare global {
  interface Window {
    sick: Sick;
  }
}

/**
 * Wraps the database of every page of a context, before the page's own code runs: it can be silent from the beginning, be
 * full, or keep writes waiting.
 */
export async function sickDatabase(context: BrowserContext, from: { silent?: boolean } = {}): Promise<void> {
  await context.addInitScript(({ silent = false }) => {
    const waiting: (() => void)[] = [];
    const open = IDBFactory.prototype.open;
    let hangs = false;
    window.sick = {
      silent,
      full: false,
      hang: () =>
        new Promise((resolve) => {
          hangs = true;
          open.call(indexedDB, 'easewright').onsuccess = (event) => {
            const database = (event.target as IDBOpenDBRequest).result;
            // Whoever writes next waits for this transaction, which goes on as long as it is asked for something.
            const write = database.transaction([...database.objectStoreNames], 'readwrite');
            const ask = (): void => {
              if (hangs) write.objectStore('page').get('last').onsuccess = () => ask();
              else database.close();
            };
            ask();
            resolve();
          };
        }),
      goOn: () => (hangs = false),
      answers() {
        this.silent = false;
        for (const answer of waiting.splice(0)) answer();
      },
    };
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (...given) {
      if (window.sick.full) throw new DOMException('Full.', 'QuotaExceededError');
      return put.apply(this, given);
    };
    IDBFactory.prototype.open = function (...given) {
      if (!window.sick.silent) return open.apply(this, given);
      const request = new EventTarget();
      Object.setPrototypeOf(request, IDBOpenDBRequest.prototype);
      const handlers: Record<string, ((event: Event) => void) | null> = {};
      let real: IDBOpenDBRequest | undefined;
      for (const what of ['result', 'transaction', 'error', 'readyState'] as const) {
        Object.defineProperty(request, what, { get: () => real?.[what] });
      }
      for (const type of ['success', 'error', 'upgradeneeded', 'blocked']) {
        Object.defineProperty(request, `on${type}`, {
          get: () => handlers[type],
          set: (handler) => (handlers[type] = handler),
        });
      }
      waiting.push(() => {
        const opened = open.apply(this, given);
        real = opened;
        for (const type of ['success', 'error', 'upgradeneeded', 'blocked']) {
          opened.addEventListener(type, (event) => {
            const { oldVersion, newVersion } = event as IDBVersionChangeEvent;
            const passedOn = new IDBVersionChangeEvent(type, { oldVersion, newVersion });
            request.dispatchEvent(passedOn);
            handlers[type]?.(passedOn);
          });
        }
      });
      return request as IDBOpenDBRequest;
    };
  }, from);
}

/** Does something to the database of a page. */
export const toDatabase = {
  fill: (page: Page, full: boolean) => page.evaluate((now) => void (window.sick.full = now), full),
  hang: (page: Page) => page.evaluate(() => window.sick.hang()),
  goOn: (page: Page) => page.evaluate(() => window.sick.goOn()),
  answer: (page: Page) => page.evaluate(() => window.sick.answers()),
};
