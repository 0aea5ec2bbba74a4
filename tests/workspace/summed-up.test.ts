import { describe, expect, it } from 'vitest';
import { changesBetween, type Notebook } from '../../src/notebook';
import { Workspace } from '../../src/workspace/workspace.svelte';
import { wordAnswers } from '../../src/workspace/messages';
import { WorkedSheet } from '../../src/engine/sheet';
import { small } from './small-notebook';

/** A workspace whose sheet answers one size first and the others after it, as the worker does when a notebook is opened. */
async function openedInParts(notebook: Notebook) {
  const sheet = new WorkedSheet();
  let shown: Notebook | null = null;
  let settled = false;
  const workspace = new Workspace(notebook, () => ({
    show: () => (settled = false),
    trials: () => Promise.reject(new Error('not asked here')),
    followWhatIfs: () => Promise.reject(new Error('not asked here')),
    check: (formula, ref) => sheet.check(formula, ref),
    get settled() {
      return settled;
    },
  }));
  const answered = async (part: Notebook, last: boolean): Promise<void> => {
    const answer = await sheet.update(changesBetween(shown, part));
    shown = part;
    settled = last;
    workspace.calculation.applyAnswer(answer);
  };
  wordAnswers(workspace);
  return { workspace, answered };
}

describe('what is said to have changed', () => {
  it('on opening a notebook is nothing, though its sizes are worked one after the other', async () => {
    const notebook = small();
    const { workspace, answered } = await openedInParts(notebook);
    await answered({ ...notebook, sizes: notebook.sizes.slice(0, 1) }, false);
    expect(workspace.announcement).toBe('');
    await answered(notebook, true);
    expect(workspace.announcement).toBe('');
  });

  it('by an edit afterwards is what moved', async () => {
    const notebook = small();
    const { workspace, answered } = await openedInParts(notebook);
    await answered(notebook, true);
    workspace.do({ do: 'give', cell: 'hem', key: 'value', size: null, value: 6 });
    await answered(workspace.notebook, true);
    expect(workspace.announcement).toBe('Hem changed.');
  });

  it('by an edit is told as well where other sizes still wait', async () => {
    const notebook = small();
    const { workspace, answered } = await openedInParts(notebook);
    await answered(notebook, true);
    workspace.do({ do: 'give', cell: 'hem', key: 'value', size: null, value: 6 });
    await answered(workspace.notebook, false);
    expect(workspace.announcement).toBe('Hem changed.');
  });
});
