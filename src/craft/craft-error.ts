/**
 * What cannot be worked, said so that the person can do something about it.
 *
 * `message` is a sentence (or two) in the trade's words: what is wrong and what would work. `code` is a short
 * name for the same thing, for code that has to tell one refusal from another without reading the sentence.
 *
 * @example
 * try { finished(90, { length: -95 }) }
 * catch (error) { error.code } // 'nothing-left'
 */
export class CraftError extends Error {
  override readonly name = 'CraftError' as const;
  readonly code: string;

  constructor(code: string, message: string) {
    super(message);
    this.code = code;
  }
}
