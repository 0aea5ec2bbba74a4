import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beginsSpan, thinned } from '../../src/keeping';

const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;
const now = Date.UTC(2026, 5, 15, 12, 0);
const kept = (times: readonly number[], at = now): number[] => {
  const gone = new Set(thinned(times, at));
  return times.filter((time) => !gone.has(time));
};

describe('earlier states', () => {
  it('of the last hour stay one to five minutes, of the last day one to an hour', () => {
    const everyMinute = Array.from({ length: 24 * 60 }, (_one, at) => now - at * minute);
    const ages = kept(everyMinute).map((time) => (now - time) / minute);
    // 12:00, 11:59, 11:54 … 11:04, then the last minute of each hour before that.
    expect(ages.slice(0, 4)).toEqual([0, 1, 6, 11]);
    expect(ages.filter((age) => age <= 60)).toHaveLength(13);
    expect(ages.filter((age) => age > 61).every((age) => age % 60 === 1)).toBe(true);
  });

  it('of the last month stay one to a day, and after that one to thirty days', () => {
    const everyHour = Array.from({ length: 400 * 24 }, (_one, at) => now - at * hour);
    const ages = kept(everyHour).map((time) => (now - time) / day);
    const daily = ages.filter((age) => age > 2 && age < 29);
    expect(daily.slice(1).every((age, at) => Math.abs(age - daily[at]! - 1) < 1e-9)).toBe(true);
    const old = ages.filter((age) => age > 62);
    expect(old.slice(1).every((age, at) => Math.abs(age - old[at]! - 30) < 1e-9)).toBe(true);
  });

  it('of two years of daily work come to fewer than a hundred', () => {
    const times = Array.from({ length: 730 * 40 }, (_one, at) => now - at * 36 * minute);
    expect(kept(times).length).toBeLessThan(100);
  });

  const times = fc.array(fc.integer({ min: 0, max: 90 * day }), { maxLength: 200 });

  it('the newest always stays', () => {
    fc.assert(
      fc.property(times, (ages) => {
        const all = ages.map((age) => now - age);
        if (all.length > 0) expect(kept(all)).toContain(Math.max(...all));
      }),
    );
  });

  it('that were thinned on the way are in the end the same as if they had not been', () => {
    fc.assert(
      fc.property(times, fc.array(fc.integer({ min: 0, max: 60 * day }), { maxLength: 5 }), (ages, later) => {
        const all = [...new Set(ages.map((age) => now - age))];
        let onTheWay = all;
        let at = now;
        for (const wait of later) onTheWay = kept(onTheWay, (at += wait));
        expect(kept(onTheWay, at).sort()).toEqual(kept(all, at).sort());
      }),
    );
  });

  it('are begun with a change five minutes after the one before, at most', () => {
    expect(beginsSpan(now, now + 5 * minute)).toBe(true);
    expect(beginsSpan(now, now + 5 * minute - 1)).toBe(false);
  });
});
