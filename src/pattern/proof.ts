import { compareStatements, type ReadPart } from './compare-statements';
import type { PatternBlock, PatternDocument, PatternPart, Sentence } from './pattern-document';
import { readPart, verifyPiece, type PrintedBlock, type PrintedPart } from './verify';
import type { PatternSource } from './source';

/** Whether a pattern recounts to its rows and says what the notebook says, and where not. */
export type Proof = (
  { readonly proven: true } | { readonly proven: false; readonly where: readonly Unproven[] }
) & {
  /** What nothing can be said of, though the rest may be proven: absent where there is nothing of the kind. */
  readonly notProven?: readonly NotProven[];
};

export interface Unproven {
  /** The cell of the piece; undefined where it is no piece. */
  readonly cell?: string;
  /** The heading of the part: a piece, or "Materials"; the title where the pattern as a whole is meant. */
  readonly piece: string;
  /** Undefined where it is the same in every size. */
  readonly size?: string;
  /** The key of the sentence; undefined where the rows as a whole differ. */
  readonly key?: string;
  /** The line as printed. */
  readonly line?: string;
  readonly problem: string;
}

/** A sentence or a row of a table that is neither right nor wrong by what is known of it. */
export interface NotProven {
  readonly part: string;
  readonly text: string;
  readonly key?: string;
  /** Whether it is in a person's own words. */
  readonly reworded: boolean;
}

/**
 * Reads a pattern again in every size, by a reader that knows nothing but the text, and compares with the rows worked
 * from the notebook and with what else the notebook and its results say.
 */
export function prove(document: PatternDocument, source: PatternSource): Proof {
  return proverOf(source)(document);
}

/** The same for several texts of one notebook. */
export function proverOf(source: PatternSource): (document: PatternDocument) => Proof {
  const compare = compareStatements(source);
  return (document) => {
    const labels = document.sizes.map(({ label }) => label);
    const parts = document.parts.map((part) => printedPart(part));
    const printed = { title: document.title, sizes: labels, parts: parts.map(({ part }) => part) };
    const own = (part: number, block: number): boolean => parts[part]!.sentences[block]?.own !== undefined;
    const { wrong, unknown } = compare(
      { printed, parts: document.parts.map((part, at) => readAgain(part, parts[at]!.part, labels)) },
      own,
    );
    const where = wrong.map(({ part, block, size, problem }): Unproven => {
      const cell = part === undefined ? undefined : document.parts[part]!.cell;
      const sentence = part === undefined || block === undefined ? undefined : parts[part]!.sentences[block];
      return {
        ...(cell === undefined ? {} : { cell }),
        piece: part === undefined ? document.title : document.parts[part]!.heading,
        ...(size === undefined ? {} : { size: labels[size] ?? '' }),
        ...(sentence ? { key: sentence.key, line: sentence.text } : {}),
        problem,
      };
    });
    const notProven = unknown.map(({ part, block, text }): NotProven => {
      const sentence = parts[part]!.sentences[block];
      return {
        part: document.parts[part]!.heading,
        text,
        ...(sentence ? { key: sentence.key } : {}),
        reworded: own(part, block),
      };
    });
    return {
      ...(where.length === 0 ? { proven: true } : { proven: false, where }),
      ...(notProven.length > 0 ? { notProven } : {}),
    };
  };
}

/** A part as it is printed, and the sentence of each of its blocks. */
interface Printed {
  readonly part: PrintedPart;
  readonly sentences: readonly (Sentence | undefined)[];
}

const printedParts = new WeakMap<PatternPart, Printed>();

function printedPart(part: PatternPart): Printed {
  let printed = printedParts.get(part);
  if (!printed) {
    const blocks = part.blocks.flatMap(blocksOf);
    printed = {
      part: { kind: part.kind, heading: part.heading, blocks: blocks.map(([block]) => block) },
      sentences: blocks.map(([, sentence]) => sentence),
    };
    printedParts.set(part, printed);
  }
  return printed;
}

function blocksOf(block: PatternBlock): (readonly [PrintedBlock, Sentence | undefined])[] {
  switch (block.kind) {
    case 'heading':
      return [[{ kind: 'heading', text: block.text }, undefined]];
    case 'list':
      return block.items.flatMap(blocksOf);
    case 'table': {
      const { caption, head, rows } = block;
      return [[{ kind: 'table', caption, head, rows }, undefined]];
    }
    case 'picture slot':
      return [];
    case 'line':
      return [[{ kind: 'line', text: block.text }, block]];
    default:
      return [[{ kind: 'paragraph', text: block.text }, block]];
  }
}

const readParts = new WeakMap<PatternPart, { readonly labels: string; readonly read: ReadPart }>();

/** What a part says. It follows from its text alone, so a part that is the same is not read again. */
function readAgain(part: PatternPart, printed: PrintedPart, sizes: readonly string[]): ReadPart {
  const labels = JSON.stringify(sizes);
  const before = readParts.get(part);
  if (before?.labels === labels) return before.read;
  const lines = printed.blocks.map((block) => (block.kind === 'table' ? '' : block));
  const read: ReadPart =
    part.kind === 'piece'
      ? {
          kind: 'piece',
          cell: part.cell ?? '',
          bySize: sizes.map((_size, sizeIndex) => verifyPiece(lines, { sizes, sizeIndex })),
        }
      : { kind: 'other', read: readPart(printed) };
  readParts.set(part, { labels, read });
  return read;
}
