import { vi } from 'vitest';

/**
 * Waits until something holds, however slow the machine: the limit is there for what never comes.
 *
 * @param check throws for as long as it does not hold
 */
export function until<Found>(check: () => Found | Promise<Found>): Promise<Found> {
  return vi.waitFor(check, { timeout: 90_000, interval: 10 });
}
