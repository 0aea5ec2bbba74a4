import type { TableCell } from '../../storage';
import { type Workspace, linesOf, numberOf, showNumber, symbolFor } from '../../workspace';
import { unitOf } from '../grid';

/**
 * The notebook as a table for other programs: a line of the grid to a row, a size to a column, numbers as they are shown.
 * A place that has no value is empty.
 */
export function sizeTable(workspace: Workspace): TableCell[][] {
  const { settings, sizes } = workspace;
  const rows: TableCell[][] = [['Section', 'Cell', 'Value', 'Unit', ...sizes.map(({ label }) => label)]];
  for (const section of workspace.notebook.sections) {
    for (const cell of section.cells) {
      const results = workspace.results(cell.id);
      for (const line of linesOf(cell, false)) {
        if (line.line === 'words') continue;
        const unit = unitOf(workspace, { cell, line });
        const values = sizes.map(({ id }): TableCell => {
          const value = numberOf(workspace, cell.id, line, id);
          if (value !== undefined) return { shown: showNumber(value, unit, settings, line.written) };
          const truth = results.truth(id, cell.id, line.key);
          if (truth !== undefined) return truth ? 'yes' : 'no';
          return (unit === 'text' && results.text(id, cell.id, line.key)) || '';
        });
        const called = line.rank === 'own' ? '' : line.label;
        rows.push([section.label, cell.label, called, symbolFor(unit, settings, line.written), ...values]);
      }
    }
  }
  return rows;
}
