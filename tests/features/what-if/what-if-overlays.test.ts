import { expect, it } from 'vitest';
import type { WhatIf } from '../../../src/notebook';
import { whatIfOverlays } from '../../../src/features/what-if/overlays';
import { workedWhatIfs } from '../../../src/features/what-if/worked.svelte';
import { workspaceWith } from '../../workspace/local-workspace';
import { until } from '../../until';
import { vNeck } from '../../notebooks/v-neck';

const counted = (cell: string, value: number): WhatIf => ({
  id: cell,
  name: cell,
  on: true,
  changes: [{ cell, key: 'sts.0.count', size: null, value }],
});

it('a what-if of another rib is not drawn over the back, which it leaves as it is; one of another body is', async () => {
  const { workspace, settled } = workspaceWith({
    ...vNeck(),
    whatIfs: [counted('rib', 18), counted('body', 15)],
  });
  await settled();
  const worked = workedWhatIfs(workspace);
  await until(() => expect(worked.of('rib') && worked.of('body')).toBeTruthy());
  const drawn = (piece: string) =>
    whatIfOverlays(workspace, piece).map(({ id, sizes }) => [id, sizes.map((size) => size.id)]);
  // Each keeps its turn, and with it the letter that stands for it in the tables.
  // At another gauge a back of as many stitches is another back: its rows are narrower.
  expect(drawn('back')).toEqual([
    ['rib', []],
    ['body', workspace.sizes.map(({ id }) => id)],
  ]);
  expect(drawn('band-worked')[0]![1]).not.toEqual([]);
});
