import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Watchdog } from '../../src/worker/watchdog';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('is over a little after the limit without a sign', () => {
  const over = vi.fn();
  new Watchdog(2000, over).begin();
  vi.advanceTimersByTime(2000);
  expect(over).not.toHaveBeenCalled();
  vi.advanceTimersByTime(500);
  expect(over).toHaveBeenCalledOnce();
  vi.advanceTimersByTime(10_000);
  expect(over).toHaveBeenCalledOnce();
});

test('begins again with every sign', () => {
  const over = vi.fn();
  const watchdog = new Watchdog(2000, over);
  watchdog.begin();
  for (let second = 0; second < 20; second++) {
    vi.advanceTimersByTime(1500);
    watchdog.sign();
  }
  expect(over).not.toHaveBeenCalled();
});

test('is not over when it was ended', () => {
  const over = vi.fn();
  const watchdog = new Watchdog(2000, over);
  watchdog.begin();
  vi.advanceTimersByTime(1900);
  watchdog.end();
  vi.advanceTimersByTime(10_000);
  expect(over).not.toHaveBeenCalled();
});
