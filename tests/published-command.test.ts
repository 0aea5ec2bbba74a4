import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const command = fileURLToPath(new URL('published/run.js', import.meta.url));
const folder = fileURLToPath(new URL('published', import.meta.url));

/** Runs `npm run published -- …` as npm does, called from `tests/published`. */
const published = (...args: string[]) =>
  new Promise<{ code: number; out: string; err: string }>((done) => {
    const child = execFile(
      process.execPath,
      [command, ...args],
      { env: { ...process.env, INIT_CWD: folder } },
      (_, out, err) => done({ code: child.exitCode ?? -1, out, err }),
    );
  });

test('npm run published ends with a line of counts and on 0 where all hold or are not yet', async () => {
  const { code, out, err } = await published('construction', 'construction.json');
  expect(err).toBe('');
  expect(out.trimEnd().split('\n').at(-1)).toMatch(/^\d+ hold, 0 fall short, \d+ not yet$/);
  expect(code).toBe(0);
});

test('npm run published says what is wrong with a file in one sentence, and ends on 2', async () => {
  const missing = await published('construction', 'nowhere.json');
  expect(missing).toEqual({ code: 2, out: '', err: 'nowhere.json cannot be read (ENOENT).\n' });
});
