import { flushSync } from 'svelte';
import { expect, it, vi } from 'vitest';
import { FetchedPart } from '../../src/workspace/fetched.svelte';

/** What a reader that is drawn again with each change sees, one after the other. */
function seenBy(read: () => unknown): { seen: unknown[]; end: () => void } {
  const seen: unknown[] = [];
  const end = $effect.root(() => {
    $effect(() => void seen.push(read()));
  });
  flushSync();
  return { seen, end };
}

it('is fetched by its first reader alone, and once for all', async () => {
  const load = vi.fn(async () => 'the part');
  const fetched = new FetchedPart(load);
  expect(load).not.toHaveBeenCalled();
  const [one, other] = [seenBy(() => fetched.part), seenBy(() => fetched.part)];
  await vi.waitFor(() => expect(fetched.part).toBe('the part'));
  flushSync();
  expect([one.seen, other.seen]).toEqual([
    [undefined, 'the part'],
    [undefined, 'the part'],
  ]);
  expect(load).toHaveBeenCalledTimes(1);
  one.end();
  other.end();
});

it('is fetched again by the next reader where it did not come', async () => {
  const load = vi.fn<() => Promise<string>>().mockRejectedValueOnce(new Error('No network'));
  load.mockResolvedValue('the part');
  const fetched = new FetchedPart(load);
  expect(fetched.part).toBeUndefined();
  await vi.waitFor(() => expect(fetched.part).toBe('the part'));
  expect(load).toHaveBeenCalledTimes(2);
});
