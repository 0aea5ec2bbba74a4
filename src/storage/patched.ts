import type { Cell, Notebook, Section } from '../notebook';
import type { NotebookPatch } from './patch';

/**
 * The notebook after a patch; undefined where the patch does not fit this notebook or is damaged. Nothing of it is
 * checked but where it belongs: who reads patches from outside checks the notebook that comes of them as a file.
 */
export function patched(before: Notebook | null, patch: NotebookPatch): Notebook | undefined {
  const fields: Record<string, unknown> = { ...before };
  delete fields['sections'];
  for (const [key, value] of Object.entries(patch.set ?? {})) if (key !== 'sections') fields[key] = value;
  for (const key of patch.unset ?? []) delete fields[key];
  if (patch.wording) {
    const wording: Record<string, unknown> = { ...before?.wording };
    for (const [key, value] of Object.entries(patch.wording)) {
      if (value === null) delete wording[key];
      else wording[key] = value;
    }
    fields['wording'] = wording;
  }
  const sections = patchedSections(before?.sections ?? [], patch);
  return sections && ({ ...fields, sections } as unknown as Notebook);
}

function patchedSections(before: readonly Section[], patch: NotebookPatch): readonly Section[] | undefined {
  if (!patch.cells && !patch.sections) return before;
  const put = new Map((patch.cells ?? []).map((cell) => [cell.id, cell]));
  if (!patch.sections) {
    return before.map((section) => {
      if (!section.cells.some(({ id }) => put.has(id))) return section;
      return { ...section, cells: section.cells.map((cell) => put.get(cell.id) ?? cell) };
    });
  }
  const cells = new Map<string, Cell>();
  for (const section of before) for (const cell of section.cells) cells.set(cell.id, cell);
  for (const [id, cell] of put) cells.set(id, cell);
  const old = new Map(before.map((section) => [section.id, section]));
  const sections: Section[] = [];
  for (const { id, label, cells: list } of patch.sections) {
    const section = old.get(id);
    const was = section?.cells.map((cell) => cell.id) ?? [];
    if (!section && (label === undefined || !list)) return undefined;
    if (list && !(fits(list.start, was) && fits(list.end, was))) return undefined;
    const ids = list ? [...was.slice(0, list.start), ...list.ids, ...was.slice(was.length - list.end)] : was;
    const own = ids.map((cell) => cells.get(cell));
    if (own.includes(undefined)) return undefined;
    sections.push({ ...(section ?? { id }), label: label ?? section!.label, cells: own as Cell[] });
  }
  return sections;
}

const fits = (count: number, list: readonly unknown[]): boolean =>
  Number.isInteger(count) && count >= 0 && count <= list.length;
