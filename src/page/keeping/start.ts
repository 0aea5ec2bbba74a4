import type { Desk } from '../desk.svelte';
import Kept from './Kept.svelte';
import { Keeper } from './keeper.svelte';
import Notices from './Notices.svelte';
import type { Opening } from './opening';

/** What keeps the notebook, and what of it stands on the page. Fetched once the notebook can be read. */
export interface Started {
  readonly keeper: Keeper;
  readonly Kept: typeof Kept;
  readonly Notices: typeof Notices;
}

export async function start(desk: Desk, opened: Opening): Promise<Started> {
  return { keeper: await Keeper.of(desk, opened), Kept, Notices };
}
