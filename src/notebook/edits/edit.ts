import type {
  Cell,
  Change,
  ClassSheet,
  Entry,
  Notebook,
  Section,
  Settings,
  Size,
  WhatIf,
  Wording,
} from '../document';

/** One thing a person does to a notebook. */
export type Edit =
  /** Gives an input a value, for one size or (`size: null`) for all. */
  | { do: 'give'; cell: string; key: string; size: string | null; value: number | null }
  /** Puts a whole entry in an input: a formula, a place in a chart, a value for each size. */
  | { do: 'enter'; cell: string; key: string; entry: Entry }
  /** Puts a formula instead of an output's own; `null` gives its own back. */
  | { do: 'take over'; cell: string; key: string; formula: string | null }
  | { do: 'relabel'; cell: string; label: string }
  | { do: 'rename'; cell: string; name: string }
  /** Exchanges a cell for another state of itself: another rule, one more reading, a note's text. */
  | { do: 'change'; cell: Cell }
  | { do: 'add cell'; section: string; at: number; cell: Cell }
  | { do: 'remove cell'; cell: string }
  /** A cell after itself, under a free name and with an id of its own. */
  | { do: 'duplicate cell'; cell: string; id: string }
  /** Puts a cell before the one that is `at` in a section, counted with the cell itself taken out. */
  | { do: 'move cell'; cell: string; section: string; at: number }
  | { do: 'add section'; at: number; section: Section }
  | { do: 'remove section'; section: string }
  | { do: 'duplicate section'; section: string; id: string }
  | { do: 'move section'; section: string; at: number }
  | { do: 'relabel section'; section: string; label: string }
  | { do: 'add size'; at: number; size: Size }
  | { do: 'remove size'; size: string }
  | { do: 'relabel size'; size: string; label: string }
  | { do: 'move size'; size: string; at: number }
  /** Exchanges all sizes, as when a whole chart is taken; what was given for sizes that stay, stays. */
  | { do: 'take sizes'; sizes: readonly Size[] }
  | { do: 'add what-if'; whatIf: WhatIf }
  | { do: 'remove what-if'; whatIf: string }
  | { do: 'rename what-if'; whatIf: string; name: string }
  | { do: 'switch what-if'; whatIf: string; on: boolean }
  /** Puts a change in a what-if, instead of what it had for the same value; `take out` takes one out. */
  | { do: 'change what-if'; whatIf: string; change: Change }
  | { do: 'take out of what-if'; whatIf: string; change: Pick<Change, 'cell' | 'key' | 'size'> }
  /** Makes the changes of a what-if in the notebook; the what-if itself is then done with. */
  | { do: 'make what-if'; whatIf: string }
  | { do: 'set'; settings: Partial<Settings> }
  | { do: 'retitle'; title: string }
  /** Puts a sentence of the written pattern in the person's words; `null` gives the notebook's own back. */
  | { do: 'reword'; key: string; wording: Wording | null }
  /** Chooses what is on the class sheet, and in which order; `null` takes everything off it. */
  | { do: 'set class sheet'; sheet: ClassSheet | null }
  /** Several edits as one, all or none: a pasted block, say. `what` is what undo calls it. */
  | { do: 'several'; edits: readonly Edit[]; what: string };

export type Applied = { readonly notebook: Notebook } | { readonly refused: string };

export const mostSizes = 100;
export const mostCells = 10_000;
export const mostOnClassSheet = 200;
/** How many generations of cells a working on it goes back. */
export const furthestBack = 12;
export const mostWordings = 2000;
/** The most characters of a sentence in a person's words. */
export const longestWording = 2000;
/** What-ifs of a notebook, and those of them that can be on at once: more could not be read side by side. */
export const mostWhatIfs = 50;
export const mostWhatIfsOn = 4;
