import { rmSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/**
 * Bundles a file and everything it imports into one that Node runs as it is, in a folder of its own: what a thread
 * of Node needs, which knows no TypeScript. The folder is gone when the program ends.
 *
 * @param entry the file, from the top of the project
 */
export async function bundled(entry: string): Promise<string> {
  const outDir = await mkdtemp(join(tmpdir(), 'easewright-'));
  process.once('exit', () => rmSync(outDir, { recursive: true, force: true }));
  await build({
    configFile: false,
    root: fileURLToPath(new URL('..', import.meta.url)),
    logLevel: 'error',
    ssr: { noExternal: true },
    build: {
      ssr: entry,
      outDir,
      emptyOutDir: true,
      target: 'node20',
      rollupOptions: { output: { entryFileNames: '[name].mjs', codeSplitting: false } },
    },
  });
  return join(outDir, `${basename(entry, '.ts')}.mjs`);
}
