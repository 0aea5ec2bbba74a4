import { MediaQuery } from 'svelte/reactivity';

/** What the page finds around it: the light it is read in, the room there is, and whether it is used by touch. */
class Surroundings {
  readonly #dark = new MediaQuery('(prefers-color-scheme: dark)', false);
  readonly #coarse = new MediaQuery('(pointer: coarse)', false);
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

  /** Whether fingers are what it is used with: nothing is said of keys then. */
  get byTouch(): boolean {
    return this.#coarse.current;
  }

  /** How an editor is opened where something stands that is not typed at once: the beginning of a hint. */
  get opening(): string {
    return this.byTouch ? 'Tap it twice' : 'Double click, or Enter,';
  }

  /** Whether the drawing has room beside the grid. */
  get roomy(): boolean {
    return this.#roomy;
  }
}

export const surroundings = new Surroundings();
