import { area, isDimension, length, mass, sameUnit } from '../../formulas';
import { cellById, type Notebook } from '../../notebook';
import { roundedIn, targetOf } from '../../analysis/uncertainty';
import type { Measurable } from '../../workspace';

/** The results that are shown unless a person chooses others: lengths, areas, weights, and counts fitted to a repeat. */
export function usualResults(notebook: Notebook, refs: readonly Measurable[]): Measurable[] {
  return refs.filter((ref) => {
    if (!ref.first || !isDimension(ref.unit) || ref.written === 'metres') return false;
    const cell = cellById(notebook, ref.cell);
    if (!cell || cell.kind === 'swatch' || cell.kind === 'notions') return false;
    if ([length, area, mass].some((unit) => sameUnit(unit, ref.unit))) return true;
    return targetOf(cell, ref.key) !== undefined || roundedIn(cell) !== undefined;
  });
}
