import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

interface Chunk {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly css?: readonly string[];
  readonly imports?: readonly string[];
}

/** What a first visit opens with, besides the entry. */
const opensWith = /starters\/cardigan/;
/** What loads by itself once the cells can be read: the thread with the engine, and the drawing with its plots. */
const thread = /(^|\/)worker-/;
const drawing = /(^|\/)(plot|printed|SidePanel|client)-/;

interface Weight {
  readonly file: string;
  readonly bytes: number;
}

async function weighed(dist: string): Promise<Weight[]> {
  const files = (await readdir(dist, { recursive: true })).filter((file) => /\.(js|css)$/.test(file));
  return Promise.all(
    files.map(async (file) => ({
      file,
      bytes: gzipSync(await readFile(join(dist, file)), { level: 9 }).length,
    })),
  );
}

/** The parts of the built page that weigh something, the heaviest first, and all the others as one. */
export async function parts(dist: string): Promise<Weight[]> {
  const named = (await weighed(dist)).map(({ file, bytes }) => ({
    file: file.replace(/^assets\//, '').replace(/-[\w-]{8}(?=\.\w+$)/, ''),
    bytes,
  }));
  const heavy = named.filter(({ bytes }) => bytes >= 4000).sort((a, b) => b.bytes - a.bytes);
  const light = named.filter(({ bytes }) => bytes < 4000);
  const bytes = light.reduce((sum, one) => sum + one.bytes, 0);
  return [...heavy, { file: `${light.length} parts of less than 4 kB`, bytes }];
}

/** Bytes, after gzip, of what the built page loads before it can be read, and of the engine and the plots. */
export async function loads(dist: string): Promise<{ first: number; later: number }> {
  const manifest = JSON.parse(await readFile(join(dist, '.vite/manifest.json'), 'utf8')) as Record<
    string,
    Chunk
  >;
  const add = (key: string, to: Set<string>): void => {
    const chunk = manifest[key]!;
    if (to.has(chunk.file)) return;
    to.add(chunk.file);
    for (const css of chunk.css ?? []) to.add(css);
    for (const imported of chunk.imports ?? []) add(imported, to);
  };
  const [first, after] = [new Set<string>(), new Set<string>()];
  for (const [key, { isEntry, file }] of Object.entries(manifest)) {
    if (isEntry || opensWith.test(key)) add(key, first);
    if (drawing.test(file)) add(key, after);
  }
  const weights = await weighed(dist);
  const total = (some: readonly Weight[]): number => some.reduce((sum, { bytes }) => sum + bytes, 0);
  return {
    first: total(weights.filter(({ file }) => first.has(file))),
    later: total(weights.filter(({ file }) => !first.has(file) && (after.has(file) || thread.test(file)))),
  };
}
