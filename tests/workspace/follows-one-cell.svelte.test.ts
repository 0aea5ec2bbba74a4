import { flushSync } from 'svelte';
import { expect, onTestFinished, test } from 'vitest';
import { small } from './small-notebook';
import { workspaceWith } from './local-workspace';

/** How often each reader has run since it was asked last. */
function counting(readers: Readonly<Record<string, () => unknown>>): () => Record<string, number> {
  const runs = new Map<string, number>();
  onTestFinished(
    $effect.root(() => {
      for (const [name, read] of Object.entries(readers))
        $effect(() => {
          read();
          runs.set(name, (runs.get(name) ?? 0) + 1);
        });
    }),
  );
  const since = (): Record<string, number> => {
    flushSync();
    const now = Object.fromEntries(runs);
    runs.clear();
    return now;
  };
  since();
  return since;
}

test('an edit runs what follows the cells it touched, and nothing of the others, the sizes or the settings', async () => {
  const { workspace, settled } = workspaceWith(small());
  await settled();
  const since = counting({
    hem: () => workspace.results('hem'),
    cuff: () => workspace.results('cuff'),
    half: () => workspace.results('half'),
    sizes: () => workspace.sizes,
    settings: () => workspace.settings,
    notebook: () => workspace.notebook,
    swatches: () => workspace.document.swatches,
  });
  workspace.do({ do: 'give', cell: 'cuff', key: 'value', size: 'm', value: 30 });
  await settled();
  expect(since()).toEqual({ cuff: 1, half: 1, notebook: 1 });
  expect(workspace.results('half').number('m', 'half', 'value')).toBe(15);
  workspace.document.undo();
  await settled();
  expect(since()).toEqual({ cuff: 1, half: 1, notebook: 1 });
});

test('an editor that opens or closes runs what follows its own cell and no other', () => {
  const { workspace } = workspaceWith(small());
  const { selection } = workspace;
  const since = counting({
    hem: () => selection.editingIn('hem'),
    cuff: () => selection.editingIn('cuff'),
    half: () => selection.editingIn('half'),
  });
  selection.editing = { cell: 'hem', key: 'value', size: null, what: 'value' };
  expect(since()).toEqual({ hem: 1 });
  selection.editing = { cell: 'cuff', key: 'value', size: 's', what: 'value' };
  expect(since()).toEqual({ hem: 1, cuff: 1 });
  expect([selection.editingIn('hem'), selection.editingIn('cuff')?.size]).toEqual([null, 's']);
  selection.clear();
  expect(since()).toEqual({ cuff: 1 });
});

test('the focus runs what follows the cells that it relates to, now or before', () => {
  const { workspace } = workspaceWith(small());
  const { selection } = workspace;
  const since = counting(
    Object.fromEntries(['hem', 'cuff', 'half'].map((cell) => [cell, () => selection.dependencyRole(cell)])),
  );
  selection.position = { cell: 'cuff', key: 'value', size: 's' };
  selection.updateDependencyRoles();
  expect(since()).toEqual({ cuff: 1, half: 1 });
  expect(['hem', 'cuff', 'half'].map((cell) => selection.dependencyRole(cell))).toEqual([
    undefined,
    'here',
    'fed',
  ]);
  selection.position = { cell: 'hem', key: 'value', size: null };
  selection.updateDependencyRoles();
  expect(since()).toEqual({ hem: 1, cuff: 1, half: 1 });
});

test('a notebook that makes way for another takes focus, editor and complaint with it, and keeps its history in a preview', () => {
  const { workspace } = workspaceWith(small());
  const { document, selection, view } = workspace;
  workspace.do({ do: 'give', cell: 'hem', key: 'value', size: null, value: 6 });
  selection.position = { cell: 'hem', key: 'value', size: null };
  selection.editing = { cell: 'hem', key: 'value', size: null, what: 'value' };
  view.onlyChainOf = 'hem';
  workspace.complaint = 'That cannot be.';
  document.preview({ ...small(), title: 'Yesterday' });
  expect([selection.here, selection.editing, view.shownCells, workspace.complaint]).toEqual([
    null,
    null,
    null,
    null,
  ]);
  expect([workspace.notebook.title, document.previewedFrom?.title, document.undoes]).toEqual([
    'Yesterday',
    'Sleeve',
    undefined,
  ]);
  document.exitPreview();
  expect([workspace.notebook.title, document.previewedFrom, document.undoes]).toEqual([
    'Sleeve',
    null,
    'the change to Hem',
  ]);
});
