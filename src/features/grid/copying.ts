import type { Unit } from '../../formulas';
import { isShared, type Block, type DrawnLine } from './block';
import { type Workspace, numberOf, showNumber } from '../../workspace';
import type { Exact } from './pasting';

export interface Copied {
  /** Tab-separated values. */
  readonly text: string;
  readonly html: string;
  /** The numbers as they are stored, row by row. */
  readonly exact: readonly (readonly (Exact | undefined)[])[];
}

export function unitOf(workspace: Workspace, { cell, line }: DrawnLine): Unit {
  return line.unit === 'any' ? (workspace.results(cell.id).unit(cell.id, line.key) ?? {}) : line.unit;
}

/**
 * A block of the grid as other programs take it: numbers as they are shown, without units, a line to a row and a size
 * to a column. A value for every size stands in each column, unless it is all there is.
 */
export function copyOf(workspace: Workspace, block: Block): Copied {
  const alone = block.lines.length === 1 && isShared(block.lines[0]!);
  const sizes = alone ? block.sizes.slice(0, 1) : block.sizes;
  const cells = block.lines.map((drawn) => sizes.map((size) => copiedFrom(workspace, drawn, size.id)));
  const rows = cells.map((row) => row.map(({ text }) => text));
  return {
    text: rows.map((row) => row.map(quoted).join('\t')).join('\n'),
    html: `<table>${rows
      .map((row) => `<tr>${row.map((text) => `<td>${escaped(text)}</td>`).join('')}</tr>`)
      .join('')}</table>`,
    exact: cells.map((row) => row.map(({ exact }) => exact)),
  };
}

function copiedFrom(workspace: Workspace, drawn: DrawnLine, size: string): { text: string; exact?: Exact } {
  const { cell, line } = drawn;
  const results = workspace.results(cell.id);
  const unit = unitOf(workspace, drawn);
  const value = numberOf(workspace, cell.id, line, size);
  if (value !== undefined) {
    // Other programs read a number only where its minus is the hyphen of a keyboard.
    const text = showNumber(value, unit, workspace.settings, line.written).replace('−', '-');
    return { text, exact: { value, unit, written: line.written } };
  }
  const truth = results.truth(size, cell.id, line.key);
  if (truth !== undefined) return { text: truth ? 'yes' : 'no' };
  return { text: (unit === 'text' && results.text(size, cell.id, line.key)) || '' };
}

function quoted(text: string): string {
  return /^"|[\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
