import { inputsOf, namesOf, outputsOf, type Input, type Notebook, type Output } from '../notebook';
import type { Place } from '../sheet';

/** A value of the notebook that can be chosen from a list: an input or an output, as other cells call it. */
export interface Choosable extends Place {
  /** "Sleeve swatch: stitches counted". */
  readonly label: string;
  readonly section: string;
  readonly part: Input | Output;
  readonly line: 'input' | 'output';
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

/** Choices under the labels of their sections, as a list of groups shows them. */
export function bySection(choices: readonly Choosable[]): [section: string, choices: Choosable[]][] {
  const groups = new Map<string, Choosable[]>();
  for (const choice of choices) groups.set(choice.section, [...(groups.get(choice.section) ?? []), choice]);
  return [...groups];
}

/** A place as the value of an option of a list. */
export function placeKey({ cell, key }: Place): string {
  return `${cell} ${key}`;
}
