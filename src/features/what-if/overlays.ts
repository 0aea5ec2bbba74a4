import type { Overlay } from '../../pictures';
import { type Workspace, workedPlan } from '../../workspace';
import { onIn, workedWhatIfs } from './worked.svelte';

/** Goes up with every result of a what-if, and with what-ifs switched on and off; costs nothing where none is on. */
export function whatIfsVersion(workspace: Workspace): string {
  const on = onIn(workspace.notebook.whatIfs);
  return on.length === 0
    ? ''
    : `${workedWhatIfs(workspace).version} ${on.map(({ whatIf }) => whatIf.id).join(' ')}`;
}

/**
 * A piece under each of the what-ifs that are on, to be drawn over it; those whose results have not come yet, or that
 * leave the piece as it is, are left out of the sizes. A component that reads it follows the what-ifs.
 */
export function whatIfOverlays(workspace: Workspace, piece: string): Overlay[] {
  const on = onIn(workspace.notebook.whatIfs);
  if (on.length === 0) return [];
  const worked = workedWhatIfs(workspace);
  void worked.version;
  return on.map(({ whatIf }): Overlay => {
    const results = worked.of(whatIf.id);
    const sizes = workspace.sizes.flatMap(({ id, label }) => {
      const text = results?.text(id, piece, 'piece');
      const asItIs = text === workspace.allResults.text(id, piece, 'piece');
      return text === undefined || asItIs ? [] : [{ id, label, ...workedPlan(text) }];
    });
    return { id: whatIf.id, label: whatIf.name, kind: 'what-if', sizes };
  });
}
