import { plainMessage, type Message, type Params } from './message';

/**
 * What cannot be worked, said so that the person can do something about it.
 *
 * `pattern` with its `params` is a sentence (or two) in the trade's words: what is wrong and what would work; see
 * `Message`. `message` is that sentence with lengths in cm. `code` is a short name for the same thing, for code that has
 * to tell one refusal from another without reading the sentence.
 *
 * @example
 * try { finished(90, { length: -95 }) }
 * catch (error) { error.code } // 'nothing-left'
 */
export class CraftError extends Error implements Message {
  override readonly name = 'CraftError' as const;
  readonly code: string;
  readonly pattern: string;
  readonly params: Params;

  constructor(code: string, pattern: string, params: Params = {}) {
    super();
    this.code = code;
    this.pattern = pattern;
    this.params = params;
  }

  /** Put in words only where it is read: a thousand cells that cannot be worked throw a thousand of these. */
  override get message(): string {
    return plainMessage(this);
  }
}
