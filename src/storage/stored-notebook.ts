/**
 * Which edits of the journal a record holds, so that none is made twice and none is left out. A writer is one window for as
 * long as it writes one notebook; it numbers its edits from 1.
 */
export interface EditsHeld {
  /** Who wrote the record, and the number of that writer's last edit in it. */
  readonly by: string;
  readonly upTo: number;
  /** The same of writers before, whose edits were replayed. */
  readonly replayed?: Readonly<Record<string, number>>;
}

/** A notebook in the store, as the list shows it. */
export interface KeptNotebook {
  readonly id: string;
  readonly title: string;
  /** When it was first kept, and last written: milliseconds since 1970; 0 where that is not known. */
  readonly made: number;
  readonly changed: number;
  /** Goes up with every write. Who writes has to know the one before: see `Shelf.write`. */
  readonly revision: number;
  /** Goes up with every write of any notebook: the list is in this order, which no clock can upset. */
  readonly order?: number;
  readonly cells: number;
  readonly sizes: number;
  /** When it was deleted. It stays until a person takes it away for good. */
  readonly deleted?: number;
  readonly damaged?: Damage;
  readonly edits?: EditsHeld;
}

/**
 * What is damaged of a notebook in the store: its entry in the list (the text is there), its text (an earlier one is
 * there), or all of it.
 */
export type Damage = 'entry' | 'text' | 'all';

/** What a notebook was at a time before. */
export interface EarlierState {
  readonly notebook: string;
  /** When that was written. */
  readonly at: number;
  /** The order of the write it was; states from before this was recorded have none. */
  readonly order?: number;
  readonly cells: number;
  readonly sizes: number;
  /** Its text is of an earlier version of the file, as it was before this version first wrote it: it always stays. */
  readonly older?: true;
}

/** What is written of a notebook. `text` is the text of a file: what is kept is checked on opening as a file is. */
export interface Written {
  readonly title: string;
  readonly cells: number;
  readonly sizes: number;
  readonly text: string;
  readonly edits?: EditsHeld;
}

/** The largest number of milliseconds that is a date: ECMA-262, "Time Values and Time Range". */
export const latestTime = 8.64e15;

export const counted = (value: unknown): number | undefined =>
  typeof value === 'number' && Number.isSafeInteger(value) && value >= 0 ? value : undefined;
const timed = (value: unknown): number | undefined =>
  typeof value === 'number' && Math.abs(value) <= latestTime ? value : undefined;
export const fieldsOf = (record: unknown): Readonly<Record<string, unknown>> =>
  typeof record === 'object' && record !== null ? (record as Record<string, unknown>) : {};

/** Which edits a record says it holds; undefined where that is damaged: then none is known to be in it. */
function editsFrom(value: unknown): EditsHeld | undefined {
  const { by, upTo, replayed } = fieldsOf(value);
  const number = counted(upTo);
  if (typeof by !== 'string' || number === undefined) return undefined;
  const others = Object.entries(fieldsOf(replayed)).flatMap(([writer, last]) => {
    const to = counted(last);
    return to === undefined ? [] : [[writer, to] as const];
  });
  return { by, upTo: number, ...(others.length > 0 && { replayed: Object.fromEntries(others) }) };
}

/**
 * The entry of a notebook, made of what its record holds, which may be damaged: each field is what it should be, and
 * `damaged` says where it was not. One that is deleted by no proper time is not taken for deleted.
 *
 * @example keptFrom('a', undefined) // { id: 'a', title: 'Untitled', made: 0, …, damaged: 'entry' }
 */
export function keptFrom(id: string, record: unknown): KeptNotebook {
  const found = fieldsOf(record);
  const title = typeof found['title'] === 'string' ? found['title'] : undefined;
  const [made, changed] = [timed(found['made']), timed(found['changed'])];
  const [revision, cells, sizes] = [
    counted(found['revision']),
    counted(found['cells']),
    counted(found['sizes']),
  ];
  const [order, deleted] = [counted(found['order']), timed(found['deleted'])];
  const edits = editsFrom(found['edits']);
  const whole = ![title, made, changed, revision, cells, sizes].includes(undefined) && typeof id === 'string';
  return {
    id,
    title: title ?? 'Untitled',
    made: made ?? 0,
    changed: changed ?? 0,
    revision: revision ?? 0,
    cells: cells ?? 0,
    sizes: sizes ?? 0,
    ...(order !== undefined && { order }),
    ...(deleted !== undefined && { deleted }),
    ...(edits && { edits }),
    ...(!whole && { damaged: 'entry' as const }),
  };
}

/** The text in a record that may be damaged: one that was kept as data is text again. */
export function textFrom(record: unknown): string | undefined {
  if (typeof record === 'string' || record === undefined || record === null) return record ?? undefined;
  try {
    return JSON.stringify(record);
  } catch {
    return undefined;
  }
}

/** Notebooks in the order in which they were written, the last first. */
export function lastWrittenFirst(all: readonly KeptNotebook[]): KeptNotebook[] {
  const order = (kept: KeptNotebook): number => kept.order ?? -1;
  return [...all].sort((one, other) => order(other) - order(one) || other.changed - one.changed);
}
