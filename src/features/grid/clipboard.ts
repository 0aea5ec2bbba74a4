import { emptying } from '../../notebook/clear-values';
import { drawnLines, lineAt, placesOf, type Block, type Corner, type DrawnLine } from './block';
import { copyOf, unitOf, type Copied } from './copying';
import type { Desk } from '../../workspace/workspace.svelte';
import { valueLine } from '../../workspace/lines';
import { inputsOf, outputsOf } from '../../notebook';

/** What was copied last from a leaf, so that pasting it back loses no digits. */
let last: Copied | undefined;

/** The lines of the leaf as they are drawn now. */
export function linesOn(desk: Desk): DrawnLine[] {
  return drawnLines(desk.notebook, {
    isOpen: (cell) => desk.isOpen(cell.id),
    isDrawn: (cell, section) => desk.shownCells?.has(cell.id) ?? !desk.folded.has(section.id),
  });
}

/** The block of one place: also of a value that is read in a sentence, and so is on no line. */
export function blockAt(desk: Desk, place: Corner): Block | undefined {
  const { sizes } = desk.notebook;
  const lines = linesOn(desk);
  const drawn = lines[lineAt(lines, place)] ?? inSentence(desk, place);
  const at = sizes.find((size) => size.id === place.size);
  return drawn && { lines: [drawn], sizes: at ? [at] : sizes };
}

function inSentence(desk: Desk, { cell: id, key }: Corner): DrawnLine | undefined {
  const cell = desk.cell(id);
  const part = cell && [...inputsOf(cell), ...outputsOf(cell)].find((candidate) => candidate.key === key);
  return part && { cell, line: valueLine(part) };
}

/** Puts a block on the clipboard: as tab-separated values, and as a table. */
export function copy(desk: Desk, block: Block, clipboard: DataTransfer): void {
  last = copyOf(desk, block);
  clipboard.setData('text/plain', last.text);
  clipboard.setData('text/html', last.html);
  const count = placesOf(block).length;
  desk.said = count === 1 ? 'Copied a value.' : `Copied ${count} values.`;
}

/** Copies a block and takes out the values that were given in it; what is worked out stays. */
export function cut(desk: Desk, block: Block, clipboard: DataTransfer): void {
  copy(desk, block, clipboard);
  empty(desk, block);
}

/** Takes the given values out of a block. */
export function empty(desk: Desk, block: Block): void {
  const { edit, count } = emptying(desk.notebook, placesOf(block));
  if (!edit) {
    desk.said = 'Nothing here was given: what is worked out, and what a chart says, stays.';
    return;
  }
  const refused = desk.do(edit);
  if (refused) desk.complaint = refused;
  else desk.said = count === 1 ? 'Emptied a value.' : `Emptied ${count} values.`;
}

/**
 * Pastes text onto the leaf from a place on, across the sizes and down the lines; says what could not be taken. What
 * reads it is fetched for it.
 */
export async function paste(desk: Desk, place: Corner, text: string): Promise<void> {
  const mine = last && last.text === text.replaceAll('\r\n', '\n') ? last : undefined;
  const { open } = desk;
  const { planPaste } = await import('./pasting');
  if (!desk.isStillOpen(open)) {
    desk.complaint = `Nothing was pasted: ${open.title} is no longer open. Open it and paste again.`;
    return;
  }
  const lines = linesOn(desk);
  const at = lineAt(lines, place);
  const told = inSentence(desk, place);
  const from = at >= 0 ? lines.slice(at) : told ? [told] : [];
  const plan = planPaste(text, {
    notebook: desk.notebook,
    lines: from,
    size: place.size,
    unitOf: (line) => unitOf(desk, line),
    ...(mine ? { exact: (row: number, column: number) => mine.exact[row]?.[column] } : {}),
  });
  const refused = plan.edit && desk.do(plan.edit);
  desk.said = refused ?? plan.says;
  // What was left out is to be seen, too, and to stay until it has been read.
  desk.complaint = refused ?? (plan.left > 0 ? plan.says : null);
}
