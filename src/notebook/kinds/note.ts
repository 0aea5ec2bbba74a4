import type { NoteCell } from '../document';
import type { Kind } from '../kind';

export const note: Kind<NoteCell> = {
  kind: 'note',
  label: 'Note',
  about: 'Words for whoever reads the notebook. Nothing is worked from a note.',
  example: 'Work the other front as its mirror.',
  fresh: (base) => ({ kind: 'note', ...base, text: '' }),
  inputs: () => [],
  outputs: () => [],
  put: (cell) => cell,
  mapFormulas: (cell) => cell,
};
