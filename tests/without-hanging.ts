import { expect } from 'vitest';

/** Seconds: whoever works as long on a single answer hangs. */
const most = 60;

/**
 * Does some work, and sees to it that it did not hang. What is counted is the processor's time for this process, to
 * which a busy machine adds nothing.
 *
 * @param called what it is called where it did
 */
export function withoutHanging<Given>(work: () => Given, called = ''): Given {
  const before = process.cpuUsage();
  try {
    return work();
  } finally {
    expect(process.cpuUsage(before).user / 1e6, called).toBeLessThan(most);
  }
}
