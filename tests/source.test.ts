import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { expect, it, onTestFinished } from 'vitest';
import { archived, filesIn, projectFiles } from '../src/build/source';

/** A folder that is gone after the test. */
function folderForNow(): string {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  return folder;
}

/** What the system's own `tar` says of an archive. */
function tar(archive: Buffer, ...wanted: string[]): string {
  const folder = folderForNow();
  writeFileSync(join(folder, 'a.tar.gz'), archive);
  return execFileSync('tar', [...wanted.slice(0, 1), 'a.tar.gz', ...wanted.slice(1)], {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
}

it('an archive is read by tar, names of any length and contents of any size in it', () => {
  const long = `${'folder-of-the-page/'.repeat(8)}a-file-with-quite-a-name.ts`;
  const files = [0, 1, 511, 512, 513, 70_000].map((size) => ({ name: `${size}.txt`, size }));
  const archive = archived(
    [...files, { name: long, size: 12 }].map(({ name, size }) => ({
      name,
      content: Buffer.alloc(size, 'é'),
    })),
  );
  expect(tar(archive, '-tzf').trim().split('\n')).toEqual([...files.map(({ name }) => name), long]);
  for (const { name, size } of files)
    expect(tar(archive, '-xzOf', name)).toBe(Buffer.alloc(size, 'é').toString());
  for (const name of ['a'.repeat(101), 'é.ts'])
    expect(() => archived([{ name, content: Buffer.alloc(0) }])).toThrow('no name');
});

// POSIX.1-2017, "pax", section "ustar Interchange Format": where the fields of a header are, and how an archive ends.
it('an archive says no owner and no time, so that the same files make the same bytes, and ends with two empty blocks', () => {
  const bytes = gunzipSync(archived([{ name: 'a.txt', content: Buffer.from('a') }]));
  const [user, group, time] = [108, 116, 136].map((from) =>
    parseInt(bytes.toString('latin1', from, from + 7), 8),
  );
  expect([user, group, time]).toEqual([0, 0, 0]);
  expect(bytes.toString('latin1', 136, 147)).toBe('0'.repeat(11));
  expect(bytes).toHaveLength(512 + 512 + 1024);
  expect(bytes.subarray(-1024).every((byte) => byte === 0)).toBe(true);
});

it('what tools leave behind in a folder is no file of the project', () => {
  const root = folderForNow();
  const own = ['src/a.ts', 'src/page/b.svelte', 'src/reporting.ts', 'top.json'];
  const left = ['node_modules/x.js', 'dist/x.js', 'reports/x.txt', 'coverage/x.html', '.cache/x', 'x.log'];
  for (const file of [...own, ...left.map((one) => `src/${one}`), ...left.map((one) => `src/page/${one}`)]) {
    mkdirSync(dirname(join(root, file)), { recursive: true });
    writeFileSync(join(root, file), '');
  }
  expect(filesIn(root, ['src', 'top.json']).sort()).toEqual(own);
});

it('the project’s own files are those of a clone, and nothing that is installed, built or of one machine', () => {
  const files = projectFiles();
  for (const one of [
    ...[
      'src/main.ts',
      'static/manifest.webmanifest',
      'eslint.config.js',
      'svelte.config.js',
      'vite.config.ts',
    ],
    ...['tsconfig.json', '.npmrc', '.prettierignore', '.prettierrc.json', 'README.md', 'DEVELOPERS.md'],
    'src/index.html',
    'package.json',
    'package-lock.json',
    'LICENSE',
    '.gitignore',
  ])
    expect(files).toContain(one);
  expect(files).toContain('tests/source.test.ts');
  expect(files.filter((file) => /(^|\/)(node_modules|dist|reports|\.git)\//.test(file))).toEqual([]);
  expect(new Set(files).size).toBe(files.length);
});
