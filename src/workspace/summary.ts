import { cellById, type Notebook } from '../notebook';

/** One sentence for everything an edit moved, so that a screen reader hears one and not forty. */
export function summaryOf(notebook: Notebook, changed: readonly { cell: string }[]): string {
  const ids = [...new Set(changed.map((change) => change.cell))];
  const labels = ids.flatMap((id) => cellById(notebook, id)?.label ?? []);
  if (labels.length === 0) return '';
  const first = labels.slice(0, 3);
  const rest = labels.length - first.length;
  const list = rest > 0 ? `${first.join(', ')} and ${rest} more` : joined(first);
  return `${list} changed.`;
}

/** What `format/join-with-and.ts` does, which is not loaded yet when the first edit is summed up. */
function joined(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
