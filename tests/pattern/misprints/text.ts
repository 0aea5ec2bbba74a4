import type { PatternBlock, PatternDocument, PatternPart } from '../../../src/pattern';

/** A place in a document that is text, and the document with another text there. */
export interface Span {
  readonly text: string;
  readonly kind:
    'line' | 'paragraph' | 'stretch heading' | 'part heading' | 'caption' | 'head' | 'label' | 'cell';
  readonly part: PatternPart;
  /** The table it stands in. */
  readonly table?: string;
  put(text: string): PatternDocument;
}

const replaced = <T>(list: readonly T[], at: number, ...by: T[]): T[] => [
  ...list.slice(0, at),
  ...by,
  ...list.slice(at + 1),
];

export function withPart(document: PatternDocument, at: number, ...by: PatternPart[]): PatternDocument {
  return { ...document, parts: replaced(document.parts, at, ...by) };
}

export function withBlock(
  document: PatternDocument,
  part: number,
  at: number,
  ...by: PatternBlock[]
): PatternDocument {
  const old = document.parts[part]!;
  return withPart(document, part, { ...old, blocks: replaced(old.blocks, at, ...by) });
}

/** All texts of a document, each with a way to misprint it. */
export function refsOf(document: PatternDocument): Span[] {
  return document.parts.flatMap((part, p): Span[] => [
    {
      text: part.heading,
      kind: 'part heading',
      part,
      put: (heading) => withPart(document, p, { ...part, heading }),
    },
    ...part.blocks.flatMap((block, b) => spansIn(block, part, (...by) => withBlock(document, p, b, ...by))),
  ]);
}

function spansIn(
  block: PatternBlock,
  part: PatternPart,
  put: (...by: PatternBlock[]) => PatternDocument,
): Span[] {
  switch (block.kind) {
    case 'heading':
      return [{ text: block.text, kind: 'stretch heading', part, put: (text) => put({ ...block, text }) }];
    case 'list':
      return block.items.map((item, at): Span => ({
        text: item.text,
        kind: 'paragraph',
        part,
        put: (text) => put({ ...block, items: replaced(block.items, at, { ...item, text }) }),
      }));
    case 'table': {
      const { caption, head, rows, key: table } = block;
      return [
        { text: caption, kind: 'caption', part, table, put: (text) => put({ ...block, caption: text }) },
        ...head.map((text, at): Span => ({
          text,
          kind: 'head',
          part,
          table,
          put: (changed) => put({ ...block, head: replaced(head, at, changed) }),
        })),
        ...rows.flatMap((row, at) =>
          row.map((text, column): Span => ({
            text,
            kind: column === 0 ? 'label' : 'cell',
            part,
            table,
            put: (changed) => put({ ...block, rows: replaced(rows, at, replaced(row, column, changed)) }),
          })),
        ),
      ];
    }
    case 'picture slot':
      return [];
    default:
      return [
        {
          text: block.text,
          kind: block.kind === 'line' ? 'line' : 'paragraph',
          part,
          put: (text) => put({ ...block, text }),
        },
      ];
  }
}
