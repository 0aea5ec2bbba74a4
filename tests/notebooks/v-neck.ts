import { charts } from '../../src/craft';
import { usualSettings, type Cell, type Notebook, type Size } from '../../src/notebook';
import {
  charted,
  check,
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
 * A V-neck for tests, invented: a vest of straight pieces, its neck shaped along one edge of each front and its band
 * picked up along that slope. Its fabric repeats over 8 stitches and 3 more, so that its widths are not graded well,
 * which is what some tests are about.
 */

const sizes: Size[] = charts.woman.sizes.map((size) => ({
  id: size.toLowerCase(),
  label: size,
  chart: { name: 'woman', size },
}));

const swatches: Cell[] = [
  swatch(
    'Body fabric',
    { worked: '6.5 mm hook, flat', stitches: 14, rows: 12, weighed: [20, 20, 24] },
    { name: 'body', note: 'It repeats over 8 stitches, with 3 more to balance the edges.' },
  ),
  swatch(
    'Rib',
    { worked: '5 mm hook, post stitches', stitches: 17, rows: 13, weighed: [12, 12, 12] },
    { pulled: { relaxed: value(10), stretched: value(13.5) } },
  ),
];

const widths: Cell[] = [
  charted('Bust', 'bust'),
  {
    kind: 'ease',
    id: 'finished-bust',
    label: 'Finished bust',
    name: 'finished_bust',
    by: 'length',
    body: f('bust'),
    ease: value(20),
  },
  chosen('Width of the band', 'length', value(4), { name: 'band_width' }),
  fit('Back stitches', 'finished_bust / 2 * body_sts', 8, 3, { name: 'back_sts' }),
  formula('Front width', 'FRONTWIDTH(finished_bust; back_sts / body_sts; band_width; "edge to edge")'),
  fit('Front stitches', 'front_width * body_sts', 8, 3, { name: 'front_sts' }),
  chosen('Width of the neck', 'length', each(sizes, [17, 17, 17.5, 18, 18.5, 19, 19.5, 20, 20.5]), {
    name: 'neck_width',
  }),
];

const lengths: Cell[] = [
  charted('Back waist length', 'backWaistLength'),
  charted('Upper arm', 'upperArm'),
  charted('Armhole depth', 'armholeDepth'),
  formula('Body length', 'back_waist_length + CM(14)'),
  formula('Armhole', 'ARMHOLEDEPTH(armhole_depth; upper_arm; CM(10))'),
  formula('Rows to the underarm', 'ROUNDCOUNT((body_length - armhole) * body_rows; "even")', {
    name: 'lower_rows',
  }),
  formula('Rows of the armhole', 'ROUNDCOUNT(armhole * body_rows; "even")', { name: 'armhole_rows' }),
  formula('Rows of the front neck', 'ROUNDCOUNT(CM(14) * body_rows; "even")', { name: 'neck_rows' }),
];

const pieces: Cell[] = [
  piece('Back', 'flat', 'back_sts', [
    even('Hem to underarm', 'body', 'lower_rows', 'lower'),
    even('Underarm to shoulder', 'body', 'armhole_rows', 'upper'),
  ]),
  formula('Shoulder stitches', 'ROUNDCOUNT((back_end - neck_width * body_sts) / 2)', {
    name: 'shoulder_sts',
  }),
  formula('Back neck stitches', 'back_end - 2 * shoulder_sts', { name: 'neck_sts' }),
  piece(
    'Front',
    'flat',
    'front_sts',
    [
      even('Hem to underarm', 'body', 'lower_rows', 'lower'),
      even('Underarm to neck', 'body', 'armhole_rows - neck_rows', 'upper'),
      {
        kind: 'taper',
        name: 'neck',
        label: 'Neck to shoulder',
        fabric: 'body',
        to: f('shoulder_sts'),
        over: f('neck_rows'),
        perRow: value(1),
        every: 1,
        before: value(0),
        after: value(0),
        order: 'spread',
      },
    ],
    { note: 'Work the other front as its mirror.' },
  ),
];

const rowEnds = { pick: f('PICKUPSTITCHES(body_rows; rib_sts)'), of: f('PICKUPROWS(body_rows; rib_sts)') };
const slope = { length: f('front_neck_edge'), gauge: f('rib_sts') };
const straight = f('front_rows - neck_rows');

const edges: Cell[] = [
  pickUp(
    'Band',
    [
      { kind: 'rows', name: 'right_front', label: 'Right front', rows: straight, ...rowEnds },
      { kind: 'curve', name: 'right_neck', label: 'Right neck', ...slope },
      { kind: 'stitches', name: 'back_neck', label: 'Back neck', count: f('neck_sts') },
      { kind: 'curve', name: 'left_neck', label: 'Left neck', ...slope },
      { kind: 'rows', name: 'left_front', label: 'Left front', rows: straight, ...rowEnds },
    ],
    2,
    1,
    { name: 'band', note: 'Up the right front, round the neck and down the left front.' },
  ),
  piece('Band, worked', 'flat', 'band', [even('Rib', 'rib', 'ROUNDCOUNT(band_width * rib_rows)', 'rib')]),
  formula('Bust as worked', '(back_sts + 2 * front_sts) / body_sts + 2 * band_worked_length'),
];

const supplies: Cell[] = [
  {
    kind: 'yarn',
    id: 'yarn',
    label: 'Yarn for the vest',
    name: 'yarn',
    uses: [
      { area: f('back_area + 2 * front_area'), fabric: 'body' },
      { area: f('band_worked_area'), fabric: 'rib' },
    ],
    reserve: value(0.1),
    ballGrams: value(50),
    ballLength: value(10_000),
  },
];

const checks: Cell[] = [
  check(
    'Side seams',
    'JOINS(back_lower_worked_rows; front_lower_worked_rows)',
    'Back and front have other numbers of rows below the underarm, so the side seam will not lie flat.',
  ),
  check(
    'Back and front to the shoulder',
    // Equal, and no seam.
    'back_rows = front_rows',
    'Back and front have other numbers of rows, so the shoulders do not meet.',
  ),
  check(
    'Shoulders',
    'JOINS(shoulder_sts; front_end)',
    'The front shoulder has another count than the back shoulder.',
  ),
];

/** A vest with a V-neck and the band along it, in nine sizes. */
export function vNeck(): Notebook {
  return {
    title: 'Skerry vest',
    settings: usualSettings,
    sizes,
    sections: [
      { id: 'swatches', label: 'Swatches', cells: swatches },
      { id: 'across-section', label: 'Widths', cells: widths },
      { id: 'down-section', label: 'Lengths', cells: lengths },
      { id: 'body-section', label: 'Back and fronts', cells: pieces },
      { id: 'edge-section', label: 'Band', cells: edges },
      { id: 'supplies-section', label: 'Yarn', cells: supplies },
      { id: 'joins-section', label: 'Joins', cells: checks },
    ],
  };
}
