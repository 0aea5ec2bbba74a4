import { charts } from '../craft';
import { usualSettings, type Cell, type Notebook, type Size } from '../notebook';
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
} from './cells';

/*
 * A scenario of our own: a jacket whose swatches, ease, cuffs and neck are invented. Body measurements follow the
 * women's chart; the hand is from a survey named in its note.
 */

const sizes: Size[] = charts.woman.sizes.map((size) => ({
  id: size.toLowerCase(),
  label: size,
  chart: { name: 'woman', size },
}));

const swatches: Cell[] = [
  swatch(
    'Body fabric',
    { worked: '6.5 mm hook, flat', stitches: 14, rows: 12, weighed: [24, 20, 62] },
    { name: 'body', note: 'It repeats over 8 stitches, with 3 more to balance the edges.' },
  ),
  swatch('Sleeve fabric', {
    worked: '5.5 mm hook, in the round',
    stitches: 16,
    rows: 14,
    weighed: [20, 20, 52],
  }),
  swatch(
    'Rib',
    { worked: '5 mm hook, post stitches', stitches: 17, rows: 13, weighed: [12, 12, 23] },
    { pulled: { relaxed: value(10), stretched: value(13.5) } },
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

const across: Cell[] = [
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
  formula('Front width', 'FRONTWIDTH(finished_bust; back_sts / body_sts; band_width; "edge to edge")', {
    note: 'What the back and the two bands leave of the bust, halved.',
  }),
  fit('Front stitches', 'front_width * body_sts', 8, 3, { name: 'front_sts' }),
  measure('Stitches left at each underarm', 'stitches', value(8), {
    name: 'underarm_sts',
    note: 'One whole repeat, so that the fabric above goes on in its repeat.',
  }),
];

const down: Cell[] = [
  formula('Body length', 'back_waist_length + CM(14)'),
  formula('Armhole', 'ARMHOLEDEPTH(armhole_depth; upper_arm; CM(10))', {
    note: 'The chart’s depth, or half the upper arm and its ease where that is more.',
  }),
  formula('Rows to the underarm', 'ROUNDCOUNT((body_length - armhole) * body_rows; "even")', {
    name: 'lower_rows',
  }),
  formula('Rows of the armhole', 'ROUNDCOUNT(armhole * body_rows; "even")', { name: 'armhole_rows' }),
  formula('Rows of the front neck', 'ROUNDCOUNT(CM(14) * body_rows; "even")', { name: 'neck_rows' }),
];

const backAndFronts: Cell[] = [
  formula('Repeats above the underarm, back', repeatsAbove('back', 2), { name: 'back_repeats' }),
  piece('Back', 'flat', 'back_sts', [
    even('Hem to underarm', 'body', 'lower_rows', 'lower'),
    {
      kind: 'leave',
      name: 'underarm',
      label: 'Underarms',
      fabric: 'body',
      atStart: f('underarm_sts'),
      atEnd: f('underarm_sts'),
    },
    {
      kind: 'eachRepeat',
      name: 'narrowed',
      label: 'Narrowed inside the repeats',
      fabric: 'body',
      repeats: f('back_repeats'),
      by: value(-1),
    },
    even('Underarm to shoulder', 'body', 'armhole_rows - 1', 'upper'),
  ]),
  chosen('Width of the neck', 'length', each(sizes, [17, 17, 17.5, 18, 18.5, 19, 19.5, 20, 20.5]), {
    name: 'neck_width',
  }),
  formula('Shoulder stitches', 'ROUNDCOUNT((back_end - neck_width * body_sts) / 2)', {
    name: 'shoulder_sts',
  }),
  formula('Back neck stitches', 'back_end - 2 * shoulder_sts', { name: 'neck_sts' }),
  formula('Repeats above the underarm, front', repeatsAbove('front', 1), { name: 'front_repeats' }),
  piece(
    'Front',
    'flat',
    'front_sts',
    [
      even('Hem to underarm', 'body', 'lower_rows', 'lower'),
      {
        kind: 'leave',
        name: 'underarm',
        label: 'Underarm',
        fabric: 'body',
        atStart: f('underarm_sts'),
        atEnd: value(0),
      },
      {
        kind: 'eachRepeat',
        name: 'narrowed',
        label: 'Narrowed inside the repeats',
        fabric: 'body',
        repeats: f('front_repeats'),
        by: value(-1),
      },
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

function repeatsAbove(part: 'back' | 'front', underarms: number): string {
  const left = underarms === 1 ? 'underarm_sts' : `${underarms} * underarm_sts`;
  return `(${part}_sts - STS(${part}_sts_plus) - ${left}) / STS(${part}_sts_multiple)`;
}

const sleeves: Cell[] = [
  formula(
    'Sleeve stitches picked up',
    'JOINARMHOLE(armhole_rows; PICKUPSTITCHES(body_rows; sleeve_fabric_sts); PICKUPROWS(body_rows; sleeve_fabric_sts); 2 * underarm_sts; STS(0))',
    { name: 'sleeve_sts', note: 'Along both sides of the armhole, and one for one at the underarm.' },
  ),
  chosen('Length of the cuff', 'length', value(6), { name: 'cuff_length' }),
  formula('Sleeve length above the cuff', 'DROPSLEEVE(neck_to_wrist; back_end_width) - cuff_length', {
    name: 'sleeve_wanted',
    note: 'On a dropped shoulder a wider body makes a shorter sleeve.',
  }),
  chosen('Round of the cuff', 'length', each(sizes, [22, 23, 24, 25, 26.5, 28, 29.5, 31, 32]), {
    name: 'cuff',
  }),
  fit('Cuff stitches', 'cuff * rib_sts', 4, 0, { name: 'cuff_sts' }),
  formula('Wrist stitches, before gathering', 'ROUNDCOUNT(cuff * 1.5 * sleeve_fabric_sts; "even")', {
    name: 'wrist_sts',
    note: 'Half as full again as the cuff; even, since each decrease round takes two stitches.',
  }),
  piece(
    'Sleeve',
    'round',
    'sleeve_sts',
    [
      {
        kind: 'taper',
        name: 'taper',
        label: 'Armhole to wrist',
        fabric: 'sleeve_fabric',
        to: f('wrist_sts'),
        over: f('ROUNDCOUNT(sleeve_wanted * sleeve_fabric_rows) - sleeve_gather_rounds'),
        perRow: value(2),
        every: 1,
        before: value(3),
        after: value(0),
        order: 'longFirst',
      },
      {
        kind: 'gather',
        name: 'gather',
        label: 'Gathered to the cuff',
        fabric: 'sleeve_fabric',
        to: f('cuff_sts'),
        rounds: value(2),
      },
      {
        kind: 'evenly',
        name: 'settle',
        label: 'First round of the rib',
        fabric: 'rib',
        to: f('cuff_sts'),
        ends: 'half',
      },
      even('Rib', 'rib', 'ROUNDCOUNT(cuff_length * rib_rows) - 1', 'rib'),
    ],
    { note: 'Work both sleeves alike.' },
  ),
];

const rowEnds = { pick: f('PICKUPSTITCHES(body_rows; rib_sts)'), of: f('PICKUPROWS(body_rows; rib_sts)') };
const slope = {
  length: f('SQRT(front_neck_length ^ 2 + (neck_sts / body_sts / 2) ^ 2)'),
  gauge: f('rib_sts'),
};

const edges: Cell[] = [
  pickUp(
    'Band',
    [
      {
        kind: 'rows',
        name: 'right_front',
        label: 'Right front',
        rows: f('front_rows - neck_rows'),
        ...rowEnds,
      },
      { kind: 'curve', name: 'right_neck', label: 'Right neck', ...slope },
      { kind: 'stitches', name: 'back_neck', label: 'Back neck', count: f('neck_sts') },
      { kind: 'curve', name: 'left_neck', label: 'Left neck', ...slope },
      {
        kind: 'rows',
        name: 'left_front',
        label: 'Left front',
        rows: f('front_rows - neck_rows'),
        ...rowEnds,
      },
    ],
    2,
    1,
    { name: 'band', note: 'Up the right front, round the neck and down the left front.' },
  ),
  piece('Band, worked', 'flat', 'band', [even('Rib', 'rib', 'ROUNDCOUNT(band_width * rib_rows)', 'rib')]),
  formula('Bust as worked', '(back_sts + 2 * front_sts) / body_sts + 2 * band_worked_length', {
    note: 'What the counts come to: back, both fronts and both bands, edge to edge.',
  }),
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
    label: 'Yarn for the jacket',
    name: 'yarn',
    uses: [
      { area: f('back_area + 2 * front_area'), fabric: 'body' },
      { area: f('2 * sleeve_area'), fabric: 'sleeve_fabric' },
      { area: f('band_worked_area + hem_border_worked_area'), fabric: 'rib' },
    ],
    reserve: value(0.1),
    ballGrams: value(50),
    ballLength: value(11_500),
    note: 'The cuffs are counted in with the sleeves.',
  },
  {
    kind: 'notions',
    id: 'ribbons',
    label: 'Ribbons at the hem',
    name: 'ribbons',
    sites: f('repeats_at_hem'),
    every: value(2),
    startAt: value(1),
    each: value(30),
    waste: value(0.1),
  },
];

const joins: Cell[] = [
  check(
    'Side seams',
    'JOINS(back_lower_worked_rows; front_lower_worked_rows)',
    'Back and front have other numbers of rows below the underarm, so the side seam will not lie flat.',
  ),
  check(
    'Back and front to the shoulder',
    // Equal, and no seam: each armhole takes a sleeve.
    'back_rows = front_rows',
    'Back and front have other numbers of rows, so the shoulders do not meet.',
  ),
  check(
    'Shoulders',
    'JOINS(shoulder_sts; front_end)',
    'The front shoulder has another count than the back shoulder.',
  ),
  check(
    'Cuff',
    'JOINS(sleeve_settle_last; cuff_sts)',
    'The sleeve does not come to the stitches of its cuff.',
    { name: 'cuff_joins' },
  ),
  check(
    'Sleeve in its armhole',
    'ABS(ARMHOLEFIT(sleeve_sts; sleeve_fabric_sts; 2 * armhole + 2 * underarm_sts / body_sts)) <= 8%',
    'The sleeve is more than 8 % off the armhole it grows from, so it will pucker or flare.',
  ),
  check(
    'Room for the arm',
    'sleeve_start_width >= upper_arm + CM(5)',
    'The sleeve is less than 5 cm wider than the upper arm.',
  ),
  check(
    'Hand through the cuff',
    'PASSES(cuff_sts; rib_sts; rib_stretch; hand)',
    'The cuff does not stretch far enough for the hand.',
  ),
];

/** A jacket with dropped shoulders, from hem to cuff, band and hem border. */
export function jacket(): Notebook {
  return {
    title: 'Slipway jacket',
    settings: usualSettings,
    sizes,
    sections: [
      { id: 'swatches', label: 'Swatches', cells: swatches },
      { id: 'measurements', label: 'Body measurements', cells: body },
      { id: 'across-section', label: 'Widths', cells: across },
      { id: 'down-section', label: 'Lengths', cells: down },
      { id: 'body-section', label: 'Back and fronts', cells: backAndFronts },
      { id: 'sleeve-section', label: 'Sleeves', cells: sleeves },
      { id: 'edge-section', label: 'Bands and borders', cells: edges },
      { id: 'supplies-section', label: 'Yarn and notions', cells: supplies },
      { id: 'joins-section', label: 'Joins', cells: joins },
    ],
  };
}
