/** A pattern as it is printed: nothing but its text, and which of it is a heading, a line or a table. */
export interface PrintedPattern {
  readonly title: string;
  /** The labels of its sizes, in the order of its size lists. */
  readonly sizes: readonly string[];
  readonly parts: readonly PrintedPart[];
}

export interface PrintedPart {
  readonly kind: PrintedKind;
  readonly heading: string;
  readonly blocks: readonly PrintedBlock[];
}

export type PrintedKind =
  'materials' | 'gauge' | 'measurements' | 'abbreviations' | 'notes' | 'piece' | 'making up' | 'cautions';

/** A line is followed as it is worked; a paragraph is for reading. */
export interface PrintedText {
  readonly kind: 'heading' | 'line' | 'paragraph';
  readonly text: string;
}

export interface PrintedTable {
  readonly kind: 'table';
  readonly caption: string;
  readonly head: readonly string[];
  /** Each begins with its label. */
  readonly rows: readonly (readonly string[])[];
}

export type PrintedBlock = PrintedText | PrintedTable;
