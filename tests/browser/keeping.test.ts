import { describe, expect, inject, it, onTestFinished } from 'vitest';
import { killedInABurst, opened } from './burst';
import { newProfile, removeProfile, startOn } from './profile';

describe('every edit is kept', () => {
  it('through the death of the browser in a burst of edits, twice: all that was made more than a second before', async () => {
    const at = { profile: newProfile(), address: inject('address') };
    let running = await startOn(at.profile);
    onTestFinished(async () => {
      await running.kill();
      removeProfile(at.profile);
    });
    await opened(running.page, at.address);
    for (const from of [100, 200]) {
      const { burst, running: next } = await killedInABurst(running, at, from, 25);
      running = next;
      expect(burst.due).toBeGreaterThan(from);
      expect(burst.held).toBeGreaterThanOrEqual(burst.due);
      expect(burst.held).toBeLessThanOrEqual(burst.made);
    }
  });
});
