import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
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

const plain = { environment: 'node' as const };

export default defineConfig({
  root: 'src',
  base: './',
  publicDir: '../static',
  plugins: [svelte({ configFile: fileURLToPath(new URL('svelte.config.js', import.meta.url)) })],
  build: { outDir: '../dist', emptyOutDir: true, target: 'es2022', manifest: true },
  worker: { format: 'es' },
  preview: { headers, port: 4173 },
  test: {
    root: '.',
    setupFiles: ['./tests/same-cases.ts'],
    reporters: ['default', './tests/closing-line.ts'],
    projects: [
      {
        extends: true,
        test: {
          ...plain,
          name: 'units',
          include: ['tests/{craft,notebook,sheet,pictures,words,starters,published}/**/*.test.ts'],
        },
      },
      {
        extends: true,
        plugins: [svelteTesting()],
        test: {
          name: 'components',
          environment: 'happy-dom',
          include: ['tests/page/**/*.test.ts'],
          testTimeout: 30_000,
        },
      },
      {
        extends: true,
        test: {
          ...plain,
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/served-page.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
