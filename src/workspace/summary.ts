import { joinWithAnd } from '../format';
import { cellById, type Notebook } from '../notebook';

/** One sentence for everything an edit moved, so that a screen reader hears one and not forty. */
export function summaryOf(notebook: Notebook, changed: readonly { cell: string }[]): string {
  const ids = [...new Set(changed.map((change) => change.cell))];
  const labels = ids.flatMap((id) => cellById(notebook, id)?.label ?? []);
  if (labels.length === 0) return '';
  const first = labels.slice(0, 3);
  const rest = labels.length - first.length;
  const list = rest > 0 ? `${first.join(', ')} and ${rest} more` : joinWithAnd(first);
  return `${list} changed.`;
}
