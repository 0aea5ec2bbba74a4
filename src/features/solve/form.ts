import {
  allCells,
  cellById,
  inputsOf,
  upstream,
  type CheckCell,
  type Input,
  type Notebook,
  type Settings,
} from '../../notebook';
import { length, mass, isDimension, sameUnit, type Unit } from '../../formulas';
import type { CellRef } from '../../engine';
import type { Looked } from '../../analysis/solve';
import { type Measurable, typedNumber } from '../../workspace';

/** The checks of a notebook, which hold or do not. */
export function checksOf(notebook: Notebook): CheckCell[] {
  return allCells(notebook).filter((cell): cell is CheckCell => cell.kind === 'check');
}

/** The input at a place; undefined where there is none. */
export function inputAt(notebook: Notebook, ref: CellRef | null): Input | undefined {
  const cell = ref ? cellById(notebook, ref.cell) : undefined;
  return cell && inputsOf(cell).find(({ key }) => key === ref!.key);
}

/** The cells that what is looked at hangs on, its own among them. */
export function hangsOn(notebook: Notebook, looked: Looked): ReadonlySet<string> {
  const cells = 'result' in looked ? [looked.result.cell] : looked.checks.map(({ id }) => id);
  return new Set(cells.flatMap((id) => [id, ...upstream(notebook, id)]));
}

/** A number as a person typed it for a place, as it is stored. */
export function typedAt(
  typed: string,
  { label, unit, written }: Pick<Measurable, 'label' | 'unit' | 'written'>,
  settings: Settings,
): { value: number } | { problem: string } {
  const input: Input = {
    key: '',
    name: '',
    label,
    unit,
    entry: { value: null },
    ...(written ? { written } : {}),
  };
  const read = typedNumber(typed, input, unit, settings);
  if ('problem' in read) return read;
  return read.value === null ? { problem: 'Type a number.' } : { value: read.value };
}

/** How far off a result may be and still be what was wished, as it is stored, unless a person says otherwise. */
export function usualWithin(unit: Unit, settings: Settings, whole: boolean): number {
  if (whole || !isDimension(unit)) return 0;
  if (sameUnit(unit, length)) return settings.length === 'in' ? 2.54 / 8 : 0.1;
  if (sameUnit(unit, mass)) return 1;
  return 'stitch' in unit || 'row' in unit ? 0.5 : 0.01;
}
