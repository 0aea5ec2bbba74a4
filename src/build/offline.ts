import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type InlineConfig, type Plugin } from 'vite';
import { licensePage, type BundledPackages } from './licenses.ts';

/** What is stored for use without a network: all that the page can ask for. Browsers that can do so know woff2. */
const stored = /\.(html|js|css|woff2|webmanifest)$|(^|\/)icon[^/]*$/;

/**
 * Writes the worker that stores the page on the device, with the list of the files as they were built; before it, the
 * page of licenses, which is among them and names what the worker is made of too.
 */
export function offline(packages: BundledPackages): Plugin {
  let sourcemap: boolean | 'inline' | 'hidden' = false;
  return {
    name: 'offline',
    apply: 'build',
    configResolved(config) {
      ({ sourcemap } = config.build);
    },
    async writeBundle({ dir }) {
      await build(worker(dir!, [], { write: false, sourcemap }, packages.plugin()));
      writeFileSync(join(dir!, 'licenses.html'), licensePage(packages.named()));
      const files = readdirSync(dir!, { recursive: true, encoding: 'utf8' })
        .map((file) => file.replaceAll('\\', '/'))
        .filter((file) => stored.test(file) && !file.startsWith('offline-worker'))
        .sort()
        .map((url) => {
          const named = url.startsWith('assets/');
          const hash = createHash('sha256').update(readFileSync(join(dir!, url)));
          return { url, revision: named ? null : hash.digest('hex').slice(0, 16) };
        });
      await build(worker(dir!, files, { sourcemap }));
    },
  };
}

function worker(
  dir: string,
  files: readonly object[],
  options: InlineConfig['build'],
  plugin?: Plugin,
): InlineConfig {
  return {
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    plugins: [plugin],
    define: {
      filesOfThePage: JSON.stringify(files),
      'process.env.NODE_ENV': '"production"',
    },
    build: {
      outDir: dir,
      emptyOutDir: false,
      target: 'es2022',
      lib: {
        entry: fileURLToPath(new URL('../storage/offline-worker.ts', import.meta.url)),
        formats: ['iife'],
        name: 'offline',
        fileName: () => 'offline-worker.js',
      },
      ...options,
    },
  };
}
