import { describe, expect, it } from 'vitest';
import { settled, type } from './desk';
import { hand, kept, listed, notice, title, ownProfile } from './kept';

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

  it('a window that slept while its turn was taken overwrites nothing: its work becomes a notebook of its own', async () => {
    const first = await own.open();
    await type(first, 'hand', 'value', '21');
    await kept(first);
    const second = await own.open();
    await notice(second, 'being edited in another window').waitFor();
    // The first window sleeps before what it did last is kept.
    await type(first, 'hand', 'value', '77');
    const asleep = first.evaluate(() => {
      const until = Date.now() + 4000;
      while (Date.now() < until);
    });
    await second.getByRole('button', { name: 'Edit here instead' }).click();
    await notice(second, 'being edited in another window').waitFor({ state: 'detached' });
    await type(second, 'hand', 'value', '31');
    await kept(second);
    await asleep;
    await notice(first, 'now a notebook of its own').waitFor();
    expect([await title(first), await hand(first)]).toEqual(['Saltmarsh cardigan (other window)', '77.0']);
    await second.reload();
    await settled(second);
    expect((await listed(second)).sort()).toEqual([
      'Saltmarsh cardigan',
      'Saltmarsh cardigan (other window)',
    ]);
    await second
      .getByRole('dialog')
      .getByRole('button', { name: /^Saltmarsh cardigan(?! \()/ })
      .click();
    await expect.poll(() => hand(second)).toBe('31.0');
  });
});
