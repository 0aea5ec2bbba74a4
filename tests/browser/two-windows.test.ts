import { describe, expect, it } from 'vitest';
import { settled, type } from './workspace';
import { hand, kept, titlesInList, notice, ownProfile } from './kept';

const own = ownProfile();

describe('two windows on one notebook', () => {
  it('one writes and the other follows live, takes over when asked, and when the first is closed', async () => {
    const first = await own.open();
    await type(first, 'hand', 'value', '21');
    await kept(first);
    const second = await own.open();
    await notice(second, 'being edited in another window').waitFor();
    await settled(second);
    expect(await second.getByText(/ changed\.$/).count()).toBe(0);
    await type(first, 'hand', 'value', '22');
    await expect.poll(() => hand(second)).toBe('22.0');
    // What is typed in the window that follows changes nothing.
    await type(second, 'hand', 'value', '40');
    await second.getByText('Another window is editing this notebook').first().waitFor();
    await second.keyboard.press('Escape');
    expect(await hand(second)).toBe('22.0');

    await type(first, 'hand', 'value', '23');
    await second.getByRole('button', { name: 'Edit here instead' }).click();
    await notice(first, 'being edited in another window').waitFor();
    await notice(second, 'being edited in another window').waitFor({ state: 'detached' });
    await expect.poll(() => hand(second)).toBe('23.0');
    await type(second, 'hand', 'value', '24');
    await expect.poll(() => hand(first)).toBe('24.0');
    await kept(second);

    await second.close();
    await notice(first, 'being edited in another window').waitFor({ state: 'detached' });
    await type(first, 'hand', 'value', '25');
    await kept(first);
    await first.reload();
    await settled(first);
    await expect.poll(() => hand(first)).toBe('25.0');
  });

  it('a window that slept while its turn was taken overwrites nothing and loses nothing: its last edit was taken over', async () => {
    const first = await own.open();
    await type(first, 'hand', 'value', '21');
    await kept(first);
    const second = await own.open();
    await notice(second, 'being edited in another window').waitFor();
    // The first window sleeps before what it did last is kept: it is in the journal alone.
    await type(first, 'hand', 'value', '77');
    let wake = (): void => {};
    const woken = new Promise<void>((resolve) => (wake = resolve));
    await first.route('**/asleep', async (route) => {
      await woken;
      await route.fulfill({ body: '' });
    });
    // Its one thread waits for the answer, and does nothing meanwhile.
    const asleep = first.evaluate(() => {
      const request = new XMLHttpRequest();
      request.open('GET', './asleep', false);
      request.send();
    });
    await second.getByRole('button', { name: 'Edit here instead' }).click();
    await notice(second, 'being edited in another window').waitFor({ state: 'detached' });
    await expect.poll(() => hand(second)).toBe('77.0');
    await type(second, 'hand', 'value', '31');
    await kept(second);
    wake();
    await asleep;
    await notice(first, 'being edited in another window').waitFor();
    await expect.poll(() => hand(first)).toBe('31.0');
    // What was done here can still be undone once this window edits again.
    await first.getByRole('button', { name: 'Edit here instead' }).click();
    await notice(first, 'being edited in another window').waitFor({ state: 'detached' });
    await first.keyboard.press('ControlOrMeta+z');
    await expect.poll(() => hand(first)).toBe('77.0');
    await kept(first);
    await second.reload();
    await settled(second);
    expect(await titlesInList(second)).toEqual(['Saltmarsh cardigan']);
  });
});
