import { filling, sizesAfter } from '../../notebook/fill-values';
import type { Block } from './block';
import type { Desk } from '../../workspace/workspace.svelte';

/** Fills the first size of a block into its others; of a block of one size, into all sizes that come after it. */
export function fillAlong(desk: Desk, { lines, sizes }: Block): void {
  const [from, ...others] = sizes;
  if (!from) return;
  const places = lines.map(({ cell, line }) => ({ cell: cell.id, key: line.key }));
  const to = others.length > 0 ? others : sizesAfter(desk.notebook, from.id);
  const edit = filling(desk.notebook, places, from, to);
  if (!edit) {
    desk.said = `There is nothing to fill along the sizes from ${from.label}.`;
    return;
  }
  const refused = desk.do(edit);
  if (refused) desk.complaint = refused;
  else desk.said = `Filled ${from.label} into ${to.map(({ label }) => label).join(', ')}.`;
}
