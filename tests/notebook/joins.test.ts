import { describe, expect, it } from 'vitest';
import { usualSettings, type Cell, type Notebook } from '../../src/notebook';
import { joinsOf } from '../../src/notebook/joins';
import { layoutOf } from '../../src/pictures/schematic';
import { check, even, f, formula, piece, pickUp, swatch, value } from '../../src/notebook/cell-builders';

const wool = swatch('Wool', { worked: '5 mm hook', stitches: 14, rows: 16 });

function notebookOf(...cells: Cell[]): Notebook {
  return {
    title: 'Test',
    settings: usualSettings,
    sizes: [{ id: 'm', label: 'M' }],
    sections: [{ id: 's', label: 'S', cells: [wool, ...cells] }],
  };
}

const panel = (label: string, start = 'STS(20)') =>
  piece(label, 'flat', start, [even('Body', 'wool', 'ROWS(30)', 'main')]);

describe('the joins of a notebook', () => {
  it('JOINS(back_end; front_end) joins the last rows of back and front', () => {
    const notebook = notebookOf(
      panel('Back'),
      panel('Front'),
      check('Shoulders', 'JOINS(back_end; front_end)', 'No.'),
    );
    expect(joinsOf(notebook)).toEqual([
      {
        id: 'shoulders',
        label: 'Shoulders',
        edges: [
          { piece: 'back', edge: 'end' },
          { piece: 'front', edge: 'end' },
        ],
      },
    ]);
  });

  it('a sum within an argument is followed to the pieces it is worked from', () => {
    const notebook = notebookOf(
      panel('Back'),
      panel('Front'),
      formula('Both', '2 * front_end + STS(4)'),
      check('Top', 'JOINS(back_end; both)', 'No.'),
    );
    expect(joinsOf(notebook)[0]!.edges.map(({ piece: id }) => id)).toEqual(['back', 'front']);
  });

  it('a piece that starts on the last stitches of another is joined to its last row', () => {
    const notebook = notebookOf(panel('Back'), panel('Yoke', 'back_end'));
    expect(joinsOf(notebook)).toEqual([
      {
        id: 'yoke',
        label: 'Yoke',
        edges: [
          { piece: 'back', edge: 'end' },
          { piece: 'yoke', edge: 'start' },
        ],
      },
    ]);
  });

  it('a border is joined to the rows it is picked up along, and lies along the foot', () => {
    const notebook = notebookOf(
      panel('Back'),
      pickUp(
        'Border',
        [{ kind: 'rows', name: 'side', label: 'Side', rows: f('back_rows'), pick: value(3), of: value(4) }],
        2,
        1,
      ),
      panel('Border worked', 'border'),
    );
    const joins = joinsOf(notebook);
    expect(joins.map(({ edges }) => edges)).toEqual([
      [
        { piece: 'back', edge: 'side', side: 'other' },
        { piece: 'border-worked', edge: 'start' },
      ],
    ]);
    expect(layoutOf(notebook, joins).get('border-worked')).toEqual({ lies: 'along', hangs: true });
    expect(layoutOf(notebook, joins).get('back')).toEqual({ lies: 'middle', hangs: false });
  });

  it.each(['JOINS(', 'JOINS(nothing; here)', 'back_end = STS(20)', 'JOINS(back_end; STS(20))'])(
    'there is no join in %s',
    (condition) => {
      expect(joinsOf(notebookOf(panel('Back'), check('A check', condition, 'No.')))).toEqual([]);
    },
  );
});
