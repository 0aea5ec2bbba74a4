import {
  joinsInWords,
  schematicDrawn,
  schematicTable,
  titleOf,
  type SchematicSpec,
} from '../../pictures/schematic';
import type { PatternBlock, PatternDocument } from '../../pattern';
import { shown } from '../../pattern/write';

/**
 * In px. A4 has 680 between its margins, and Letter a little more: what is written on a drawing is printed at 7 points or
 * larger, and a body, its front and its sleeve stand side by side.
 */
const paperWidth = 760;

/** A drawing for paper, which is white, and what is said of it. */
export const drawnForPaper = (spec: SchematicSpec) =>
  schematicDrawn({ ...spec, theme: 'light', onWhite: true, width: paperWidth });

/**
 * A pattern with what its schematic is read by, instead of the pieces' measurements without letters: under the drawing, what its capital letters stand for in every size, and
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
    // A part that is as it was is not read again by the proof.
    parts: document.parts.map((part) =>
      part.blocks.some(({ kind }) => kind === 'picture slot')
        ? { ...part, blocks: part.blocks.flatMap(blocks) }
        : part,
    ),
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
