import { cellById, type Notebook } from '../document';
import { outputsOf } from '../kinds';
import { added, changed, duplicated, moved, renamed } from './cells';
import type { Applied, Edit } from './edit';
import { classSheetSet } from './class-sheet';
import { gone, inSections, shifted, withCell } from './with-cell';
import { sectionEdited } from './sections';
import { sizeAdded, sizesTaken } from './sizes';
import { whatIfEdited } from './what-ifs';
import { entered, given, takenOver, withInput } from './values';
import { reworded } from './wording';

/** The notebook after an edit, or why it cannot be made. The notebook before stays as it was. */
export function apply(notebook: Notebook, edit: Edit): Applied {
  switch (edit.do) {
    case 'give':
      return withInput(notebook, edit, (input) => given(notebook, input, edit.size, edit.value));
    case 'enter':
      return withInput(notebook, edit, (input) => entered(input, edit.entry));
    case 'take over':
      return withCell(notebook, edit.cell, (cell) =>
        outputsOf(cell).some(({ key }) => key === edit.key)
          ? takenOver(cell, edit.key, edit.formula)
          : { refused: 'That result is no longer in the cell.' },
      );
    case 'relabel': {
      const label = edit.label.trim();
      if (!label) return { refused: 'A label cannot be empty: it is what people read.' };
      return withCell(notebook, edit.cell, (cell) => ({ ...cell, label: label.slice(0, 200) }));
    }
    case 'rename':
      return renamed(notebook, edit.cell, edit.name.trim().normalize('NFC'));
    case 'change':
      return changed(notebook, edit.cell);
    case 'add cell':
      return added(notebook, edit.section, edit.at, edit.cell);
    case 'remove cell':
      if (!cellById(notebook, edit.cell)) return gone;
      return inSections(notebook, (cells) =>
        cells.some((cell) => cell.id === edit.cell) ? cells.filter((cell) => cell.id !== edit.cell) : cells,
      );
    case 'duplicate cell':
      return duplicated(notebook, edit.cell, edit.id);
    case 'move cell':
      return moved(notebook, edit.cell, edit.section, edit.at);
    case 'add section':
    case 'remove section':
    case 'duplicate section':
    case 'move section':
    case 'relabel section':
      return sectionEdited(notebook, edit);
    case 'add size':
      return sizeAdded(notebook, edit.at, edit.size);
    case 'remove size':
      if (notebook.sizes.length === 1) return { refused: 'A notebook keeps at least one size.' };
      return { notebook: { ...notebook, sizes: notebook.sizes.filter((size) => size.id !== edit.size) } };
    case 'relabel size': {
      const label = edit.label.trim().slice(0, 60);
      if (!label) return { refused: 'A size needs a label, such as M or 38.' };
      const sizes = notebook.sizes.map((size) => (size.id === edit.size ? { ...size, label } : size));
      return { notebook: { ...notebook, sizes } };
    }
    case 'move size': {
      const sizes = shifted(notebook.sizes, edit.size, edit.at);
      return sizes
        ? { notebook: { ...notebook, sizes } }
        : { refused: 'That size is no longer in the notebook.' };
    }
    case 'take sizes':
      return sizesTaken(notebook, edit.sizes);
    case 'several': {
      let applied: Applied = { notebook };
      for (const one of edit.edits) {
        applied = apply(applied.notebook, one);
        if ('refused' in applied) return applied;
      }
      return applied;
    }
    case 'add what-if':
    case 'remove what-if':
    case 'rename what-if':
    case 'switch what-if':
    case 'change what-if':
    case 'take out of what-if':
    case 'make what-if':
      return whatIfEdited(notebook, edit);
    case 'set':
      return { notebook: { ...notebook, settings: { ...notebook.settings, ...edit.settings } } };
    case 'reword':
      return reworded(notebook, edit.key, edit.wording);
    case 'set class sheet':
      return classSheetSet(notebook, edit.sheet);
    case 'retitle':
      return { notebook: { ...notebook, title: edit.title.trim().slice(0, 200) || 'Untitled' } };
  }
}
