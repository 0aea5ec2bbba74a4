import { cellById, type Notebook } from '../document';
import type { Edit } from './edit';

/** What an edit does, as undo and redo call it: "the change to Bust". */
export function describe(notebook: Notebook, edit: Edit): string {
  const label = (id: string): string => cellById(notebook, id)?.label || 'a cell';
  const sectionLabel = (id: string): string =>
    notebook.sections.find((section) => section.id === id)?.label ?? '';
  const whatIf = (id: string): string => notebook.whatIfs?.find((one) => one.id === id)?.name ?? '';
  switch (edit.do) {
    case 'give':
    case 'enter':
    case 'take over':
      return `the change to ${label(edit.cell)}`;
    case 'change':
      return `the change to ${label(edit.cell.id)}`;
    case 'relabel':
      return `the new label of ${label(edit.cell)}`;
    case 'rename':
      return `the new name of ${label(edit.cell)}`;
    case 'add cell':
      return `adding ${edit.cell.label}`;
    case 'remove cell':
      return `removing ${label(edit.cell)}`;
    case 'duplicate cell':
      return `the copy of ${label(edit.cell)}`;
    case 'move cell':
      return `moving ${label(edit.cell)}`;
    case 'add section':
      return `adding the section ${edit.section.label}`;
    case 'remove section':
      return `removing the section ${sectionLabel(edit.section)}`;
    case 'duplicate section':
      return `the copy of the section ${sectionLabel(edit.section)}`;
    case 'move section':
      return `moving the section ${sectionLabel(edit.section)}`;
    case 'relabel section':
      return `the new label of the section ${sectionLabel(edit.section)}`;
    case 'move size':
      return 'the new order of sizes';
    case 'take sizes':
      return 'taking other sizes';
    case 'several':
      return edit.what;
    case 'add size':
      return `adding size ${edit.size.label}`;
    case 'remove size':
      return `removing size ${notebook.sizes.find((size) => size.id === edit.size)?.label ?? ''}`.trim();
    case 'relabel size':
      return `the new label of size ${edit.label}`;
    case 'add what-if':
      return `adding the what-if ${edit.whatIf.name}`;
    case 'remove what-if':
      return `deleting the what-if ${whatIf(edit.whatIf)}`;
    case 'rename what-if':
      return `the new name of the what-if ${whatIf(edit.whatIf)}`;
    case 'switch what-if':
      return `switching the what-if ${whatIf(edit.whatIf)} ${edit.on ? 'on' : 'off'}`;
    case 'change what-if':
    case 'take out of what-if':
      return `the change to the what-if ${whatIf(edit.whatIf)}`;
    case 'make what-if':
      return `making ${whatIf(edit.whatIf)} the notebook`;
    case 'set':
      return 'the change of settings';
    case 'reword':
      return 'the new wording';
    case 'set class sheet':
      return 'the change to the class sheet';
    case 'retitle':
      return 'the new title';
  }
}
