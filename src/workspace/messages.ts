import { allCells, type Cell, type Notebook, type Settings } from '../notebook';
import { writeFineLength } from '../format';
import type { Workspace } from './workspace.svelte';

/** A length in a sentence, as the arithmetic says it: in cm, with a space that does not break before its unit. */
const lengths = /(−?)(\d+(?:\.\d+)?)\u00a0cm/g;

/**
 * A sentence of the sheet as the notebook is read: lengths in its unit, and every number with its decimal mark. What
 * somebody has typed stays as it was typed: what stands in quotation marks, and the labels there are.
 *
 * @param labels asked for only where a sentence has a number that a label could hold
 * @example
 * inNotebook('The sleeve is 40.5\u00a0cm where the armhole is 45\u00a0cm.', { length: 'in', decimal: ',' … })
 * // 'The sleeve is 16 in where the armhole is 17¾ in.'
 * inNotebook('Hook 4.5 must be at least 5. What is put in comes to 2.5.', { decimal: ',' … }, () => ['Hook 4.5'])
 * // 'Hook 4.5 must be at least 5. What is put in comes to 2,5.'
 */
export function inNotebook(
  sentence: string,
  { length, decimal }: Settings,
  labels: () => readonly string[] = () => [],
): string {
  const told = sentence.replace(lengths, (_, sign: string, cm: string) => {
    const shown = writeFineLength(Number(cm), { unit: length, decimal });
    return `${sign}${shown}\u00a0${length}`;
  });
  if (decimal === '.' || !hasDecimals(told)) return told;
  const typed = labels().filter(hasDecimals).map(literally);
  // Where a label stands that begins with another, it is the longer one.
  const left = ['"[^"]*"', ...typed.toSorted((a, b) => b.length - a.length)].join('|');
  return told.replace(new RegExp(`${left}|(\\d)\\.(?=\\d)`, 'giu'), (found, digit?: string) =>
    digit === undefined ? found : digit + decimal,
  );
}

const hasDecimals = (text: string): boolean => /\d\.\d/.test(text);

const literally = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

function labelsIn(notebook: Notebook): string[] {
  return allCells(notebook).flatMap((cell) => [cell.label, ...stretchesOf(cell).map(({ label }) => label)]);
}

function stretchesOf(cell: Cell | undefined): readonly { readonly label: string }[] {
  return cell?.kind === 'piece' ? cell.stretches : cell?.kind === 'pickUp' ? cell.edge : [];
}

/**
 * A sentence that counts the stretches of a cell, with the labels they have on the leaf, where none of them has a number.
 *
 * @example 'Stretch 2: …' // 'Stretch 2 (Armhole to wrist): …'
 */
export function withStretches(sentence: string, cellOf: () => Cell | undefined): string {
  return sentence.replace(/\bstretch (\d+)\b(?! \()/gi, (counted: string, number: string) => {
    // Only who asks for the cell follows the notebook, and few sentences do.
    const cell = cellOf();
    const label = stretchesOf(cell)[Number(number) - 1]?.label;
    return label ? `${counted} (${label})` : counted;
  });
}

/** A sentence of the sheet as the notebook of a desk is read. */
export function messageOn(workspace: Workspace, sentence: string): string {
  return inNotebook(sentence, workspace.settings, () => labelsIn(workspace.notebook));
}

/** How a desk tells the sentences of its results. */
export function messagesOn(workspace: Workspace): (sentence: string, cell: string) => string {
  return (sentence, cell) => withStretches(messageOn(workspace, sentence), () => workspace.cell(cell));
}
