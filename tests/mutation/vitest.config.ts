import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/**
 * The suites that hold to account the arithmetic of `src/craft`, and what counts a written pattern again, without the
 * rest: see "Testing" in DEVELOPERS.md.
 */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    environment: 'node',
    setupFiles: ['./tests/same-cases.ts', './tests/mutation/fewer-cases.ts'],
    // Mutants that never end are stopped from outside; what is only slow may finish.
    testTimeout: 60_000,
    // The greatest that is worked out takes minutes with mutants in the code; what is less shows the same.
    testNamePattern: /^(?!.*(a million ways|the greatest gathering)).*$/,
    include: ['tests/{craft,published,pattern/verify}/**/*.test.ts', 'tests/pattern/write/size-list.test.ts'],
  },
});
