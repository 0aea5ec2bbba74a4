import { allCells, type PieceCell, joinsOf } from '../../notebook';
import { type PlannedSize, type SchematicSpec, layoutOf } from '../../pictures/schematic';
import { type Workspace, surroundings, workedPiece } from '../../workspace';

/**
 * The schematic of the open notebook, in one size or all; a component that reads it follows its pieces.
 *
 * @param only the ids of the pieces wanted; all of them unless told
 */
export function schematicOf(
  workspace: Workspace,
  size: string | 'all',
  only?: ReadonlySet<string>,
): SchematicSpec {
  const pieces = piecesOf(workspace).filter(({ id }) => !only || only.has(id));
  const joins = joinsOf(workspace.notebook);
  const layout = layoutOf(workspace.notebook, joins);
  return {
    title: workspace.notebook.title,
    pieces: pieces.map((piece) => ({
      id: piece.id,
      name: piece.label,
      worked: piece.worked,
      sizes: workspace.sizes.map(({ id, label }) => plannedSize(workspace, piece, id, label)),
      ...layout.get(piece.id),
    })),
    joins,
    size,
    sizes: workspace.sizes.map(({ id, label }) => ({ id, label })),
    unit: workspace.settings.length,
    decimal: workspace.settings.decimal,
    theme: surroundings.theme,
  };
}

export function piecesOf(workspace: Workspace): PieceCell[] {
  return allCells(workspace.notebook).filter((cell): cell is PieceCell => cell.kind === 'piece');
}

/** The plan in the sheet has no labels: they are the person's, and stand in the notebook. */
function plannedSize(workspace: Workspace, piece: PieceCell, id: string, label: string): PlannedSize {
  const worked = workedPiece(workspace, piece.id, id);
  if (!('rows' in worked)) return { id, label, rows: null, problem: worked.error };
  const stretches = worked.plan.stretches.map((stretch, at) => ({
    ...stretch,
    label: piece.stretches[at]?.label ?? '',
  }));
  return { id, label, rows: worked.rows, plan: { ...worked.plan, stretches } };
}
