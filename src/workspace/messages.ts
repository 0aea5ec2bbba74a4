import type { Message } from '../craft';
import { formatMessage } from '../format';
import { stretchLabel } from '../notebook';
import { summaryOf } from './summary';
import type { Workspace } from './workspace.svelte';

/** Has a workspace word what its engine answers: it opens without the words. */
export function wordAnswers(workspace: Workspace): void {
  workspace.allResults.messageFor = messagesOn(workspace);
  workspace.calculation.summaryOf = summaryOf;
}

/**
 * How the messages of a workspace's cells are worded: as its notebook is read, stretches with their labels. The cell is
 * asked for only where a message names a stretch: whoever asks for it follows it.
 */
export function messagesOn(workspace: Workspace): (message: Message, cell: string) => string {
  return (message, cell) =>
    formatMessage(message, workspace.settings, (stretch) => stretchLabel(workspace.cell(cell), stretch));
}
