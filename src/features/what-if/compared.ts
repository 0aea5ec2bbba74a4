import { isDimension, type Unit } from '../../formulas';
import type { Settings, Size } from '../../notebook';
import type { Results } from '../../engine';
import { type Choosable, showNumber, symbolFor } from '../../workspace';

/** A result in one size: as it is, and where it stands under a what-if, by how much it differs. */
export interface ComparedValue {
  readonly text: string;
  /** "+4", "−1.5 "; "was yes" of what is no number; empty where nothing differs. */
  readonly difference: string;
  readonly problem?: string;
}

export interface ComparedLine {
  /** Of the what-if; empty on the line of the notebook itself. */
  readonly letter: string;
  readonly name: string;
  /** Whether it differs from the notebook in any size. */
  readonly differs: boolean;
  readonly values: readonly ComparedValue[];
}

/** A result of the notebook with the same under each what-if. */
export interface ComparedResult {
  readonly choice: Choosable;
  readonly symbol: string;
  /** Texts, such as how a shaping is spaced, are long: they stand under each other and not in columns. */
  readonly long: boolean;
  readonly lines: readonly ComparedLine[];
}

export interface ComparedWhatIf {
  readonly letter: string;
  readonly name: string;
  /** Undefined until it has been worked. */
  readonly results: Results | undefined;
}

/** Results of the notebook and of what-ifs beside it, size by size, with the differences in signed numbers. */
export function compared(
  choices: readonly Choosable[],
  notebook: Results,
  whatIfs: readonly ComparedWhatIf[],
  sizes: readonly Size[],
  settings: Settings,
): ComparedResult[] {
  return choices.map((choice) => {
    const { cell, key, part } = choice;
    const unit: Unit = notebook.unit(cell, key) ?? (part.unit === 'any' ? {} : part.unit);
    const shown = (value: number): string => showNumber(value, unit, settings, part.written);
    const line = ({ letter, name, results }: ComparedWhatIf): ComparedLine => {
      const values = sizes.map(({ id }): ComparedValue => {
        if (!results) return { text: '…', difference: '' };
        const before = inWords(notebook, id, choice, shown);
        const after = inWords(results, id, choice, shown);
        const error = results.error(id, cell, key)?.message;
        return {
          text: after,
          difference: letter ? differenceOf(notebook, results, id, choice, shown, before, after) : '',
          ...(error ? { problem: error } : {}),
        };
      });
      return { letter, name, differs: values.some(({ difference }) => difference !== ''), values };
    };
    return {
      choice,
      symbol: symbolFor(unit, settings, part.written),
      long: unit === 'text',
      lines: [line({ letter: '', name: 'the notebook', results: notebook }), ...whatIfs.map(line)],
    };
  });
}

/** Of results that were compared, those that are not the same under some what-if, with the lines that differ. */
export function differing(results: readonly ComparedResult[]): ComparedResult[] {
  return results.flatMap((result) => {
    const lines = result.lines.filter(({ letter, differs }) => letter === '' || differs);
    return lines.length > 1 ? [{ ...result, lines }] : [];
  });
}

function inWords(
  results: Results,
  size: string,
  { cell, key }: Choosable,
  shown: (value: number) => string,
): string {
  const number = results.number(size, cell, key);
  if (number !== undefined) return shown(number);
  const truth = results.truth(size, cell, key);
  if (truth !== undefined) return truth ? 'yes' : 'no';
  return results.text(size, cell, key) ?? '–';
}

function differenceOf(
  notebook: Results,
  whatIf: Results,
  size: string,
  { cell, key }: Choosable,
  shown: (value: number) => string,
  before: string,
  after: string,
): string {
  const [was, is] = [notebook.number(size, cell, key), whatIf.number(size, cell, key)];
  if (was !== undefined && is !== undefined) {
    const by = is - was;
    // What arithmetic in another order leaves behind is no difference.
    if (Math.abs(by) <= 1e-9 * Math.max(1, Math.abs(was))) return '';
    return `${by < 0 ? '−' : '+'}${shown(Math.abs(by))}`;
  }
  return before === after ? '' : `was ${before}`;
}

/** Whether a place holds something that can be compared: a number, a truth or a text. */
export function isComparable({ cell, key, part }: Choosable, results: Results): boolean {
  const unit = results.unit(cell, key) ?? (part.unit === 'any' ? undefined : part.unit);
  return unit !== undefined && (isDimension(unit) || unit === 'truth' || unit === 'text');
}
