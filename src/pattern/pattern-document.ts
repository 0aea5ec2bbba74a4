/**
 * A written pattern as data: parts with a heading, made of blocks. Nothing in it is markup: every text is text, and
 * `plainText`, `markdown` and `html` see to what each format has to escape.
 */
export interface PatternDocument {
  readonly title: string;
  readonly craft: 'crochet' | 'knitting';
  /** Whose terms it is written in. */
  readonly terms: 'US' | 'UK';
  /** The sizes it is written for, in the order of its size lists. */
  readonly sizes: readonly { readonly id: string; readonly label: string }[];
  /** What the designer has to know and the maker does not read: sizes and values left out, wordings that no longer fit. */
  readonly notes: readonly PatternNote[];
  /** Labels of the pieces and sizes of the notebook that are not written, since they cannot be worked. */
  readonly leftOut: LeftOut;
  readonly parts: readonly PatternPart[];
}

export interface LeftOut {
  readonly pieces: readonly string[];
  readonly sizes: readonly string[];
}

export interface PatternNote {
  readonly text: string;
  /** The key of the sentence it is about, or the cell. */
  readonly about?: { readonly key: string } | { readonly cell: string };
}

export interface PatternPart {
  readonly key: string;
  readonly heading: string;
  readonly kind: PatternPartKind;
  /** The cell of a piece. */
  readonly cell?: string;
  readonly blocks: readonly PatternBlock[];
}

export type PatternPartKind =
  'materials' | 'gauge' | 'measurements' | 'abbreviations' | 'notes' | 'piece' | 'making up' | 'cautions';

export type PatternBlock = Sentence | PatternHeading | PatternList | PatternTable | PictureSlot;

/** The label of a stretch, above its lines. */
export interface PatternHeading {
  readonly kind: 'heading';
  readonly key: string;
  readonly text: string;
}

/**
 * A sentence whose numbers stay live. `template` is what a person edits: the words, with `{slots}` for the numbers.
 * A 'line' is an instruction, a 'paragraph' is for reading, a 'caution' is set apart.
 */
export interface Sentence {
  readonly kind: 'paragraph' | 'line' | 'caution';
  /** Stable as long as the sentence is about the same thing: a person's wording is kept under it. */
  readonly key: string;
  /** What is printed. */
  readonly text: string;
  readonly template: string;
  /** What stands in each slot, as printed. */
  readonly slots: Readonly<Record<string, string>>;
  /** The notebook's own template, where the person has put another in its place. */
  readonly own?: string;
}

export interface PatternList {
  readonly kind: 'list';
  readonly key: string;
  readonly items: readonly Sentence[];
}

export interface PatternTable {
  readonly kind: 'table';
  readonly key: string;
  readonly caption: string;
  readonly head: readonly string[];
  /** Each begins with its label. */
  readonly rows: readonly (readonly string[])[];
  /** Its cells are words to read, and not numbers under one another. */
  readonly words?: true;
}

/** Where a picture goes; whoever prints the document has the picture. */
export interface PictureSlot {
  readonly kind: 'picture slot';
  readonly key: string;
  readonly picture: 'schematic';
  readonly caption: string;
}
