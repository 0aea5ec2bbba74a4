import { MediaQuery } from 'svelte/reactivity';

/** What the page finds around it: the light it is read in, and the room there is. */
class Surroundings {
  readonly #dark = new MediaQuery('(prefers-color-scheme: dark)', false);
  readonly #printed = new MediaQuery('print', false);
  #roomy = $state(true);

  constructor() {
    const wide = matchMedia('(min-width: 72rem)');
    this.#roomy = wide.matches;
    // Paper is narrow too, but what is on the screen is printed as it is laid out there.
    wide.addEventListener('change', () => {
      if (!matchMedia('print').matches) this.#roomy = wide.matches;
    });
  }

  get theme(): 'light' | 'dark' {
    return this.#dark.current && !this.#printed.current ? 'dark' : 'light';
  }

  /** Whether the drawing has room beside the leaf. */
  get roomy(): boolean {
    return this.#roomy;
  }
}

export const surroundings = new Surroundings();
