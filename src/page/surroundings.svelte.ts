import { MediaQuery } from 'svelte/reactivity';

/** What the page finds around it: the light it is read in, and the room there is. */
class Surroundings {
  readonly #dark = new MediaQuery('(prefers-color-scheme: dark)', false);
  readonly #roomy = new MediaQuery('(min-width: 72rem)', true);
  readonly #printed = new MediaQuery('print', false);

  get theme(): 'light' | 'dark' {
    return this.#dark.current && !this.#printed.current ? 'dark' : 'light';
  }

  /** Whether the drawing has room beside the leaf. */
  get roomy(): boolean {
    return this.#roomy.current;
  }
}

export const surroundings = new Surroundings();
