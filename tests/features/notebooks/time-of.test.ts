import { describe, expect, it } from 'vitest';
import { timeOf } from '../../../src/features/notebooks/time-of';

const now = new Date(2026, 5, 15, 12, 30).getTime();

describe('a time', () => {
  it('of today is a time of day, any other has its day', () => {
    expect(timeOf(now - 3_600_000, now)).toMatch(/^11:30$/);
    expect(timeOf(now - 86_400_000, now)).toMatch(/14.*2026.*12:30$|2026.*14.*12:30$/);
  });

  it('that has not come yet says that the clock was set differently; a little ahead is no matter', () => {
    expect(timeOf(now + 70 * 86_400_000, now)).toMatch(/2026.*\(clock set differently\)$/);
    expect(timeOf(now + 3_600_000, now)).toBe('13:30 (clock set differently)');
    expect(timeOf(now + 30_000, now)).toBe('12:30');
  });

  it.each([NaN, 0, -5, Infinity, 9e15, '2026', undefined, null, {}])('that is %s is not known', (time) => {
    expect(timeOf(time as number, now)).toBe('time unknown');
  });
});
