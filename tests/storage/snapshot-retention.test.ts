import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beginsSpan, mostStates, newestFirst, thinned } from '../../src/storage';

const minute = 60_000;
const day = 24 * 60 * minute;
const now = Date.UTC(2026, 5, 15, 12, 0);

interface State {
  readonly at: number;
  readonly order?: number;
}
const kept = (states: readonly State[]): State[] => {
  const gone = new Set(thinned(states));
  return states.filter(({ at }) => !gone.has(at));
};
/** What is left of work in which a state is remembered with every so many saves, and thinned each time. */
const afterWork = (written: number, savesBetween: number): State[] => {
  let states: State[] = [];
  for (let order = savesBetween; order <= written * savesBetween; order += savesBetween)
    states = kept([{ at: order, order }, ...states]);
  return states;
};

describe('earlier states', () => {
  const times = fc.uniqueArray(fc.integer({ min: -400 * day, max: 400 * day }), { maxLength: 150 });

  it('stay, all of them, while there are no more than a hundred, whatever the clock said', () => {
    fc.assert(
      fc.property(times, (offsets) => {
        const states = offsets
          .slice(0, mostStates)
          .map((offset, at) => ({ at: now + offset, order: 900 - at }));
        expect(thinned(states)).toEqual([]);
      }),
    );
  });

  it('go one by one above that, by their order alone: a clock has no say', () => {
    fc.assert(
      fc.property(times, fc.integer({ min: -70 * day, max: 70 * day }), (offsets, ahead) => {
        const states = offsets.map((offset, at) => ({ at: now + offset, order: 900 - 2 * at }));
        const gone = thinned(states);
        expect(gone).toHaveLength(Math.max(0, states.length - mostStates));
        const shifted = states.map(({ at, order }, index) => ({ at: at + (index % 2 ? ahead : 0.5), order }));
        const bucketOf = (all: readonly State[], time: number): number =>
          all.findIndex(({ at }) => at === time);
        expect(thinned(shifted).map((at) => bucketOf(shifted, at))).toEqual(
          gone.map((at) => bucketOf(states, at)),
        );
      }),
    );
  });

  it('reach back over twenty thousand of them, the newest 24 and the first whole, with gaps of a quarter at most', () => {
    const left = afterWork(20_000, 7).map(({ order }) => order!);
    expect(left).toHaveLength(mostStates);
    const newest = 20_000 * 7;
    expect(left.slice(0, 24)).toEqual(Array.from({ length: 24 }, (_one, at) => newest - 7 * at));
    expect(left.at(-1)).toBe(7);
    for (const [at, order] of left.entries()) {
      const older = left[at + 1];
      // A gap between two states, for how far back the older of them is.
      if (older !== undefined && at >= 24) expect((order - older) / (newest - older)).toBeLessThan(0.25);
    }
  });

  it('from before saves were counted are older than the rest and are thinned like them', () => {
    const counted = Array.from({ length: 60 }, (_one, at) => ({ at: now - at * minute, order: 1000 - at }));
    const before = Array.from({ length: 60 }, (_one, at) => ({ at: now + (100 - at) * minute }));
    const states = newestFirst([...before, ...counted].reverse());
    expect(states.slice(0, 60)).toEqual(counted);
    const left = kept(states);
    expect(left).toHaveLength(mostStates);
    expect(left).toContainEqual(before.at(-1));
    expect(left.filter(({ order }) => order === undefined).length).toBeGreaterThan(30);
  });

  it('are in the order they were written, also where a clock went back', () => {
    const states = [
      { at: 500, order: 1 },
      { at: 90, order: 3 },
      { at: 800, order: 2 },
    ];
    expect(newestFirst(states).map(({ order }) => order)).toEqual([3, 2, 1]);
  });

  it('are begun with a change five minutes after the one before, at most', () => {
    expect(beginsSpan(now, now + 5 * minute)).toBe(true);
    expect(beginsSpan(now, now + 5 * minute - 1)).toBe(false);
  });
});
