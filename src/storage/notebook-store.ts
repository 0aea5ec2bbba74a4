import type { EarlierState, KeptNotebook, Written } from './stored-notebook';

/** Where notebooks stand: on the device, or in memory where the browser keeps nothing. */
export interface NotebookStore {
  /** Every notebook, also those that are deleted or damaged; the one written last comes first. */
  list(): Promise<KeptNotebook[]>;
  read(id: string): Promise<{ readonly kept: KeptNotebook; readonly text: string } | undefined>;
  /** What is left of a notebook's text, however damaged the rest is: the text itself, else its newest earlier one. */
  textLeft(id: string): Promise<string | undefined>;
  /**
   * Writes a notebook over the revision that the writer knows (0: it is new). Where another revision stands there,
   * somebody else has written it: nothing is written and `null` comes back. What stood there becomes an earlier state
   * where `remember` says so. The revision that was written comes back.
   */
  write(
    id: string,
    written: Written,
    over: number,
    options: { readonly now: number; readonly remember: boolean },
  ): Promise<number | null>;
  /** Deletes a notebook so that it can be brought back; `null` brings it back. */
  delete(id: string, at: number | null): Promise<void>;
  /** Takes a notebook and its earlier states away for good. */
  forget(id: string): Promise<void>;
  /** The earlier states of a notebook that have a text, in the order they were written, the newest first. */
  states(id: string): Promise<EarlierState[]>;
  stateAt(id: string, at: number): Promise<string | undefined>;
  /** Takes earlier states away. */
  thin(id: string, times: readonly number[]): Promise<void>;
  /** The notebook that was open last. */
  last(): Promise<string | undefined>;
  setLast(id: string): Promise<void>;
}
