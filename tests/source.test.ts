import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { archived, projectFiles } from '../src/build/source';

/** What the system's own `tar` says of an archive. */
function tar(archive: Buffer, ...asked: string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'easewright-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  writeFileSync(join(folder, 'a.tar.gz'), archive);
  return execFileSync('tar', [...asked.slice(0, 1), 'a.tar.gz', ...asked.slice(1)], {
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
  expect(() => archived([{ name: 'a'.repeat(101), content: Buffer.alloc(0) }])).toThrow('no name');
});

it('the project’s own files are those of a clone, and nothing that is installed, built or of one machine', () => {
  const files = projectFiles();
  for (const one of [
    'src/main.ts',
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
