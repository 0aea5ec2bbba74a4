import type { Cell, Notebook, Section, Size } from '../../notebook';
import { linesOf, type ValueLine } from '../../workspace';

/** A line of the grid with a value or a result for each size. */
export interface DrawnLine {
  readonly cell: Cell;
  readonly line: ValueLine;
}

/** Lines one below the other, and sizes side by side. */
export interface Block {
  readonly lines: readonly DrawnLine[];
  readonly sizes: readonly Size[];
}

/** A corner of a block. `size` is null where one place stands for every size. */
export interface Corner {
  readonly cell: string;
  readonly key: string;
  readonly size: string | null;
}

/** The value lines of the grid, in the order in which they are drawn. */
export function drawnLines(
  notebook: Notebook,
  shown: { isOpen(cell: Cell): boolean; isDrawn(cell: Cell, section: Section): boolean },
): DrawnLine[] {
  return notebook.sections.flatMap((section) =>
    section.cells
      .filter((cell) => shown.isDrawn(cell, section))
      .flatMap((cell) =>
        linesOf(cell, shown.isOpen(cell)).flatMap((line) => (line.line === 'words' ? [] : [{ cell, line }])),
      ),
  );
}

export function lineAt(lines: readonly DrawnLine[], { cell, key }: { cell: string; key: string }): number {
  return lines.findIndex((drawn) => drawn.cell.id === cell && drawn.line.key === key);
}

/** The block between two corners; undefined where one of them is on no value line. A place for every size is as wide as all. */
export function blockBetween(
  notebook: Notebook,
  lines: readonly DrawnLine[],
  one: Corner,
  other: Corner,
): Block | undefined {
  const rows = [lineAt(lines, one), lineAt(lines, other)].sort((a, b) => a - b) as [number, number];
  if (rows[0] < 0) return undefined;
  const { sizes } = notebook;
  const at = [one, other].map(({ size }) => sizes.findIndex(({ id }) => id === size));
  const across = one.size === null || other.size === null || at.includes(-1);
  return {
    lines: lines.slice(rows[0], rows[1] + 1),
    sizes: across ? sizes : sizes.slice(Math.min(...at), Math.max(...at) + 1),
  };
}

/** Whether a line shows one value for every size, in one place. */
export function isShared({ line }: DrawnLine): boolean {
  return line.input !== undefined && 'value' in line.input.entry;
}

/** The places of a block: one for each size on each line, one where a line has one for every size. */
export function refsOf(block: Block): Corner[] {
  return block.lines.flatMap((drawn): Corner[] => {
    const ref = { cell: drawn.cell.id, key: drawn.line.key };
    return isShared(drawn)
      ? [{ ...ref, size: null }]
      : block.sizes.map((size) => ({ ...ref, size: size.id }));
  });
}
