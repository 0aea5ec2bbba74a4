import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

interface Chunk {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly css?: readonly string[];
  readonly imports?: readonly string[];
}

/** What loads by itself once the cells can be read: the thread with the engine, and the drawing with its plots. */
const after = /(^|\/)(worker|plot|Beside)-/;

/** Bytes, after gzip, of what the built page loads before it can be read, and of the engine and the plots. */
export async function loads(dist: string): Promise<{ first: number; later: number }> {
  const manifest = JSON.parse(await readFile(join(dist, '.vite/manifest.json'), 'utf8')) as Record<
    string,
    Chunk
  >;
  const first = new Set<string>();
  const next = new Set<string>();
  const add = (key: string, to: Set<string>): void => {
    const chunk = manifest[key]!;
    if (to.has(chunk.file)) return;
    to.add(chunk.file);
    for (const css of chunk.css ?? []) to.add(css);
    for (const imported of chunk.imports ?? []) add(imported, to);
  };
  for (const [key, { isEntry }] of Object.entries(manifest)) if (isEntry) add(key, first);
  // With what they import: Chart.js is a file of its own where several pictures are drawn with it.
  for (const [key, { file }] of Object.entries(manifest)) if (after.test(file)) add(key, next);
  const files = (await readdir(dist, { recursive: true })).filter((file) => /\.(js|css)$/.test(file));
  const weights = await Promise.all(
    files.map(async (file) => ({
      file,
      bytes: gzipSync(await readFile(join(dist, file)), { level: 9 }).length,
    })),
  );
  const total = (some: typeof weights): number => some.reduce((sum, { bytes }) => sum + bytes, 0);
  return {
    first: total(weights.filter(({ file }) => first.has(file))),
    later: total(weights.filter(({ file }) => !first.has(file) && (next.has(file) || after.test(file)))),
  };
}
