import type { Amounts } from './amounts';

/** What a sentence or a row of a table says, as data: what it is about, and what it says of that. */
export interface Statement {
  /** The name of the reader that read it. */
  readonly name: string;
  /** What it says something of: the label of a yarn, of a fabric, of a join; empty where there is one such thing. */
  readonly of: string;
  readonly facts: Readonly<Record<string, Fact>>;
  readonly at: StatementRange;
}

/** A text as it stands, or numbers by size. */
export type Fact = string | Amounts;

/** Where it stands: the block of its part, and the row of a table. */
export interface StatementRange {
  readonly block: number;
  readonly row?: number;
}

/** What could not be read. */
export interface Unread {
  readonly text: string;
  readonly at: StatementRange;
}

/** A form of sentence. Its examples are read in tests. */
export interface SentenceReader {
  readonly name: string;
  readonly pattern: RegExp;
  readonly examples: readonly string[];
  read(found: Readonly<Record<string, string | undefined>>): {
    readonly of?: string;
    readonly facts?: Readonly<Record<string, Fact>>;
  };
}
