import { usualSettings, type Cell, type Notebook, type Size } from '../../src/notebook';
import {
  check,
  chosen,
  each,
  even,
  f,
  fit,
  formula,
  measure,
  piece,
  swatch,
  value,
} from '../../src/notebook/cell-builders';

/*
 * Stitches left at the underarm, for tests, invented: of a boxy top, both edges of the back and one edge of each front
 * are left unworked, and a short sleeve takes them up again.
 */

const sizes: Size[] = ['S', 'M', 'L'].map((label) => ({ id: label.toLowerCase(), label }));

const measures: Cell[] = [
  swatch('Body fabric', { worked: '6.5 mm hook', stitches: 14, rows: 12 }, { name: 'body' }),
  chosen('Width of the back', 'length', each(sizes, [50, 54, 60]), { name: 'back_width' }),
  fit('Back stitches', 'back_width * body_sts', 2, 1, { name: 'back_sts' }),
  fit('Front stitches', 'back_width / 2 * body_sts', 2, 0, { name: 'front_sts' }),
  measure('Stitches left at each underarm', 'stitches', value(8), { name: 'underarm_sts' }),
  formula('Rows to the underarm', 'ROUNDCOUNT(CM(30) * body_rows; "even")', { name: 'lower_rows' }),
  formula('Rows of the armhole', 'ROUNDCOUNT(CM(20) * body_rows; "even")', { name: 'armhole_rows' }),
];

const leave = (label: string, atEnd: Readonly<ReturnType<typeof f>>) =>
  ({
    kind: 'leave',
    name: 'underarm',
    label,
    fabric: 'body',
    atStart: f('underarm_sts'),
    atEnd,
  }) as const;

const pieces: Cell[] = [
  piece('Back', 'flat', 'back_sts', [
    even('Hem to underarm', 'body', 'lower_rows', 'lower'),
    leave('Underarms', f('underarm_sts')),
    even('Underarm to shoulder', 'body', 'armhole_rows', 'upper'),
  ]),
  piece(
    'Front',
    'flat',
    'front_sts',
    [
      even('Hem to underarm', 'body', 'lower_rows', 'lower'),
      leave('Underarm', value(0)),
      even('Underarm to shoulder', 'body', 'armhole_rows', 'upper'),
    ],
    { note: 'Work the other front as its mirror.' },
  ),
  formula(
    'Sleeve stitches picked up',
    'JOINARMHOLE(armhole_rows; PICKUPSTITCHES(body_rows; body_sts); PICKUPROWS(body_rows; body_sts); 2 * underarm_sts; STS(0))',
    { name: 'sleeve_sts', note: 'Along both sides of the armhole, and one for one at the underarm.' },
  ),
  piece('Sleeve', 'round', 'sleeve_sts', [even('Armhole to hem', 'body', 'ROWS(10)', 'short')]),
];

const joins: Cell[] = [
  check(
    'Side seams',
    'JOINS(back_lower_worked_rows; front_lower_worked_rows)',
    'Back and front have other numbers of rows below the underarm, so the side seam will not lie flat.',
  ),
];

/** The boxy top with stitches left at its underarms, in three sizes. */
export function underarm(): Notebook {
  return {
    title: 'Skerry top',
    settings: usualSettings,
    sizes,
    sections: [
      { id: 'measurements', label: 'Measurements', cells: measures },
      { id: 'body-section', label: 'Back, front and sleeve', cells: pieces },
      { id: 'joins-section', label: 'Joins', cells: joins },
    ],
  };
}
