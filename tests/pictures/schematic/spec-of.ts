import { allCells, type Notebook, type PieceCell } from '../../../src/notebook';
import { workPiece } from '../../../src/craft';
import { joinsOf } from '../../../src/notebook/joins';
import { layoutOf, type SchematicSpec } from '../../../src/pictures/schematic';
import { readPiece } from '../../../src/formulas/piece-text';
import { Worked } from '../../engine/worked';

/** The schematic of a notebook, worked in a sheet without a page. */
export async function specOf(notebook: Notebook, more: Partial<SchematicSpec> = {}): Promise<SchematicSpec> {
  const sheet = await new Worked().show(notebook);
  const joins = joinsOf(notebook);
  const layout = layoutOf(notebook, joins);
  const pieces = allCells(notebook).filter((cell): cell is PieceCell => cell.kind === 'piece');
  return {
    title: notebook.title,
    pieces: pieces.map((piece) => ({
      id: piece.id,
      name: piece.label,
      worked: piece.worked,
      ...layout.get(piece.id),
      sizes: notebook.sizes.map(({ id, label }) => {
        const text = sheet.results.text(id, piece.id, 'piece');
        if (text === undefined)
          return { id, label, rows: null, problem: sheet.errorIn(piece.id, 'piece', id) };
        const plan = readPiece(text);
        const stretches = plan.stretches.map((stretch, at) => ({
          ...stretch,
          label: piece.stretches[at]!.label,
        }));
        return { id, label, rows: workPiece(plan), plan: { ...plan, stretches } };
      }),
    })),
    joins,
    size: 'all',
    sizes: notebook.sizes.map(({ id, label }) => ({ id, label })),
    unit: 'cm',
    decimal: '.',
    theme: 'light',
    ...more,
  };
}
