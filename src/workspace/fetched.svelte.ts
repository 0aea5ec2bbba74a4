import { fetched } from './fetching';

/**
 * A part of the program that the page opens without. Whoever reads `part` gets undefined until it has come, and is drawn
 * again then. Where it does not come, the next reader tries again.
 *
 * @example
 * const asked = new FetchedPart(() => import('../notebook/measure-questions'));
 * asked.part?.questionsAbout(cell, sizes, settings)
 */
export class FetchedPart<Part> {
  readonly #load: () => Promise<Part>;
  #part: Part | undefined = $state.raw();
  #loading = false;

  constructor(load: () => Promise<Part>) {
    this.#load = load;
  }

  get part(): Part | undefined {
    if (this.#part === undefined && !this.#loading) void this.#fetch();
    return this.#part;
  }

  async #fetch(): Promise<void> {
    this.#loading = true;
    try {
      this.#part = await fetched(this.#load);
    } catch {
      this.#loading = false;
    }
  }
}
