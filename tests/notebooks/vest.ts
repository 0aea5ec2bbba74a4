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
  measure,
  pickUp,
  piece,
  swatch,
  value,
} from '../../src/starters/cells';

/*
 * A garment for tests, invented: a vest with a V-neck, in a fabric that repeats over 8 stitches and 3 more. It has what
 * no starter has: stitches left a whole repeat at a time, one row that narrows inside the repeats, a neck shaped along
 * one edge, a border picked up from motifs. Its widths are not graded well, which is what some tests are about.
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
  measure('Stitches left at each underarm', 'stitches', value(8), {
    name: 'underarm_sts',
    note: 'One whole repeat, so that the fabric above goes on in its repeat.',
  }),
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

const repeatsAbove = (part: 'back' | 'front', underarms: string): string =>
  `(${part}_sts - STS(${part}_sts_plus) - ${underarms}) / STS(${part}_sts_multiple)`;

const narrowed = (part: 'back' | 'front') =>
  ({
    kind: 'eachRepeat',
    name: 'narrowed',
    label: 'Narrowed inside the repeats',
    fabric: 'body',
    repeats: f(`${part}_repeats`),
    by: value(-1),
  }) as const;

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
  formula('Repeats above the underarm, back', repeatsAbove('back', '2 * underarm_sts'), {
    name: 'back_repeats',
  }),
  piece('Back', 'flat', 'back_sts', [
    even('Hem to underarm', 'body', 'lower_rows', 'lower'),
    leave('Underarms', f('underarm_sts')),
    narrowed('back'),
    even('Underarm to shoulder', 'body', 'armhole_rows - 1', 'upper'),
  ]),
  formula('Shoulder stitches', 'ROUNDCOUNT((back_end - neck_width * body_sts) / 2)', {
    name: 'shoulder_sts',
  }),
  formula('Back neck stitches', 'back_end - 2 * shoulder_sts', { name: 'neck_sts' }),
  formula('Repeats above the underarm, front', repeatsAbove('front', 'underarm_sts'), {
    name: 'front_repeats',
  }),
  piece(
    'Front',
    'flat',
    'front_sts',
    [
      even('Hem to underarm', 'body', 'lower_rows', 'lower'),
      leave('Underarm', value(0)),
      narrowed('front'),
      even('Underarm to neck', 'body', 'armhole_rows - neck_rows - 1', 'upper'),
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
  formula(
    'Repeats along the hem',
    '(back_sts - STS(back_sts_plus)) / STS(back_sts_multiple) + 2 * (front_sts - STS(front_sts_plus)) / STS(front_sts_multiple)',
    { name: 'repeats_at_hem' },
  ),
  pickUp(
    'Hem border',
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
        label: 'Edge stitches between them',
        count: f('STS(back_sts_plus) + 2 * STS(front_sts_plus)'),
      },
    ],
    4,
    2,
    { name: 'hem' },
  ),
  piece('Hem border, worked', 'flat', 'hem', [even('Rib', 'rib', 'ROWS(4)', 'rib')]),
];

const supplies: Cell[] = [
  {
    kind: 'yarn',
    id: 'yarn',
    label: 'Yarn for the vest',
    name: 'yarn',
    uses: [
      { area: f('back_area + 2 * front_area'), fabric: 'body' },
      { area: f('band_worked_area + hem_border_worked_area'), fabric: 'rib' },
    ],
    reserve: value(0.1),
    ballGrams: value(50),
    ballLength: value(10_000),
  },
  {
    kind: 'notions',
    id: 'tassels',
    label: 'Tassels at the hem',
    name: 'tassels',
    sites: f('repeats_at_hem'),
    every: value(2),
    startAt: value(1),
    each: value(30),
    waste: value(0.1),
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

/** A vest with a V-neck in nine sizes: stitches left, narrowing inside repeats, a picked-up band and a hem of motifs. */
export function vest(): Notebook {
  return {
    title: 'Skerry vest',
    settings: usualSettings,
    sizes,
    sections: [
      { id: 'swatches', label: 'Swatches', cells: swatches },
      { id: 'across-section', label: 'Widths', cells: widths },
      { id: 'down-section', label: 'Lengths', cells: lengths },
      { id: 'body-section', label: 'Back and fronts', cells: pieces },
      { id: 'edge-section', label: 'Bands and borders', cells: edges },
      { id: 'supplies-section', label: 'Yarn and notions', cells: supplies },
      { id: 'joins-section', label: 'Joins', cells: checks },
    ],
  };
}
