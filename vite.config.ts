import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
import { build, type Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

/**
 * What every response of the served page carries. Hosts other than `npm start` must send the same
 * (README.md repeats them): a meta tag would not reach the worker.
 */
const headers = {
  'Content-Security-Policy': [
    "default-src 'none'",
    "script-src 'self'",
    "worker-src 'self'",
    "style-src 'self'",
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "connect-src 'self'",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join('; '),
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
};

/** What is stored for use without a network: all that the page can ask for. Browsers that can do so know woff2. */
const stored = /\.(html|js|css|woff2|webmanifest)$|(^|\/)icon[^/]*$/;

/** Writes the worker that stores the page on the device, with the list of the files as they were built. */
function offline(): Plugin {
  return {
    name: 'offline',
    apply: 'build',
    async writeBundle({ dir }) {
      const files = readdirSync(dir!, { recursive: true, encoding: 'utf8' })
        .map((file) => file.replaceAll('\\', '/'))
        .filter((file) => stored.test(file) && !file.startsWith('offline-worker'))
        .sort()
        .map((url) => {
          const named = url.startsWith('assets/');
          const hash = createHash('sha256').update(readFileSync(join(dir!, url)));
          return { url, revision: named ? null : hash.digest('hex').slice(0, 16) };
        });
      await build({
        configFile: false,
        logLevel: 'warn',
        publicDir: false,
        define: {
          filesOfThePage: JSON.stringify(files),
          'process.env.NODE_ENV': '"production"',
        },
        build: {
          outDir: dir!,
          emptyOutDir: false,
          target: 'es2022',
          lib: {
            entry: fileURLToPath(new URL('src/keeping/offline-worker.ts', import.meta.url)),
            formats: ['iife'],
            name: 'offline',
            fileName: () => 'offline-worker.js',
          },
        },
      });
    },
  };
}

/**
 * Leaves out of the build the descriptions of functions that HyperFormula brings for those who list them in English:
 * a tenth of all that is loaded, and the page has sentences of its own. Each becomes an empty list.
 */
function withoutDescriptions(): Plugin {
  return {
    name: 'without descriptions',
    apply: 'build',
    transform(code, id) {
      if (!/hyperformula\/es\/interpreter\/functionMetadata\/categories\//.test(id)) return undefined;
      const names = [...code.matchAll(/^export const (\w+) = /gm)].map(([, name]) => name);
      if (names.length === 0) this.error(`${id} is not what it was: look whether it still can be left out.`);
      return { code: names.map((name) => `export const ${name} = {};`).join('\n'), map: null };
    },
  };
}

/** Milliseconds before a test counts as one that hangs. No machine is so busy that it takes as long otherwise. */
const slow = 300_000;

const plain = { environment: 'node' as const };

export default defineConfig({
  root: 'src',
  base: './',
  publicDir: '../static',
  plugins: [svelte({ configFile: fileURLToPath(new URL('svelte.config.js', import.meta.url)) }), offline()],
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: 'es2022',
    manifest: true,
    // What the page begins with is one part: packed together it weighs a tenth less than as thirty. Its entry is not in
    // it: parts that are fetched while the entry waits for them would wait for the entry.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [{ name: 'page', test: /\/src\/page\/(App\.svelte|keeping\/opening\.ts)$/ }],
        },
      },
    },
  },
  worker: { format: 'es', plugins: () => [withoutDescriptions()] },
  preview: { headers, port: 4173 },
  test: {
    root: '.',
    // Left alone, Vitest keeps a core free: half of a machine of two.
    maxWorkers: availableParallelism(),
    setupFiles: ['./tests/same-cases.ts'],
    reporters: ['default', './tests/closing-line.ts'],
    projects: [
      {
        extends: true,
        test: {
          ...plain,
          name: 'units',
          testTimeout: slow,
          hookTimeout: slow,
          include: [
            'tests/*.test.ts',
            'tests/{craft,notebook,sheet,pictures,words,keeping,starters,published}/**/*.test.ts',
          ],
        },
      },
      {
        extends: true,
        plugins: [svelteTesting()],
        test: {
          name: 'components',
          environment: 'happy-dom',
          include: ['tests/page/**/*.test.ts'],
          setupFiles: ['./tests/page/fetched.ts'],
          testTimeout: slow,
          hookTimeout: slow,
        },
      },
      {
        extends: true,
        test: {
          ...plain,
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/served-page.ts'],
          testTimeout: slow,
          hookTimeout: slow,
          expect: { poll: { timeout: 90_000 } },
        },
      },
    ],
  },
});
