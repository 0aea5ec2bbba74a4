import type { Component } from 'svelte';
import type { Workspace } from '../workspace';
import { loadPictures } from '../features/pictures/lazy';
import { loadPattern } from '../features/pattern/lazy';
import { loadAdapt } from '../features/adapt/lazy';
import { loadWhatIfs } from '../features/what-if/lazy';
import { loadRange } from '../features/range/lazy';
import { loadSolve } from '../features/solve/lazy';
import { loadGiveOrTake } from '../features/accuracy/lazy';
import { loadClassSheet } from '../features/teach/lazy';

/** Something the page shows of the notebook instead of the grid. */
export interface View {
  readonly name: string;
  /** What it is called on the page. */
  readonly label: string;
  /** Fetches it when it is first wanted: the page opens without it. */
  load(): Promise<{ default: Component<{ workspace: Workspace }> }>;
}

/** The views, in the order they are offered. */
export const views: readonly View[] = [
  { name: 'pictures', label: 'Pictures', load: loadPictures },
  { name: 'pattern', label: 'Pattern', load: loadPattern },
  { name: 'adapt', label: 'Adapt', load: loadAdapt },
  { name: 'what-ifs', label: 'What-ifs', load: loadWhatIfs },
  { name: 'range', label: 'Range', load: loadRange },
  { name: 'work back', label: 'Work back', load: loadSolve },
  {
    name: 'give or take',
    label: 'Give or take',
    load: loadGiveOrTake,
  },
  { name: 'class sheet', label: 'Class sheet', load: loadClassSheet },
];

/** The view of a name; undefined for the grid. */
export function viewCalled(name: string): View | undefined {
  return views.find((view) => view.name === name);
}
