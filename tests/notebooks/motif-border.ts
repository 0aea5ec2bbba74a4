import { usualSettings, type Cell, type Notebook, type Size } from '../../src/notebook';
import {
  chosen,
  each,
  even,
  f,
  fit,
  formula,
  pickUp,
  piece,
  swatch,
  value,
} from '../../src/notebook/cell-builders';

/*
 * A border picked up from motifs, for tests, invented: so many stitches along each repeat of the foundation of a shawl,
 * and one in each of the edge stitches beside them.
 */

const sizes: Size[] = ['S', 'M', 'L'].map((label) => ({ id: label.toLowerCase(), label }));

const shawl: Cell[] = [
  swatch(
    'Body fabric',
    { worked: '6.5 mm hook, flat', stitches: 14, rows: 12 },
    { name: 'body', note: 'It repeats over 8 stitches, with 3 more to balance the edges.' },
  ),
  swatch('Rib', { worked: '5 mm hook, post stitches', stitches: 17, rows: 13 }),
  chosen('Width of the shawl', 'length', each(sizes, [120, 140, 170]), { name: 'shawl_width' }),
  fit('Shawl stitches', 'shawl_width * body_sts', 8, 3, { name: 'shawl_sts' }),
  piece('Shawl', 'flat', 'shawl_sts', [
    even('Foundation to top', 'body', 'ROUNDCOUNT(CM(40) * body_rows)', 'all'),
  ]),
  formula('Repeats along the hem', '(shawl_sts - STS(shawl_sts_plus)) / STS(shawl_sts_multiple)', {
    name: 'repeats_at_hem',
  }),
  pickUp(
    'Border',
    [
      {
        kind: 'motifs',
        name: 'repeats',
        label: 'Repeats of the foundation',
        motifs: f('repeats_at_hem'),
        each: value(10),
      },
      {
        kind: 'stitches',
        name: 'edges',
        label: 'Edge stitches beside them',
        count: f('STS(shawl_sts_plus)'),
      },
    ],
    4,
    2,
    { name: 'border' },
  ),
  piece('Border, worked', 'flat', 'border', [even('Rib', 'rib', 'ROWS(4)', 'rib')]),
];

/** A shawl with a border picked up from the repeats of its foundation, in three sizes. */
export function motifBorder(): Notebook {
  return {
    title: 'Skerry shawl',
    settings: usualSettings,
    sizes,
    sections: [{ id: 'shawl-section', label: 'Shawl', cells: shawl }],
  };
}
