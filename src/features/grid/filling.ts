import { fillValues, sizesAfter } from '../../notebook';
import type { Block } from './block';
import type { Workspace } from '../../workspace';

/** Fills the first size of a block into its others; of a block of one size, into all sizes that come after it. */
export function fillAlong(workspace: Workspace, { lines, sizes }: Block): void {
  const [from, ...others] = sizes;
  if (!from) return;
  const refs = lines.map(({ cell, line }) => ({ cell: cell.id, key: line.key }));
  const to = others.length > 0 ? others : sizesAfter(workspace.notebook, from.id);
  const edit = fillValues(workspace.notebook, refs, from, to);
  if (!edit) {
    workspace.announcement = `There is nothing to fill along the sizes from ${from.label}.`;
    return;
  }
  const refused = workspace.do(edit);
  if (refused) workspace.complaint = refused;
  else workspace.announcement = `Filled ${from.label} into ${to.map(({ label }) => label).join(', ')}.`;
}
