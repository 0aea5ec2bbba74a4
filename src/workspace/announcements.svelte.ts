import { untrack } from 'svelte';

/** What the last action led to, in a sentence, for a screen reader and the foot of the page. */
export class Announcements {
  #newest = $state('');

  get newest(): string {
    return this.#newest;
  }

  /** The same sentence once more is read out once more: to a screen reader, only a text that differs is new. */
  announce(sentence: string): void {
    const again = sentence !== '' && sentence === untrack(() => this.#newest);
    this.#newest = again ? `${sentence}\u00a0` : sentence;
  }
}
