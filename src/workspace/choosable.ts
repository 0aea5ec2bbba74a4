import {
  inputsOf,
  namesOf,
  outputsOf,
  type Input,
  type Notebook,
  type Output,
  type WrittenAs,
} from '../notebook';
import { isDimension, type Unit } from '../formulas';
import type { CellRef } from '../engine';
import type { Workspace } from './workspace.svelte';

/** A value of the notebook that can be chosen from a list: an input or an output, as other cells call it. */
export interface Choosable extends CellRef {
  /** "Sleeve swatch: stitches counted". */
  readonly label: string;
  readonly section: string;
  readonly part: Input | Output;
  readonly line: 'input' | 'output';
  /** Among what its cell shows before it is opened. */
  readonly first: boolean;
}

/** One whose unit is known, so that what it comes to can be told. */
export interface Measurable extends Choosable {
  readonly unit: Unit;
  readonly written?: WrittenAs;
}

/** Every input and output of a notebook that is shown somewhere, in its order. */
export function choosableIn(notebook: Notebook): Choosable[] {
  return notebook.sections.flatMap((section) =>
    section.cells.flatMap((cell) => {
      const labels = new Map(namesOf(cell).map(({ key, label }) => [key, label]));
      const of = (part: Input | Output, line: Choosable['line']): Choosable => ({
        cell: cell.id,
        key: part.key,
        label: labels.get(part.key) ?? part.label,
        section: section.label,
        part,
        line,
        first: 'entry' in part ? cell.kind === 'formula' || cell.kind === 'check' : part.shown === 'line',
      });
      return [
        ...inputsOf(cell).map((input) => of(input, 'input')),
        ...outputsOf(cell)
          .filter((output) => output.shown !== 'none')
          .map((output) => of(output, 'output')),
      ];
    }),
  );
}

/** Whether a value is worked out by a formula, rather than given. */
export function isResult({ line, part }: Choosable): boolean {
  return line === 'output' || ('entry' in part && 'formula' in part.entry);
}

/** Whether a value is given, rather than worked out. */
export function isGiven({ part }: Choosable): boolean {
  return 'entry' in part && !('formula' in part.entry);
}

/** Of some choices, those that are a number or a truth, with its unit. */
export function measurable(workspace: Workspace, choices: readonly Choosable[]): Measurable[] {
  return choices.flatMap((choice) => {
    const { cell, key, part } = choice;
    const unit = part.unit === 'any' ? workspace.results(cell).unit(cell, key) : part.unit;
    if (unit === undefined || !(isDimension(unit) || unit === 'truth')) return [];
    return [{ ...choice, unit, ...(part.written ? { written: part.written } : {}) }];
  });
}

/** Choices under the labels of their sections, as a list of groups shows them. */
export function bySection<One extends Choosable>(
  choices: readonly One[],
): [section: string, choices: One[]][] {
  const groups = new Map<string, One[]>();
  for (const choice of choices) groups.set(choice.section, [...(groups.get(choice.section) ?? []), choice]);
  return [...groups];
}

/** The choice that a list tells by its key; undefined where it is none of them. */
export function chosenIn<One extends CellRef>(choices: readonly One[], key: string | null): One | undefined {
  return choices.find((choice) => cellRefKey(choice) === key);
}

/** A place as the value of an option of a list. */
export function cellRefKey({ cell, key }: CellRef): string {
  return `${cell} ${key}`;
}
