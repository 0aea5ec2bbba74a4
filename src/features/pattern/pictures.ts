import type { SchematicSpec } from '../../pictures/schematic';
import type { PatternDocument } from '../../pattern';
import type { Workspace } from '../../workspace';
import { schematicOf } from '../pictures';
import { drawnForPaper } from './with-measurements';

/** The schematic of a pattern: of the sizes it is written for, and of no other. Nothing where there is nothing to draw. */
export function schematicFor(
  workspace: Workspace,
  document: PatternDocument,
  size: string | 'all',
): SchematicSpec | undefined {
  const written = new Set(document.sizes.map(({ id }) => id));
  const pieces = new Set(
    document.parts.flatMap(({ kind, cell }) => (kind === 'piece' && cell ? [cell] : [])),
  );
  const whole = schematicOf(workspace, size, pieces);
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

/** A drawing as the address of an image: so that nothing in it can run, and nothing of the page reaches it. */
export function addressOf(svg: string): string {
  const escaped = encodeURIComponent(svg).replace(
    /[()'*!]/gu,
    (sign) => `%${sign.charCodeAt(0).toString(16)}`,
  );
  return `data:image/svg+xml,${escaped}`;
}
