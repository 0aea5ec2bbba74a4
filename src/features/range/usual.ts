import { downstream, type Input, type Notebook, type Settings } from '../../notebook';
import { type Unit, isDimension, length, rows, sameUnit, stitches } from '../../formulas';
import type { Choosable } from '../../workspace';
import { shownFactor } from './shown-factor';

/** A range to begin with, in stored units: round steps on both sides of where the input stands. */
export function usualRange(
  value: number,
  input: Pick<Input, 'constraint' | 'written'>,
  unit: Unit,
  settings: Settings,
): { start: number; end: number; step: number } {
  const factor = shownFactor(unit, settings, input.written);
  const shown = value * factor;
  const step = input.constraint?.whole
    ? 1
    : isDimension(unit) && sameUnit(unit, length)
      ? settings.length === 'in'
        ? 0.25
        : 0.5
      : roundStep(Math.max(Math.abs(shown), 1) / 40);
  const around = Math.round(shown / step) * step;
  const { above, least } = input.constraint ?? {};
  const lowest =
    above !== undefined ? above * factor + step : least !== undefined ? least * factor : -Infinity;
  return {
    start: Math.max(around - 20 * step, lowest) / factor,
    end: (around + 20 * step) / factor,
    step: step / factor,
  };
}

/** The nearest of 1, 2 and 5 times a power of ten. */
function roundStep(wish: number): number {
  const power = 10 ** Math.floor(Math.log10(wish));
  return [1, 2, 5, 10].map((times) => times * power).find((step) => step >= wish * 0.999)!;
}

/**
 * The results a range may begin with, the likeliest group first: the repeat fits in the cells that the input feeds; other
 * counts there, since those are worked; the other results there; and those of its own cell, such as the gauge of a swatch.
 */
export function likelyResults(
  notebook: Notebook,
  input: Choosable,
  results: readonly Choosable[],
  unitOf: (choice: Choosable) => Unit,
): (readonly Choosable[])[] {
  const reached = new Set(downstream(notebook, input.cell));
  const groups: [Choosable[], Choosable[], Choosable[], Choosable[]] = [[], [], [], []];
  for (const choice of results) {
    if (reached.has(choice.cell)) {
      const isCount = [stitches, rows].some((unit) => sameUnit(unit, unitOf(choice)));
      groups[isFit(notebook, choice) ? 0 : isCount ? 1 : 2].push(choice);
    } else if (choice.cell === input.cell) groups[3].push(choice);
  }
  return groups.filter((group) => group.length > 0);
}

/** Whether a choice is the count of a repeat fit. */
export function isFit(notebook: Notebook, { cell, key }: Choosable): boolean {
  return (
    key === 'count' &&
    notebook.sections.some(({ cells }) => cells.some(({ id, kind }) => id === cell && kind === 'fit'))
  );
}
