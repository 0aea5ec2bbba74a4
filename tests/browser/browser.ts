import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { platform } from 'node:os';
import { chromium, type Browser } from 'playwright';

const variable = 'EASEWRIGHT_BROWSER';

export const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Starts Chromium, headless, with a profile of its own that goes with it. */
export function startBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: foundBrowser() ?? noBrowser(), args: flags });
}

/**
 * Sees to it that there is a browser: one named by the environment, one that is installed, or one that is
 * fetched now. Where none can be had it throws one line that says what to do; tests are never skipped for it.
 */
export function ensureBrowser(): string {
  return foundBrowser() ?? fetchedBrowser() ?? noBrowser();
}

function foundBrowser(): string | undefined {
  const named = process.env[variable];
  if (named) {
    if (existsSync(named)) return named;
    throw new Error(`${variable} names ${named}, where there is no file.`);
  }
  const commands = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome'];
  const onPath = commands.flatMap((command) => whereIs(command) ?? []);
  const usual = [
    '/usr/bin/chromium',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    `${process.env['PROGRAMFILES'] ?? ''}\\Google\\Chrome\\Application\\chrome.exe`,
    chromium.executablePath(),
  ];
  return [...onPath, ...usual].find((path) => path && existsSync(path));
}

function whereIs(command: string): string | undefined {
  const answer = spawnSync(platform() === 'win32' ? 'where' : 'which', [command], { encoding: 'utf8' });
  return answer.status === 0 ? answer.stdout.split('\n')[0]?.trim() : undefined;
}

/** Debian as root: its own package, which brings the libraries too. Elsewhere: Playwright's installer. */
function fetchedBrowser(): string | undefined {
  const say = (line: string): boolean => process.stderr.write(`${line}\n`);
  const debian = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  try {
    if (debian && !/ubuntu/i.test(readFileSync('/etc/os-release', 'utf8'))) {
      say('No browser found for the browser tests: installing chromium with apt …');
      const quiet = { stdio: 'ignore', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } } as const;
      execFileSync('apt-get', ['update'], quiet);
      execFileSync('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], quiet);
    } else {
      say('No browser found for the browser tests: installing Chromium with Playwright …');
      execFileSync('npx', ['playwright', 'install', 'chromium'], { stdio: 'ignore', timeout: 300_000 });
    }
  } catch {
    return undefined;
  }
  return foundBrowser();
}

function noBrowser(): never {
  throw new Error(
    `The browser tests need Chromium or Chrome: install one, or name its program in ${variable}, and run this again.`,
  );
}
