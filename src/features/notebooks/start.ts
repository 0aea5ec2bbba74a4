import type { Workspace } from '../../workspace';
import type { Ahead } from './ahead';
import SaveStatus from './SaveStatus.svelte';
import { Keeper } from './keeper.svelte';
import Notices from './Notices.svelte';
import type { Opening } from './opening';
import { loadOffline } from '../../storage/lazy';

/** What keeps the notebook, and what of it stands on the page. Fetched once the notebook can be read. */
export interface Started {
  readonly keeper: Keeper;
  readonly SaveStatus: typeof SaveStatus;
  readonly Notices: typeof Notices;
}

export function start(workspace: Workspace, opened: Opening, ahead: Ahead): Started {
  const keeper = Keeper.of(workspace, opened, ahead);
  if (import.meta.env.PROD) whenIdle(workspace, () => void storePage(keeper));
  return { keeper, SaveStatus, Notices };
}

/** Once all is worked for the first time: storing the page takes nothing from that. */
function whenIdle(workspace: Workspace, then: () => void): void {
  if (workspace.calculation.worked) then();
  else setTimeout(() => whenIdle(workspace, then), 500);
}

async function storePage(keeper: Keeper): Promise<void> {
  const version = document.querySelector<HTMLScriptElement>('script[type="module"][src]')?.src ?? '';
  const { workOffline } = await loadOffline();
  await workOffline('./offline-worker.js', version, {
    newerIsReady: () => (keeper.newerIsReady = true),
    isNewer: () => keeper.announce('This is a newer version of the page than the one you used last.'),
  });
}
