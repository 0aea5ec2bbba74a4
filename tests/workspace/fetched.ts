import { configure } from '@testing-library/svelte';
import { afterEach, vi } from 'vitest';

// However slow the machine is: the limit is there for what never comes.
configure({ asyncUtilTimeout: 90_000 });

/**
 * What a component fetches beside itself is awaited after every test, whether or not the test had a use for it: a file
 * that ends in the middle of an `import()` would have its modules taken from under it, and be red on a busy machine.
 */
afterEach(() => vi.dynamicImportSettled());
