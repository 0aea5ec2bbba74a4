import type { Component } from 'svelte';
import type { Workspace } from '../workspace/workspace.svelte';

/** Something the page shows of the notebook in place of the leaf. */
export interface View {
  readonly name: string;
  /** What it is called on the page. */
  readonly label: string;
  /** Fetches it when it is first wanted: the page opens without it. */
  load(): Promise<{ default: Component<{ workspace: Workspace }> }>;
}

/** The views, in the order they are offered. */
export const views: readonly View[] = [
  { name: 'pictures', label: 'Pictures', load: () => import('../features/pictures/Pictures.svelte') },
  { name: 'pattern', label: 'Pattern', load: () => import('../features/pattern/Pattern.svelte') },
  { name: 'adapt', label: 'Adapt', load: () => import('../features/adapt/Adapt.svelte') },
  { name: 'what-ifs', label: 'What-ifs', load: () => import('../features/what-if/WhatIfs.svelte') },
  { name: 'range', label: 'Range', load: () => import('../features/range/Range.svelte') },
  { name: 'work back', label: 'Work back', load: () => import('../features/solve/Solve.svelte') },
  {
    name: 'give or take',
    label: 'Give or take',
    load: () => import('../features/accuracy/GiveOrTake.svelte'),
  },
  { name: 'class sheet', label: 'Class sheet', load: () => import('../features/teach/ClassSheet.svelte') },
];

/** The view of a name; undefined for the leaf. */
export function viewCalled(name: string): View | undefined {
  return views.find((view) => view.name === name);
}
