import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type BrowserContext, type Page } from 'playwright';
import { ensureBrowser, flags } from './browser';

/** A browser with a profile that stays when it ends, as a person's does. */
export interface Running {
  readonly context: BrowserContext;
  readonly page: Page;
  /** Ends the browser's processes at once: nothing in them is told, nothing can be put in order. */
  kill(): Promise<void>;
}

/** A folder for a profile. */
export function newProfile(): string {
  return mkdtempSync(join(tmpdir(), 'easewright-profile-'));
}

export function removeProfile(profile: string): void {
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
}

/** Starts a browser on a profile, in processes of its own that can be killed. */
export async function startOn(profile: string): Promise<Running> {
  const port = join(profile, 'DevToolsActivePort');
  rmSync(port, { force: true });
  const own = ['--headless=new', '--remote-debugging-port=0', `--user-data-dir=${profile}`, 'about:blank'];
  const child = spawn(ensureBrowser(), [...flags, ...own], { detached: true, stdio: 'ignore' });
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const isRunning = (): boolean => child.exitCode === null && child.signalCode === null;
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await portIn(port, isRunning)}`);
  const context = browser.contexts()[0]!;
  return {
    context,
    page: context.pages()[0] ?? (await context.newPage()),
    async kill() {
      // The whole group: the browser, which holds the database, and the processes of its pages.
      if (process.platform === 'win32') child.kill('SIGKILL');
      else process.kill(-child.pid!, 'SIGKILL');
      await ended;
      await browser.close().catch(() => {});
    },
  };
}

async function portIn(file: string, isRunning: () => boolean): Promise<string> {
  while (isRunning()) {
    try {
      const [port] = readFileSync(file, 'utf8').split('\n');
      if (port) return port;
    } catch {
      // Not written yet.
    }
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
  throw new Error('The browser did not start.');
}
