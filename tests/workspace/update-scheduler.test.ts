import { describe, expect, it } from 'vitest';
import { CellSignals } from '../../src/workspace/cell-signals.svelte';
import { UpdateScheduler } from '../../src/workspace/update-scheduler.svelte';

function begun(outOfSight: readonly string[]) {
  const followed = new CellSignals();
  const telling = new UpdateScheduler(followed);
  for (const cell of outOfSight) telling.outOfSight.add(cell);
  const told = (cells: readonly string[]) => cells.map((cell) => followed.at(cell).results);
  return { followed, telling, told };
}

const cells = (many: number) => Array.from({ length: many }, (_, i) => `c${i}`);
const untilAllAreTold = async (telling: UpdateScheduler) => {
  while (telling.behind) await new Promise((resolve) => setTimeout(resolve, 5));
};

describe('telling cells of their results', () => {
  it('tells those in sight at once and the others afterwards, each once', async () => {
    const all = cells(200);
    const [seen, unseen] = [all.slice(0, 5), all.slice(5)];
    const { telling, told } = begun(unseen);
    telling.schedule(new Set(all));
    expect(told(seen)).toEqual(seen.map(() => 1));
    expect(told(unseen)).toEqual(unseen.map(() => 0));
    expect(telling.behind).toBe(true);
    await untilAllAreTold(telling);
    expect(told(all)).toEqual(all.map(() => 1));
  });

  it('tells a few at once wherever they stand', () => {
    const few = cells(20);
    const { telling, told } = begun(few);
    telling.schedule(new Set(few));
    expect(told(few)).toEqual(few.map(() => 1));
    expect(telling.behind).toBe(false);
  });

  it('lets the next results go before what is still waiting, and forgets none of it', async () => {
    const all = cells(100);
    const { telling, told } = begun(all.slice(1));
    telling.schedule(new Set(all));
    telling.schedule(new Set(all));
    expect(told(['c0'])).toEqual([2]);
    await untilAllAreTold(telling);
    expect(told(all.slice(1)).every((times) => times >= 1)).toBe(true);
  });
});

describe('how cells stand to the one in focus', () => {
  it('is forgotten of a cell that is named no longer', () => {
    const { followed } = begun([]);
    followed.setRoles(
      new Map([
        ['bust', 'here'],
        ['back', 'fed'],
      ]),
    );
    followed.setRoles(new Map([['back', 'here']]));
    expect([followed.at('bust').role, followed.at('back').role]).toEqual([undefined, 'here']);
  });
});
