import { charts } from '../craft';
import {
  usualSettings,
  type Cell,
  type Notebook,
  type Size,
  charted,
  chosen,
  each,
  f,
  fit,
  formula,
  measure,
  swatch,
  value,
} from '../notebook';
import { checks, edges } from './cardigan-edges';
import { backAndFronts, sleevesOf } from './cardigan-pieces';

/*
 * A scenario of our own: a cardigan whose swatches, ease, lengths and neck are invented. Body measurements follow the
 * women's chart; the hand is from a survey named in its note. A modified drop shoulder leaves 4–8 cm at the underarm and
 * goes straight up; a round neck leaves a third in the middle, then takes a few stitches, then one at a time (common
 * practice).
 */

const sizes: Size[] = charts.woman.sizes.map((size) => ({
  id: size.toLowerCase(),
  label: size,
  chart: { name: 'woman', size },
}));

const swatches: Cell[] = [
  swatch(
    'Body texture',
    {
      worked: '6.5 mm hook, 1 st in the front loop and 1 in the back loop by turns',
      stitches: 14,
      rows: 12,
      weighed: [20, 20, 25],
    },
    {
      name: 'body',
      stitch: 'hdc',
      note: 'A multiple of 2 plus 1. Every row: *1 in the front loop only, 1 in the back loop only; repeat from * to the last stitch, 1 in the front loop only. The first row goes through both loops.',
    },
  ),
  swatch(
    'Rib',
    { worked: '5.5 mm hook, through the back loop', stitches: 15, rows: 14, weighed: [15, 15, 16] },
    {
      stitch: 'hdc',
      pulled: { relaxed: value(10), stretched: value(13.5) },
      note: 'Worked sideways: its rows run up the garment. It was pulled along its rows, as it goes round the wrist.',
    },
  ),
  swatch(
    'Band fabric',
    { worked: '5 mm hook, flat', stitches: 16, rows: 18, weighed: [12, 12, 10.5] },
    { name: 'band' },
  ),
];

const body: Cell[] = [
  charted('Bust', 'bust'),
  charted('Neck to wrist', 'neckToWrist', {
    note: 'From the bone at the back of the neck, over the shoulder, to the wrist.',
  }),
  charted('Back waist length', 'backWaistLength'),
  charted('Upper arm', 'upperArm'),
  charted('Armhole depth', 'armholeDepth'),
  measure('Hand', 'length', value(20.2), {
    note: 'Round the knuckles; 95 of 100 women of the ANSUR II survey (2012) measure no more than this. Measure your own.',
  }),
];

/** The back in twos and one more, both fronts in any number, and one band that lies over the other. */
const fittedTogether = (half: 1 | 2): string =>
  `FITTOGETHER(${half}; finished_bust * body_sts; band_deep / band_rows * body_sts; 1; 2; 1; 2; 1; 0)`;

const across: Cell[] = [
  {
    kind: 'ease',
    id: 'finished-bust',
    label: 'Finished bust',
    name: 'finished_bust',
    by: 'length',
    body: f('bust'),
    ease: value(16),
    note: 'Buttoned: one band lies on the other.',
  },
  chosen('Width of the band', 'length', value(3), { name: 'band_width' }),
  formula('Rows of the band', 'ROUNDCOUNT(band_width * band_rows)', { name: 'band_deep' }),
  formula('Back stitches', fittedTogether(1), {
    name: 'back_sts',
    note: 'Fitted together with the fronts, so that the bust grows as the body does.',
  }),
  formula('Front stitches', fittedTogether(2), {
    name: 'front_sts',
    note: 'Where it is even, the stitch over is an edge stitch in the side seam.',
  }),
  chosen('Left at each underarm', 'length', each(sizes, [4, 4.5, 5, 5.5, 6, 6.5, 7, 7.5, 8]), {
    name: 'underarm_width',
  }),
  formula('Stitches left at each underarm', 'ROUNDCOUNT(underarm_width * body_sts)', {
    name: 'underarm_sts',
  }),
  chosen('Width of the neck', 'length', each(sizes, [20, 20, 20.5, 21, 21.5, 22, 22.5, 23, 23.5]), {
    name: 'neck_width',
    note: 'From shoulder to shoulder, before the neckband.',
  }),
  fit('Back neck stitches', 'neck_width * body_sts', 2, 1, {
    name: 'neck_sts',
    note: 'Odd as the back is, so that both shoulders are alike.',
  }),
  formula('Shoulder stitches', '(back_sts - 2 * underarm_sts - neck_sts) / 2', { name: 'shoulder_sts' }),
  formula('Front neck stitches', 'front_sts - underarm_sts - shoulder_sts', { name: 'front_neck_sts' }),
];

const down: Cell[] = [
  formula('Body length', 'back_waist_length + CM(16)'),
  chosen('Depth of the hem', 'length', value(6), { name: 'hem_depth' }),
  formula('Stitches of the hem', 'ROUNDCOUNT(hem_depth * rib_sts)', { name: 'hem_sts' }),
  formula('Armhole', 'ARMHOLEDEPTH(armhole_depth + CM(2.5); upper_arm; CM(12))', {
    note: 'The chart’s depth and 2.5 cm, or half the upper arm and its ease where that is more.',
  }),
  formula(
    'Rows above the hem to the underarm',
    'ROUNDCOUNT((body_length - hem_sts / rib_sts - armhole) * body_rows; "even")',
    {
      name: 'lower_rows',
      note: 'Even, so that the underarm falls on a right-side row.',
    },
  ),
  formula('Rows of the armhole', 'ROUNDCOUNT(armhole * body_rows)', { name: 'armhole_rows' }),
  chosen('Rows the back neck is dropped', 'rows', value(2), {
    name: 'back_neck_rows',
    note: 'The back ends so many rows below the top of the shoulder, and the fronts reach as many beyond it.',
  }),
  chosen('Depth of the front neck', 'length', each(sizes, [7, 7, 7, 7.5, 7.5, 7.5, 8, 8, 8]), {
    name: 'neck_depth',
  }),
  formula('Rows to the front neck', 'ROUNDCOUNT((armhole - neck_depth) * body_rows; "even")', {
    name: 'upper_rows',
    note: 'Even, so that the neck begins on a right-side row.',
  }),
  formula('Rows of the front neck', 'armhole_rows + back_neck_rows - upper_rows', { name: 'neck_rows' }),
  formula('Left in the middle of the neck', 'ROUNDCOUNT(front_neck_sts / 3; "up")', {
    name: 'neck_first',
    note: 'About a third of the neck.',
  }),
  formula('Left on the next row', 'ROUNDCOUNT(front_neck_sts / 4)', { name: 'neck_second' }),
];

const supplies: Cell[] = [
  {
    kind: 'yarn',
    id: 'yarn',
    label: 'Yarn for the cardigan',
    name: 'yarn',
    uses: [
      { area: f('back_area + right_front_area + left_front_area + 2 * sleeve_area'), fabric: 'body' },
      { area: f('back_hem_area + 2 * front_hem_area + 2 * cuff_piece_area'), fabric: 'rib' },
      { area: f('neckband_area + button_band_area + buttonhole_band_area'), fabric: 'band' },
    ],
    reserve: value(0.1),
    ballGrams: value(50),
    ballLength: value(10_000),
  },
  {
    kind: 'notions',
    id: 'buttons',
    label: 'Buttons',
    name: 'buttons',
    sites: f('button_count'),
    every: value(1),
    startAt: value(1),
    each: value(0),
    waste: value(0),
  },
];

/** A cardigan with a round neck, buttoned bands and modified drop shoulders. */
export function cardigan(): Notebook {
  return {
    title: 'Saltmarsh cardigan',
    settings: usualSettings,
    sizes,
    sections: [
      { id: 'swatches', label: 'Swatches', cells: swatches },
      { id: 'measurements', label: 'Body measurements', cells: body },
      { id: 'across-section', label: 'Widths', cells: across },
      { id: 'down-section', label: 'Lengths', cells: down },
      { id: 'body-section', label: 'Back and fronts', cells: backAndFronts },
      { id: 'sleeve-section', label: 'Sleeves', cells: sleevesOf(sizes) },
      { id: 'edge-section', label: 'Bands', cells: edges },
      { id: 'supplies-section', label: 'Yarn and buttons', cells: supplies },
      { id: 'joins-section', label: 'Checks', cells: checks },
    ],
  };
}
