import { describe, expect, it } from 'vitest';
import type { Cell } from '../../../src/notebook';
import { choosableIn, cellRefKey } from '../../../src/workspace/choosable';
import { RangeSweep } from '../../../src/features/range/range-sweep.svelte';
import { rangeShown, whyStill } from '../../../src/features/range/range-shown';
import { workspaceWith } from '../../workspace/local-workspace';
import { small } from '../../workspace/small-notebook';

const fit: Cell = {
  kind: 'fit',
  id: 'sts',
  label: 'Cuff stitches',
  name: 'sts',
  counts: 'stitches',
  target: { formula: 'hem / CM(1) * STS(2)' },
  multiple: { value: 4 },
  plus: { value: 0 },
  rule: 'nearest',
};

async function moved(values: readonly number[]) {
  const { workspace, settled } = workspaceWith(small(fit));
  await settled();
  const all = choosableIn(workspace.notebook);
  const at = (cell: string, key: string) => all.find((one) => one.cell === cell && one.key === key)!;
  const sweep = new RangeSweep(workspace);
  const chosen = [at('sts', 'count'), at('cuff', 'value')];
  const sizes = workspace.sizes.map(({ id }) => id);
  await sweep.work({ input: at('hem', 'value'), givenFor: null, values, chosen, likely: [], sizes });
  return { workspace, sweep, fit: chosen[0]! };
}

describe('a hem moved from 8 to 12 cm, at 2 stitches to the cm', () => {
  it('gives the nearest multiple of 4 at every step, in stairs, and 16, 20 and 24 whole', async () => {
    const { workspace, sweep, fit } = await moved([8, 9.5, 12]);
    const shown = rangeShown(workspace, sweep.moved!, 0, [10]);
    expect(shown.steps).toEqual([8, 9.5, 12]);
    expect(shown.sizes[0]!.values).toEqual([16, 20, 24]);
    expect(shown).toMatchObject({ stairs: true, now: 10 });
    expect(sweep.moved!.whole.get(cellRefKey(fit))!.map(({ count }) => count)).toContain(20);
    expect([sweep.progress, sweep.stopped]).toEqual([null, false]);
  });

  it('moves no cuff that does not depend on it, and says so', async () => {
    const { workspace, sweep } = await moved([8, 9.5, 12]);
    expect(whyStill(workspace, sweep.moved!, 0)).toBe('');
    expect(whyStill(workspace, sweep.moved!, 1)).toMatch(
      /does not depend on .* here: it is the same at every step/,
    );
  });
});
