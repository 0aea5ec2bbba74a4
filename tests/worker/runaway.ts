import { rm } from 'node:fs/promises';
import { dirname } from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import { bundled } from '../bundled';
import { threadInNode } from './thread-in-node';

/** Starts threads in which a formula can run for ever (`runaway-thread.ts`), bundled once for the tests that ask. */
export function runawayThreads(): () => ReturnType<typeof threadInNode> {
  let file: string;
  beforeAll(async () => {
    file = await bundled('tests/worker/runaway-thread.ts');
  }, 60_000);
  afterAll(() => rm(dirname(file), { recursive: true, force: true }));
  return () => threadInNode(file);
}
