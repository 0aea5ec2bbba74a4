import { allCells, type PieceCell } from '../../notebook';
import { joinsOf } from '../../notebook/joins';
import type { PlannedSize, SchematicSpec } from '../../pictures/schematic';
import { layOf } from '../../pictures/schematic';
import type { Desk } from '../../workspace/workspace.svelte';
import { surroundings } from '../../workspace/surroundings.svelte';
import { workedPiece } from '../../workspace/worked-rows';

/**
 * The schematic of the notebook on the desk, in one size or all; a component that reads it follows its pieces.
 *
 * @param only the ids of the pieces wanted; all of them unless told
 */
export function schematicOf(desk: Desk, size: string | 'all', only?: ReadonlySet<string>): SchematicSpec {
  const pieces = piecesOf(desk).filter(({ id }) => !only || only.has(id));
  const joins = joinsOf(desk.notebook);
  const lay = layOf(desk.notebook, joins);
  return {
    title: desk.notebook.title,
    pieces: pieces.map((piece) => ({
      id: piece.id,
      name: piece.label,
      worked: piece.worked,
      sizes: desk.sizes.map(({ id, label }) => plannedSize(desk, piece, id, label)),
      ...lay.get(piece.id),
    })),
    joins,
    size,
    sizes: desk.sizes.map(({ id, label }) => ({ id, label })),
    unit: desk.settings.length,
    decimal: desk.settings.decimal,
    theme: surroundings.theme,
  };
}

export function piecesOf(desk: Desk): PieceCell[] {
  return allCells(desk.notebook).filter((cell): cell is PieceCell => cell.kind === 'piece');
}

/** The plan in the sheet has no labels: they are the person's, and stand in the notebook. */
function plannedSize(desk: Desk, piece: PieceCell, id: string, label: string): PlannedSize {
  const worked = workedPiece(desk, piece.id, id);
  if (!('rows' in worked)) return { id, label, rows: null, trouble: worked.trouble };
  const stretches = worked.plan.stretches.map((stretch, at) => ({
    ...stretch,
    label: piece.stretches[at]?.label ?? '',
  }));
  return { id, label, rows: worked.rows, plan: { ...worked.plan, stretches } };
}
