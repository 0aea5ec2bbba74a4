import { describe, expect, it } from 'vitest';
import { allCells, clashOf, freshCell, type CellKind, type Notebook } from '../../src/notebook';
import { fit, measure, notebookOf, swatch } from '../engine/notebook-of';

/** What a new cell is called in formulas, beside what the notebook has. */
const nameOf = (notebook: Notebook, kind: CellKind, label: string): string =>
  freshCell(notebook, kind, label, 'new').name;

const withBackStitches = notebookOf([
  swatch('wool', 14, 20),
  { ...fit('back_stitches', 'wool_sts * CM(50)'), label: 'Back stitches' },
]);

describe('the name of a new cell', () => {
  it('is its label, as formulas can use it', () => {
    expect(nameOf(withBackStitches, 'piece', 'Front')).toBe('front');
  });

  it('has its kind after it where a part of it would be called as something else is: a piece "Back" counts back_stitches', () => {
    expect(nameOf(withBackStitches, 'piece', 'Back')).toBe('back_piece');
    const back = freshCell(withBackStitches, 'piece', 'Back', 'new');
    expect(clashOf(withBackStitches, { ...back, name: 'back' })).toEqual({
      name: 'back_stitches',
      by: 'Back stitches',
    });
  });

  it('the other way round, too: a count that is called as a part of a piece is', () => {
    const piece = freshCell(notebookOf([]), 'piece', 'Sleeve', 'sleeve');
    expect(nameOf(notebookOf([piece]), 'measure', 'Sleeve length')).toBe('sleeve_length_measure');
  });

  it('has its kind after it beside another kind of the same name, and a number among its own', () => {
    const bust = notebookOf([{ ...measure('bust', 'length', 94), label: 'Bust' }]);
    expect(nameOf(bust, 'ease', 'Bust')).toBe('bust_ease');
    expect(nameOf(bust, 'measure', 'Bust')).toBe('bust_2');
    const more = notebookOf([...allCells(bust), { ...measure('bust_2', 'length', 94), label: 'Bust' }]);
    expect(nameOf(more, 'measure', 'Bust')).toBe('bust_3');
  });
});
