import { usualSettings, type Cell, type Notebook, type Size } from '../../src/notebook';
import { chosen, each, even, f, fit, formula, piece, swatch, value } from '../../src/notebook/cell-builders';

/*
 * Narrowing inside repeats, for tests, invented: the panel of a skirt, each of whose repeats gives up one stitch in the
 * row at the hip.
 */

const sizes: Size[] = ['S', 'M', 'L'].map((label) => ({ id: label.toLowerCase(), label }));

const panel: Cell[] = [
  swatch(
    'Body fabric',
    { worked: '6.5 mm hook, flat', stitches: 14, rows: 12 },
    { name: 'body', note: 'It repeats over 8 stitches, with 3 more to balance the edges.' },
  ),
  chosen('Width of the hem', 'length', each(sizes, [50, 56, 62]), { name: 'hem_width' }),
  fit('Panel stitches', 'hem_width * body_sts', 8, 3, { name: 'panel_sts' }),
  formula('Repeats', '(panel_sts - STS(panel_sts_plus)) / STS(panel_sts_multiple)'),
  formula('Rows from hip to waist', 'ROUNDCOUNT(CM(20) * body_rows; "even")', { name: 'upper_rows' }),
  piece('Panel', 'flat', 'panel_sts', [
    even('Hem to hip', 'body', 'ROUNDCOUNT(CM(30) * body_rows; "even")', 'lower'),
    {
      kind: 'eachRepeat',
      name: 'narrowed',
      label: 'Narrowed inside the repeats',
      fabric: 'body',
      repeats: f('repeats'),
      by: value(-1),
    },
    even('Hip to waist', 'body', 'upper_rows - 1', 'upper'),
  ]),
];

/** The panel of a skirt, narrowed inside its repeats, in three sizes. */
export function narrowing(): Notebook {
  return {
    title: 'Skerry skirt, its panel',
    settings: usualSettings,
    sizes,
    sections: [{ id: 'panel-section', label: 'Panel', cells: panel }],
  };
}
