import { clearValues, inputsOf, outputsOf } from '../../notebook';
import { drawnLines, lineAt, refsOf, type Block, type Corner, type DrawnLine } from './block';
import { copyOf, unitOf, type Copied } from './copying';
import { type Workspace, valueLine } from '../../workspace';

/** What was copied last from a grid, so that pasting it back loses no digits. */
let last: Copied | undefined;

/** The lines of the grid as they are drawn now. */
export function linesOn(workspace: Workspace): DrawnLine[] {
  return drawnLines(workspace.notebook, {
    isOpen: (cell) => workspace.view.isExpanded(cell.id),
    isDrawn: (cell, section) =>
      workspace.view.shownCells?.has(cell.id) ?? !workspace.view.folded.has(section.id),
  });
}

/** The block of one place: also of a value that is read in a sentence, and so is on no line. */
export function blockAt(workspace: Workspace, corner: Corner): Block | undefined {
  const { sizes } = workspace.notebook;
  const lines = linesOn(workspace);
  const drawn = lines[lineAt(lines, corner)] ?? inSentence(workspace, corner);
  const at = sizes.find((size) => size.id === corner.size);
  return drawn && { lines: [drawn], sizes: at ? [at] : sizes };
}

function inSentence(workspace: Workspace, { cell: id, key }: Corner): DrawnLine | undefined {
  const cell = workspace.cell(id);
  const part = cell && [...inputsOf(cell), ...outputsOf(cell)].find((candidate) => candidate.key === key);
  return part && { cell, line: valueLine(part) };
}

/** Puts a block on the clipboard: as tab-separated values, and as a table. */
export function copy(workspace: Workspace, block: Block, clipboard: DataTransfer): void {
  last = copyOf(workspace, block);
  clipboard.setData('text/plain', last.text);
  clipboard.setData('text/html', last.html);
  const count = refsOf(block).length;
  workspace.announcement = count === 1 ? 'Copied a value.' : `Copied ${count} values.`;
}

/** Copies a block and takes out the values that were given in it; what is worked out stays. */
export function cut(workspace: Workspace, block: Block, clipboard: DataTransfer): void {
  copy(workspace, block, clipboard);
  empty(workspace, block);
}

/** Takes the given values out of a block. */
export function empty(workspace: Workspace, block: Block): void {
  const { edit, count } = clearValues(workspace.notebook, refsOf(block));
  if (!edit) {
    workspace.announcement = 'Nothing here was given: what is worked out, and what a chart says, stays.';
    return;
  }
  const refused = workspace.do(edit);
  if (refused) workspace.complaint = refused;
  else workspace.announcement = count === 1 ? 'Emptied a value.' : `Emptied ${count} values.`;
}

/**
 * Pastes text onto the grid from a place on, across the sizes and down the lines; says what could not be taken. What
 * reads it is fetched for it.
 */
export async function paste(workspace: Workspace, corner: Corner, text: string): Promise<void> {
  const mine = last && last.text === text.replaceAll('\r\n', '\n') ? last : undefined;
  const { open } = workspace.document;
  const { planPaste } = await import('./pasting');
  if (!workspace.document.isStillOpen(open)) {
    workspace.complaint = `Nothing was pasted: ${open.title} is no longer open. Open it and paste again.`;
    return;
  }
  const lines = linesOn(workspace);
  const at = lineAt(lines, corner);
  const ownLine = inSentence(workspace, corner);
  const from = at >= 0 ? lines.slice(at) : ownLine ? [ownLine] : [];
  const plan = planPaste(text, {
    notebook: workspace.notebook,
    lines: from,
    size: corner.size,
    unitOf: (line) => unitOf(workspace, line),
    ...(mine ? { exact: (row: number, column: number) => mine.exact[row]?.[column] } : {}),
  });
  const refused = plan.edit && workspace.do(plan.edit);
  workspace.announcement = refused ?? plan.says;
  // What was left out is to be seen, too, and to stay until it has been read.
  workspace.complaint = refused ?? (plan.left > 0 ? plan.says : null);
}
