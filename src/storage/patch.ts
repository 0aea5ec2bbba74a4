import type { Cell, Notebook, Section } from '../notebook';

type Fields = Omit<Notebook, 'sections'>;
type Wordings = NonNullable<Notebook['wording']>;

/** A section after an edit: its label where that changed, and its list of cells where that did. */
export interface SectionPatch {
  readonly id: string;
  readonly label?: string;
  /** Ids of its cells: `start` of the old list's beginning stay, then come `ids`, then `end` of the old list's end. */
  readonly cells?: { readonly start: number; readonly ids: readonly string[]; readonly end: number };
}

/**
 * What leads from one state of a notebook to the next, as plain data. Cells stand in it whole, so that it gives the same
 * state again whatever made that state: an edit, undo, an earlier copy brought back, or a later version of the code.
 */
export interface NotebookPatch {
  /** The notebook's own fields that have another value. */
  readonly set?: Partial<Fields>;
  /** The notebook's own fields that are gone. */
  readonly unset?: readonly string[];
  /** Sentences of the written pattern: those put in another way, and those that went back (null). */
  readonly wording?: Readonly<Record<string, Wordings[string] | null>>;
  /** Cells that are new, or not the same as before. */
  readonly cells?: readonly Cell[];
  /** All sections in order, where the list of them or one of them is not the same as before. */
  readonly sections?: readonly SectionPatch[];
}

/**
 * The patch from one state to the next; `null` as the state before stands for nothing at all, so that the patch holds the
 * whole notebook. Compares by identity, as `changesBetween` does: an edit shares what it left alone. Of a list of n cells
 * in which one changed, n comparisons are made and one cell is written.
 *
 * @example patchBetween(before, after) // { cells: [the one cell that an edit changed] }
 */
export function patchBetween(before: Notebook | null, after: Notebook): NotebookPatch {
  return { ...fieldsBetween(before, after), ...sectionsBetween(before?.sections ?? [], after.sections) };
}

/** Whether a patch changes nothing. */
export function isEmptyPatch(patch: NotebookPatch): boolean {
  return Object.keys(patch).length === 0;
}

function fieldsBetween(before: Notebook | null, after: Notebook): NotebookPatch {
  const old = before as unknown as Record<string, unknown> | null;
  const set: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(after)) {
    if (key !== 'sections' && value !== undefined && value !== old?.[key]) set[key] = value;
  }
  const unset = Object.keys(old ?? {}).filter(
    (key) => old?.[key] !== undefined && (after as unknown as Record<string, unknown>)[key] === undefined,
  );
  let wording: Record<string, Wordings[string] | null> | undefined;
  // Up to two thousand sentences: those that stayed are not written again.
  if (before?.wording && after.wording && 'wording' in set) {
    delete set['wording'];
    wording = wordingBetween(before.wording, after.wording);
  }
  return {
    ...(Object.keys(set).length > 0 ? { set: set as Partial<Fields> } : {}),
    ...(unset.length > 0 ? { unset } : {}),
    ...(wording && Object.keys(wording).length > 0 ? { wording } : {}),
  };
}

function wordingBetween(before: Wordings, after: Wordings): Record<string, Wordings[string] | null> {
  const patch: Record<string, Wordings[string] | null> = {};
  for (const [key, value] of Object.entries(after)) if (before[key] !== value) patch[key] = value;
  for (const key of Object.keys(before)) if (!Object.hasOwn(after, key)) patch[key] = null;
  return patch;
}

function sectionsBetween(before: readonly Section[], after: readonly Section[]): NotebookPatch {
  if (before === after) return {};
  const old = new Map(before.map((section) => [section.id, section]));
  const touched = after.filter((section) => old.get(section.id) !== section);
  const sameList = before.length === after.length && before.every(({ id }, at) => id === after[at]!.id);
  // A cell that came from another section is no new one: all that changed are looked through, where there are several.
  const alone = sameList && touched.length === 1;
  const known = alone
    ? undefined
    : new Set(before.filter((section) => !after.includes(section)).flatMap(({ cells }) => cells));
  let isArray = !sameList;
  const cells: Cell[] = [];
  const sections = new Map<string, SectionPatch>();
  for (const section of touched) {
    const was = old.get(section.id);
    cells.push(...newIn(was?.cells ?? [], section.cells, known));
    const patch = sectionBetween(was, section);
    isArray ||= patch.label !== undefined || patch.cells !== undefined;
    sections.set(section.id, patch);
  }
  return {
    ...(cells.length > 0 ? { cells } : {}),
    ...(isArray ? { sections: after.map(({ id }) => sections.get(id) ?? { id }) } : {}),
  };
}

/** The cells of a list that are not known, nor in the list before. Those before and after the change need no looking up. */
function newIn(before: readonly Cell[], after: readonly Cell[], known?: ReadonlySet<Cell>): readonly Cell[] {
  let start = 0;
  while (start < after.length && before[start] === after[start]) start++;
  let end = 0;
  const most = Math.min(before.length, after.length) - start;
  while (end < most && before.at(-1 - end) === after.at(-1 - end)) end++;
  const there = known ?? new Set(before.slice(start, before.length - end));
  return after.slice(start, after.length - end).filter((cell) => !there.has(cell));
}

function sectionBetween(before: Section | undefined, after: Section): SectionPatch {
  const [old, now] = [before?.cells ?? [], after.cells];
  let start = 0;
  while (start < Math.min(old.length, now.length) && old[start]!.id === now[start]!.id) start++;
  let end = 0;
  while (end < Math.min(old.length, now.length) - start && old.at(-1 - end)!.id === now.at(-1 - end)!.id)
    end++;
  const sameIds = start === old.length && start === now.length;
  const ids = now.slice(start, now.length - end).map(({ id }) => id);
  return {
    id: after.id,
    ...(before?.label === after.label ? {} : { label: after.label }),
    ...(sameIds && before ? {} : { cells: { start, ids, end } }),
  };
}
