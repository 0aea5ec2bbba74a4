import type { Block } from './block';

/** Where a block lies on the drawing, in px. */
export interface LaidBlock {
  readonly block: Block;
  readonly x: number;
  readonly y: number;
}

/**
 * Lays blocks in rows no wider than the drawing, each row in its middle and the blocks of a row at its foot.
 *
 * @returns where each lies, in the order given, the number of rows, and the height of them all
 */
export function inRows(
  blocks: readonly Block[],
  width: number,
  gap: { readonly x: number; readonly y: number },
): { laid: LaidBlock[]; rows: number; height: number } {
  const rows: Block[][] = [];
  let room = -1;
  for (const block of blocks) {
    if (room < block.width + gap.x) {
      rows.push([]);
      room = width + gap.x;
    }
    rows.at(-1)!.push(block);
    room -= block.width + gap.x;
  }
  const laid: LaidBlock[] = [];
  let y = 0;
  for (const row of rows) {
    const height = Math.max(...row.map((block) => block.height));
    const taken = row.reduce((sum, block) => sum + block.width, 0) + gap.x * (row.length - 1);
    let x = Math.max(0, (width - taken) / 2);
    for (const block of row) {
      laid.push({ block, x, y: y + height - block.height });
      x += block.width + gap.x;
    }
    y += height + gap.y;
  }
  return { laid, rows: rows.length, height: Math.max(0, y - gap.y) };
}
