import equal from 'fast-deep-equal';
import { allCells, type Notebook } from '../notebook';

/**
 * A notebook that was read again, with every part that is as it was taken from the one before: so only what differs is
 * worked and drawn again.
 */
export function shareStructure(before: Notebook, after: Notebook): Notebook {
  const cells = new Map(allCells(before).map((cell) => [cell.id, cell]));
  const sizes = new Map(before.sizes.map((size) => [size.id, size]));
  const sections = new Map(before.sections.map((section) => [section.id, section]));
  return {
    ...after,
    settings: same(before.settings, after.settings),
    sizes: sameList(
      before.sizes,
      after.sizes.map((size) => same(sizes.get(size.id), size)),
    ),
    sections: sameList(
      before.sections,
      after.sections.map((section) => {
        const old = sections.get(section.id);
        const own = section.cells.map((cell) => same(cells.get(cell.id), cell));
        const shared = { ...section, cells: old ? sameList(old.cells, own) : own };
        return old && old.label === shared.label && old.cells === shared.cells ? old : shared;
      }),
    ),
  };
}

function same<Part>(before: Part | undefined, after: Part): Part {
  return before !== undefined && equal(before, after) ? before : after;
}

function sameList<Part>(before: readonly Part[], after: readonly Part[]): readonly Part[] {
  return before.length === after.length && before.every((part, at) => part === after[at]) ? before : after;
}
