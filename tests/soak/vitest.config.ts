import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/**
 * What takes too long for every day: the process killed 20 times in 500 edits each, 10,000 hostile files, 100
 * damaged databases, 100 wrong clocks. A part:
 * `npm run soak -- -t "kill 1 "`, `npm run soak -- -t "files 3 "`.
 */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    environment: 'node',
    include: ['tests/soak/**/*.test.ts'],
    globalSetup: ['tests/browser/served-page.ts'],
    reporters: ['default', './tests/closing-line.ts'],
    testTimeout: 3_600_000,
    hookTimeout: 600_000,
    expect: { poll: { timeout: 90_000 } },
    fileParallelism: false,
  },
});
