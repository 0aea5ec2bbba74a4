import type { Page } from 'playwright';

/** What a page must not do, whatever file it is given. */
export interface Watched {
  /** Errors, dialogs, and requests to anywhere but where the page came from. */
  readonly wrong: string[];
}

/** Looks out for what a page must not do. */
export function watch(page: Page, address: string): Watched {
  const wrong: string[] = [];
  page.on('pageerror', (error) => wrong.push(`error: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') wrong.push(`console: ${message.text()}`);
  });
  page.on('dialog', (dialog) => {
    wrong.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('crash', () => wrong.push('the page crashed'));
  const origin = new URL(address).origin;
  page.context().on('request', (request) => {
    const url = new URL(request.url());
    if (!['blob:', 'data:'].includes(url.protocol) && url.origin !== origin)
      wrong.push(`request: ${request.url()}`);
  });
  return { wrong };
}

/** Gives the page a file, waits until it has refused or opened it and can be used, and says whether it was opened. */
export async function given(page: Page, name: string, text: string): Promise<boolean> {
  await page.setInputFiles('input[type=file]', {
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  return answered(page, name);
}

/** Whether a file was opened; waits until the page has answered and draws again. */
export async function answered(page: Page, name: string): Promise<boolean> {
  const how = await page.waitForFunction(
    (called) => {
      if (document.querySelector('.fault')) return 'broke';
      if (document.querySelector('.complaint')?.textContent?.includes(`${called}:`)) return 'refused';
      return document.querySelector('.said')?.textContent?.includes(`Opened ${called}.`) ? 'opened' : '';
    },
    name,
    { polling: 10 },
  );
  // An answer to a question means that nothing stands in the way of the next thing a person does.
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve))));
  const answer = await how.jsonValue();
  if (answer === 'broke') throw new Error(`${name}: the page broke.`);
  return answer === 'opened';
}
