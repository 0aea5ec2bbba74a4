import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { unwrap } from 'idb';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { deviceStore, writtenOf, type NotebookStore } from '../../../src/storage';
import { openDatabase } from '../../../src/storage/database';
import { Ahead } from '../../../src/features/notebooks/ahead';
import { Keeper } from '../../../src/features/notebooks/keeper.svelte';
import Notebooks from '../../../src/features/notebooks/Notebooks.svelte';
import * as saving from '../../../src/ui/saving';
import { damages } from '../../storage/damages';
import { workspaceWith } from '../../workspace/local-workspace';
import { small } from '../../workspace/small-notebook';

const text = (title: string) => writtenOf({ ...small(), title });
const day = 86_400_000;

let store: NotebookStore;
beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  store = await deviceStore();
  await store.write('a', text('Before'), 0, { now: Date.now() - day, remember: false });
  await store.write('a', text('Mitten'), 1, { now: Date.now(), remember: true });
  await store.write('b', text('Scarf'), 0, { now: Date.now(), remember: false });
});

async function titlesInList() {
  const { workspace } = workspaceWith(small());
  const opened = { notebook: workspace.notebook };
  const keeper = Keeper.of(workspace, opened, new Ahead(workspace, opened));
  const { component } = render(Notebooks, { keeper });
  const saved = vi.spyOn(saving, 'saveText').mockReset();
  await (component as unknown as { open(): Promise<void> }).open();
  await screen.findByText('Scarf');
  const user = userEvent.setup();
  const press = async (name: string | RegExp): Promise<void> =>
    user.click(await screen.findByRole('button', { name }));
  return { workspace, keeper, press, saved };
}

describe('the list of notebooks', () => {
  it.each(damages.map((one) => [one.what, one] as const))(
    'shows each, and gives out the text of one damaged by %s',
    async (_what, { left, reported: isReported, damage }) => {
      const database = await openDatabase();
      const write = database.transaction(['notebooks', 'texts', 'states', 'stateTexts', 'page'], 'readwrite');
      const own = unwrap(write);
      damage((name) => own.objectStore(name), 'a');
      await write.done;
      database.close();

      const { workspace, press, saved } = await titlesInList();
      const mitten = screen.getByText('Mitten').closest('li')!;
      expect(mitten.textContent!.includes('Damaged')).toBe(isReported);
      expect(mitten.textContent).not.toMatch(/NaN|undefined|Invalid/);
      if (left === 'opens') {
        await press(/^Mitten/);
        await vi.waitFor(() => expect(document.querySelector('dialog')!.open).toBe(false));
        expect(workspace.notebook.title).toBe('Mitten');
        return;
      }
      if (left === 'text') {
        await press(/^Mitten/);
        await screen.findByRole('alert');
      }
      await press('Save the text of Mitten as a file');
      await vi.waitFor(() => expect(saved).toHaveBeenCalled());
      expect(saved.mock.calls[0]![0]).toBe(await store.textLeft('a'));
      expect(saved.mock.calls[0]![1]).toMatch(/damaged\.notebook\.json$/);
    },
  );

  it('keeps deleted notebooks until they are erased, however long ago the clock says they were deleted', async () => {
    await store.delete('a', Date.now() - 4000 * day);
    const { press } = await titlesInList();
    const gone = screen.getByText('Deleted (1)').closest('details')!;
    expect(within(gone).getByText('Mitten')).toBeDefined();
    expect((await store.read('a'))?.text).toBe(text('Mitten').text);
    await press('Erase Mitten');
    await screen.findByText('Erased Mitten.');
    expect(await store.read('a')).toBeUndefined();
  });

  it('erases all that are deleted only when a person says so twice', async () => {
    await store.delete('a', Date.now());
    await store.write('c', text('Hood'), 0, { now: Date.now(), remember: false });
    await store.delete('c', Date.now());
    const { press } = await titlesInList();
    await press('Erase all…');
    expect(screen.getByText(/cannot be undone/).textContent).toMatch(/Erase 2 notebooks/);
    await press('Cancel');
    expect(await store.list()).toHaveLength(3);
    await press('Erase all…');
    await press('Erase');
    await screen.findByText('Erased 2 notebooks.');
    expect((await store.list()).map(({ id }) => id)).toEqual(['b']);
  });
});
