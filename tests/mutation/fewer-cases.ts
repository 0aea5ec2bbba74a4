import { vi } from 'vitest';
import type fastCheck from 'fast-check';

/** Thousands of cases for every mutant would take a night; what hundreds do not find is seen in the survivors. */
const most = 200;

/** Properties ask for thousands of cases by name, which no global setting overrides: so `assert` itself is capped. */
vi.mock('fast-check', async (original) => {
  const real = (await original<{ default: typeof fastCheck }>()).default;
  const assert = (property: fastCheck.IRawProperty<unknown>, wish?: fastCheck.Parameters<unknown>) =>
    real.assert(property, {
      ...wish,
      numRuns: Math.min(wish?.numRuns ?? 100, most),
      // One case is enough: nobody reads the least one.
      endOnFailure: true,
    });
  const capped = { ...real, assert };
  return { ...capped, default: capped };
});

// Code with mutants in it is slower than the code: to be slow is no death here, and the clock stands still.
process.cpuUsage = () => ({ user: 0, system: 0 });
