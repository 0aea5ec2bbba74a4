import type { Component } from 'svelte';
import type { Desk } from './desk.svelte';

/** Something the page shows of the notebook in place of the leaf. */
export interface View {
  readonly name: string;
  /** What it is called on the page. */
  readonly label: string;
  /** Fetches it when it is first wanted: the page opens without it. */
  load(): Promise<{ default: Component<{ desk: Desk }> }>;
}

/** The views, in the order they are offered. */
export const views: readonly View[] = [
  {
    name: 'adapt',
    label: 'Adapt',
    load: () => import('./adapt/Adapt.svelte'),
  },
];

/** The view of a name; undefined for the leaf. */
export function viewCalled(name: string): View | undefined {
  return views.find((view) => view.name === name);
}
