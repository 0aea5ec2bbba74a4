import { describe, expect, it } from 'vitest';
import { cellRefKey } from '../../../src/workspace/choosable';
import { SolveForm, allChecks } from '../../../src/features/solve/solve-form.svelte';
import { formula, measure, notebookOf } from '../../engine/notebook-of';
import { workspaceWith } from '../../workspace/local-workspace';

/** A back of whole stitches from a bust of its own in each size and an ease for all. */
async function opened() {
  const { workspace, settled } = workspaceWith(
    notebookOf(
      [
        measure('bust', 'length', { each: { s: 80, m: 90, l: 100 } }),
        measure('ease', 'length', 10),
        measure('cuff', 'length', 20),
        formula('back', 'ROUNDCOUNT((bust + ease) / CM(2))'),
      ],
      ['S', 'M', 'L'].map((label) => ({ id: label.toLowerCase(), label })),
    ),
  );
  await settled();
  workspace.selection.position = { cell: 'back', key: 'value', size: null };
  const form = new SolveForm(workspace);
  form.begin();
  return form;
}

describe('what is worked back', () => {
  it('begins with the count of the middle size, to be met exactly, by an input for all sizes about its value', async () => {
    const form = await opened();
    expect([form.wishText, form.withinText]).toEqual(['50', '0']);
    expect(form.input?.cell).toBe('ease');
    expect([form.fromText, form.toText, form.stepText]).toEqual(['0', '20', '0.1']);
    expect(form.sought).toMatchObject({
      search: { from: 0, to: 20, step: 0.1 },
      wish: { wish: 'value', value: 50, within: 0 },
    });
  });

  it('cannot be sought by a value that feeds nothing of it, nor between no numbers', async () => {
    const form = await opened();
    form.move(cellRefKey({ cell: 'cuff', key: 'value' }));
    expect(form.sought).toMatchObject({ problem: expect.stringContaining('does not depend on') });
    form.move(cellRefKey({ cell: 'ease', key: 'value' }));
    form.toText = '';
    expect(form.sought).toMatchObject({ problem: 'Type a number.' });
  });

  it('of all checks says where there is none', async () => {
    const form = await opened();
    form.selectGoal(allChecks);
    expect(form.sought).toMatchObject({ problem: expect.stringContaining('There is no check') });
  });
});
