import { joinsInWords, schematicDrawn, schematicTable, titleOf } from '../../pictures/schematic';
import type { SchematicSpec } from '../../pictures/schematic';
import type { PatternBlock, PatternDocument } from '../../words';
import { shown } from '../../words/sentence';
import type { Desk } from '../desk.svelte';
import { schematicOf } from '../pictures/schematic-spec';

/**
 * In px. A4 has 680 between its margins, and Letter a little more: what is written on a drawing is printed at 7 points or
 * larger, and a body, its front and its sleeve stand side by side.
 */
const paperWidth = 760;

/** The schematic of a pattern: of the sizes it is written for, and of no other. Nothing where there is nothing to draw. */
export function schematicFor(
  desk: Desk,
  document: PatternDocument,
  size: string | 'all',
): SchematicSpec | undefined {
  const written = new Set(document.sizes.map(({ id }) => id));
  const pieces = new Set(
    document.parts.flatMap(({ kind, cell }) => (kind === 'piece' && cell ? [cell] : [])),
  );
  const whole = schematicOf(desk, size, pieces);
  // What cannot be worked is told to the designer, and is not in what the maker reads.
  const drawn = whole.pieces
    .map((piece) => ({ ...piece, sizes: piece.sizes.filter(({ id }) => written.has(id)) }))
    .filter(({ sizes }) => sizes.some(({ rows }) => rows !== null && rows.length > 0));
  if (drawn.length === 0) return undefined;
  return {
    ...whole,
    key: false,
    sizes: whole.sizes.filter(({ id }) => written.has(id)),
    pieces: drawn,
  };
}

/** A drawing for paper, which is white. */
export function onPaper(spec: SchematicSpec): string {
  return drawnForPaper(spec).svg;
}

const drawnForPaper = (spec: SchematicSpec) =>
  schematicDrawn({ ...spec, theme: 'light', onWhite: true, width: paperWidth });

/** A drawing as the address of an image: so that nothing in it can run, and nothing of the page reaches it. */
export function addressOf(svg: string): string {
  const escaped = encodeURIComponent(svg).replace(
    /[()'*!]/gu,
    (sign) => `%${sign.charCodeAt(0).toString(16)}`,
  );
  return `data:image/svg+xml,${escaped}`;
}

/**
 * A pattern with what its schematic is read by, in place of the pieces' measurements without letters: under the drawing, what its capital letters stand for in every size, and
 * what its small letters join. As tables, they are printed as large as all else, go over a page, and leave in every format.
 */
export function withMeasurements(
  document: PatternDocument,
  spec: SchematicSpec | undefined,
): PatternDocument {
  if (!spec) return document;
  const blocks = (block: PatternBlock): PatternBlock[] => {
    if (block.kind === 'table' && block.key === 'measurements of pieces') return [];
    if (block.kind !== 'picture slot') return [block];
    return [
      { ...block, caption: `${shown(titleOf(spec))}. ${drawnForPaper(spec).about}` },
      ...tablesOf(spec),
    ];
  };
  return {
    ...document,
    parts: document.parts.map((part) => ({ ...part, blocks: part.blocks.flatMap(blocks) })),
  };
}

function tablesOf(spec: SchematicSpec): PatternBlock[] {
  const { headings, rows } = schematicTable(spec);
  const joins = joinsInWords(spec);
  return [
    {
      kind: 'table',
      key: 'schematic measurements',
      caption: `The schematic in ${spec.unit === 'cm' ? 'centimetres' : 'inches'}`,
      head: ['', ...headings.slice(2).map(shown)],
      rows: rows.map(([letter, label = '', ...values]) => [`${letter}\u2002${shown(label)}`, ...values]),
    },
    ...(joins.length > 0
      ? [
          {
            kind: 'table' as const,
            key: 'schematic joins',
            caption: 'Joins marked on the schematic',
            head: ['Join', 'What meets'],
            rows: joins.map(({ letter, label, words }) => [`${letter}\u2002${shown(label)}`, shown(words)]),
            words: true as const,
          },
        ]
      : []),
  ];
}
