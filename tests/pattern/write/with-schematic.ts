import { workPiece } from '../../../src/craft';
import { allCells, type PieceCell } from '../../../src/notebook';
import { joinsOf } from '../../../src/notebook/joins';
import { withMeasurements } from '../../../src/features/pattern/with-measurements';
import { layoutOf, type SchematicSpec } from '../../../src/pictures/schematic';
import type { PatternDocument, PatternSource } from '../../../src/pattern';

/** A pattern as it leaves the page: with the tables of its schematic. */
export function withSchematic(document: PatternDocument, source: PatternSource): PatternDocument {
  const { notebook } = source;
  const written = new Set(document.parts.map(({ cell }) => cell));
  const joins = joinsOf(notebook);
  const layout = layoutOf(notebook, joins);
  const pieces = allCells(notebook).filter(
    (cell): cell is PieceCell => cell.kind === 'piece' && written.has(cell.id),
  );
  if (pieces.length === 0) return document;
  const spec: SchematicSpec = {
    title: notebook.title,
    pieces: pieces.map((piece) => ({
      id: piece.id,
      name: piece.label,
      worked: piece.worked,
      ...layout.get(piece.id),
      sizes: document.sizes.map(({ id, label }) => {
        const plan = source.plan(id, piece.id);
        if ('problem' in plan) return { id, label, rows: null, problem: plan.problem };
        const stretches = plan.stretches.map((stretch, at) => ({
          ...stretch,
          label: piece.stretches[at]?.label ?? '',
        }));
        return { id, label, rows: workPiece(plan), plan: { ...plan, stretches } };
      }),
    })),
    joins,
    size: 'all',
    sizes: document.sizes,
    unit: notebook.settings.length,
    decimal: notebook.settings.decimal,
    theme: 'light',
    key: false,
  };
  return withMeasurements(document, spec);
}
