import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { killedInABurst, opened, type Burst } from '../browser/burst';
import { answered } from '../browser/hostile-files';
import { newProfile, removeProfile, startOn, type Running } from '../browser/profile';
import { usualSettings, writeFile, type Notebook } from '../../src/notebook';

/** A small notebook, so that edits follow one another fast. */
const notebook: Notebook = {
  title: 'Burst',
  settings: usualSettings,
  sizes: [{ id: 'one', label: 'One size' }],
  sections: [
    {
      id: 'section',
      label: 'Measures',
      cells: [
        { kind: 'measure', id: 'hand', label: 'Hand', name: 'hand', unit: 'number', entry: { value: 1 } },
        { kind: 'formula', id: 'twice', label: 'Twice', name: 'twice', formula: 'hand * 2' },
      ],
    },
  ],
};

const edits = 500;
const times = 20;
const profile = newProfile();
const bursts: Burst[] = [];
let running: Running;

beforeAll(async () => {
  running = await startOn(profile);
  const address = inject('address');
  await opened(running.page, address);
  const buffer = Buffer.from(writeFile(notebook));
  await running.page.setInputFiles('input[type=file]', {
    name: 'burst.json',
    mimeType: 'text/plain',
    buffer,
  });
  expect(await answered(running.page, 'burst.json')).toBe(true);
  await running.page.locator('[data-standing="kept"]').waitFor();
});
afterAll(async () => {
  await running.kill();
  removeProfile(profile);
  const lost = bursts.map(({ made, held }) => made - held);
  console.log(
    `${bursts.length} kills in ${edits} edits each: ${bursts.filter(({ due, held }) => held < due).length} lost an edit older than a second; of the younger ones at most ${Math.max(...lost)} were lost.`,
  );
});

it.each(Array.from({ length: times }, (_one, at) => at + 1))(
  'kill %i in a burst of 500 edits: every edit made more than a second before is there',
  async (kill) => {
    const at = { profile, address: inject('address') };
    const { burst, running: next } = await killedInABurst(running, at, kill * 1000, edits);
    running = next;
    bursts.push(burst);
    expect(burst.due).toBeGreaterThan(kill * 1000);
    expect(burst.held).toBeGreaterThanOrEqual(burst.due);
    expect(burst.held).toBeLessThanOrEqual(burst.made);
  },
);
