import { describe, expect, it } from 'vitest';
import { CellSignals } from '../../src/workspace/cell-signals.svelte';
import { UpdateScheduler } from '../../src/workspace/update-scheduler.svelte';

function begun(outOfSight: readonly string[]) {
  const signals = new CellSignals();
  const scheduler = new UpdateScheduler(signals);
  for (const cell of outOfSight) scheduler.outOfSight.add(cell);
  const updatesOf = (cells: readonly string[]) => cells.map((cell) => signals.at(cell).results);
  return { followed: signals, scheduler, updatesOf };
}

const cells = (many: number) => Array.from({ length: many }, (_, i) => `c${i}`);
const untilAllAreUpdated = async (scheduler: UpdateScheduler) => {
  while (scheduler.behind) await new Promise((resolve) => setTimeout(resolve, 5));
};

describe('telling cells of their results', () => {
  it('tells those in sight at once and the others afterwards, each once', async () => {
    const all = cells(200);
    const [seen, unseen] = [all.slice(0, 5), all.slice(5)];
    const { scheduler, updatesOf } = begun(unseen);
    scheduler.schedule(new Set(all));
    expect(updatesOf(seen)).toEqual(seen.map(() => 1));
    expect(updatesOf(unseen)).toEqual(unseen.map(() => 0));
    expect(scheduler.behind).toBe(true);
    await untilAllAreUpdated(scheduler);
    expect(updatesOf(all)).toEqual(all.map(() => 1));
  });

  it('tells a few at once wherever they stand', () => {
    const few = cells(20);
    const { scheduler, updatesOf } = begun(few);
    scheduler.schedule(new Set(few));
    expect(updatesOf(few)).toEqual(few.map(() => 1));
    expect(scheduler.behind).toBe(false);
  });

  it('lets the next results go before what is still waiting, and forgets none of it', async () => {
    const all = cells(100);
    const { scheduler, updatesOf } = begun(all.slice(1));
    scheduler.schedule(new Set(all));
    scheduler.schedule(new Set(all));
    expect(updatesOf(['c0'])).toEqual([2]);
    await untilAllAreUpdated(scheduler);
    expect(updatesOf(all.slice(1)).every((times) => times >= 1)).toBe(true);
  });
});

describe('how cells stand to the one in focus', () => {
  it('is forgotten of a cell that is named no longer', () => {
    const { followed: signals } = begun([]);
    signals.setRoles(
      new Map([
        ['bust', 'here'],
        ['back', 'fed'],
      ]),
    );
    signals.setRoles(new Map([['back', 'here']]));
    expect([signals.at('bust').role, signals.at('back').role]).toEqual([undefined, 'here']);
  });
});
