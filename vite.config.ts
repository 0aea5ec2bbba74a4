import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
import { defineConfig } from 'vitest/config';
import { woff2Only } from './src/build/fonts.ts';
import { withoutDescriptions, withoutSalesAddresses } from './src/build/hyperformula.ts';
import { bundledPackages } from './src/build/licenses.ts';
import { offline } from './src/build/offline.ts';
import { freePort } from './src/build/free-port.ts';
import { source } from './src/build/source.ts';

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

/** The packages whose code is in the build: of the page, its workers, and the worker that stores it. */
const packages = bundledPackages();

/** Milliseconds before a test counts as one that hangs. No machine is so busy that it takes as long otherwise. */
const slow = 300_000;

const plain = { environment: 'node' as const };

export default defineConfig({
  root: 'src',
  base: './',
  publicDir: '../static',
  plugins: [
    svelte({ configFile: fileURLToPath(new URL('svelte.config.js', import.meta.url)) }),
    woff2Only(),
    packages.plugin(),
    offline(packages),
    source(),
    freePort(),
  ],
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: 'es2022',
    manifest: true,
    // Browsers that do not preload modules fetch them a little later.
    modulePreload: { polyfill: false },
    // What the page begins with is one part: packed together it weighs a tenth less than as thirty. Its entry is not in
    // it: parts that are fetched while the entry waits for them would wait for the entry.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [{ name: 'page', test: /\/src\/(app\/App\.svelte|features\/notebooks\/opening\.ts)$/ }],
        },
      },
    },
  },
  worker: {
    format: 'es',
    plugins: () => [withoutDescriptions(), withoutSalesAddresses(), packages.plugin()],
  },
  preview: { headers, port: 4173, strictPort: true },
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
            'tests/{craft,formulas,format,notebook,explain,engine,analysis,worker,pattern,pictures,storage,starters,published}/**/*.test.ts',
          ],
        },
      },
      {
        extends: true,
        plugins: [svelteTesting()],
        test: {
          name: 'components',
          environment: 'happy-dom',
          include: ['tests/{workspace,ui,features,app}/**/*.test.ts'],
          setupFiles: ['./tests/workspace/fetched.ts'],
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
