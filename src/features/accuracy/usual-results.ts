import { area, isDimension, length, mass, sameUnit } from '../../formulas';
import { cellById, type Notebook } from '../../notebook';
import { roundedIn, targetOf } from '../../analysis/uncertainty';
import type { Measurable } from '../../workspace';

/** The results that are shown unless a person chooses others: lengths, areas, weights, and counts fitted to a repeat. */
export function usualResults(notebook: Notebook, places: readonly Measurable[]): Measurable[] {
  return places.filter((place) => {
    if (!place.first || !isDimension(place.unit) || place.written === 'metres') return false;
    const cell = cellById(notebook, place.cell);
    if (!cell || cell.kind === 'swatch' || cell.kind === 'notions') return false;
    if ([length, area, mass].some((unit) => sameUnit(unit, place.unit))) return true;
    return targetOf(cell, place.key) !== undefined || roundedIn(cell) !== undefined;
  });
}
