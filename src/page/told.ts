import { writeFineLength, type Cell, type Settings } from '../notebook';
import type { Desk } from './desk.svelte';

/** A length in a sentence, as the arithmetic says it: in cm, with a space that does not break before its unit. */
const lengths = /(−?)(\d+(?:\.\d+)?)\u00a0cm/g;

/**
 * A sentence of the sheet as the notebook is read: lengths in its unit, with its decimal mark.
 *
 * @example
 * inNotebook('The sleeve is 40.5\u00a0cm where the armhole is 45\u00a0cm.', { length: 'in', decimal: ',' … })
 * // 'The sleeve is 16 in where the armhole is 17¾ in.'
 */
export function inNotebook(sentence: string, { length, decimal }: Settings): string {
  return sentence.replace(lengths, (_, sign: string, cm: string) => {
    const shown = writeFineLength(Number(cm), { unit: length, decimal });
    return `${sign}${shown}\u00a0${length}`;
  });
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
    const stretches = cell?.kind === 'piece' ? cell.stretches : cell?.kind === 'pickUp' ? cell.edge : [];
    const label = stretches[Number(number) - 1]?.label;
    return label ? `${counted} (${label})` : counted;
  });
}

/** How a desk tells the sentences of its results. */
export function toldOn(desk: Desk): (sentence: string, cell: string) => string {
  return (sentence, cell) => withStretches(inNotebook(sentence, desk.settings), () => desk.cell(cell));
}
