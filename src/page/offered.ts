import {
  inputsOf,
  isDimension,
  outputsOf,
  type Cell,
  type Input,
  type Output,
  type Unit,
  type WrittenAs,
} from '../notebook';
import type { Place } from '../sheet';
import type { Desk } from './desk.svelte';

/** A place of the notebook that can be chosen from a list. */
export interface Offered extends Place {
  readonly label: string;
  readonly unit: Unit;
  readonly written?: WrittenAs;
  /** Among what the cell shows before it is opened. */
  readonly first: boolean;
}

export interface OfferedSection {
  readonly id: string;
  readonly label: string;
  readonly places: readonly Offered[];
}

/** "Back stitches: off by", or the cell's label alone where it has but the one. */
function calledIn(cell: Cell, part: Input | Output): string {
  return part.label === cell.label ? cell.label : `${cell.label}: ${part.label.toLowerCase()}`;
}

/** Everything the notebook works out that is a number, or a truth, section by section. */
export function offeredResults(desk: Desk): OfferedSection[] {
  return bySection(desk, (cell) => {
    const worked = inputsOf(cell).filter(({ entry }) => 'formula' in entry);
    return [...worked, ...outputsOf(cell).filter((output) => output.shown !== 'none')].flatMap((part) => {
      const found = offered(desk, cell, part);
      return found && (isDimension(found.unit) || found.unit === 'truth') ? [found] : [];
    });
  });
}

/** Every value of the notebook that is given and not worked, section by section. */
export function offeredInputs(desk: Desk): OfferedSection[] {
  return bySection(desk, (cell) =>
    inputsOf(cell).flatMap((input) => {
      if ('formula' in input.entry) return [];
      const found = offered(desk, cell, input);
      return found && isDimension(found.unit) ? [found] : [];
    }),
  );
}

function bySection(desk: Desk, places: (cell: Cell) => Offered[]): OfferedSection[] {
  return desk.notebook.sections.flatMap(({ id, label, cells }) => {
    const found = cells.flatMap(places);
    return found.length > 0 ? [{ id, label, places: found }] : [];
  });
}

function offered(desk: Desk, cell: Cell, part: Input | Output): Offered | undefined {
  const unit = part.unit === 'any' ? desk.results(cell.id).unit(cell.id, part.key) : part.unit;
  if (unit === undefined) return undefined;
  const isInput = 'entry' in part;
  return {
    cell: cell.id,
    key: part.key,
    label: calledIn(cell, part),
    unit,
    ...(part.written ? { written: part.written } : {}),
    first: isInput ? cell.kind === 'formula' || cell.kind === 'check' : part.shown === 'line',
  };
}

/** A place among those offered; undefined where it is not. */
export function findOffered(sections: readonly OfferedSection[], place: Place | null): Offered | undefined {
  if (!place) return undefined;
  for (const { places } of sections) {
    const found = places.find(({ cell, key }) => cell === place.cell && key === place.key);
    if (found) return found;
  }
  return undefined;
}

/** How a place is named where only a text can stand, as in the value of an option. */
export function placeText({ cell, key }: Place): string {
  return JSON.stringify([cell, key]);
}

export function placeFrom(text: string): Place | null {
  try {
    const [cell, key] = JSON.parse(text) as [string, string];
    return { cell, key };
  } catch {
    return null;
  }
}
