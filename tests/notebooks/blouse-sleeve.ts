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
  piece,
  swatch,
  value,
} from '../../src/notebook/cell-builders';

/*
 * A sleeve for tests, invented: the gathered sleeve of a small child's blouse, picked up round an armhole, worked in the
 * round down to a cuff. A child's sizes show their cautions, and its buttons are notions that can come off.
 */

const sizes: Size[] = charts.child.sizes
  .slice(0, 4)
  .map((size) => ({ id: `c${size}`, label: `Child ${size}`, chart: { name: 'child', size } }));

const swatches: Cell[] = [
  swatch('Body fabric', { worked: '5 mm hook, flat', stitches: 16, rows: 13 }, { name: 'body' }),
  swatch('Sleeve fabric', {
    worked: '4.5 mm hook, in the round',
    stitches: 18,
    rows: 15,
    weighed: [12, 12, 10],
  }),
  swatch(
    'Rib',
    { worked: '4 mm hook, post stitches', stitches: 20, rows: 16, weighed: [10, 10, 8] },
    { pulled: { relaxed: value(10), stretched: value(13.5) } },
  ),
];

const measures: Cell[] = [
  charted('Neck to wrist', 'neckToWrist'),
  charted('Upper arm', 'upperArm'),
  charted('Armhole depth', 'armholeDepth'),
  measure('Hand', 'length', each(sizes, [12.5, 13.5, 14.5, 15.5]), { note: 'Invented: measure the child.' }),
  chosen('Width of the back', 'length', each(sizes, [30, 32, 34, 36]), { name: 'back_width' }),
  measure('Stitches left at the underarm', 'stitches', value(4), { name: 'underarm_sts' }),
  formula('Rows of the armhole', 'ROUNDCOUNT(armhole_depth * body_rows; "even")', { name: 'armhole_rows' }),
  chosen('Length of the cuff', 'length', value(3), { name: 'cuff_length' }),
  chosen('Round of the cuff', 'length', each(sizes, [13, 13.5, 14, 15]), { name: 'cuff' }),
];

const sleeve: Cell[] = [
  formula(
    'Sleeve stitches picked up',
    'JOINARMHOLE(armhole_rows; PICKUPSTITCHES(body_rows; sleeve_fabric_sts); PICKUPROWS(body_rows; sleeve_fabric_sts); 2 * underarm_sts; STS(0))',
    { name: 'sleeve_sts', note: 'Along both sides of the armhole, and one for one at the underarm.' },
  ),
  formula('Sleeve length above the cuff', 'DROPSLEEVE(neck_to_wrist; back_width) - cuff_length', {
    name: 'sleeve_wanted',
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

const supplies: Cell[] = [
  {
    kind: 'yarn',
    id: 'yarn',
    label: 'Yarn for the sleeves',
    name: 'yarn',
    uses: [{ area: f('2 * sleeve_area'), fabric: 'sleeve_fabric' }],
    reserve: value(0.1),
    ballGrams: value(50),
    ballLength: value(12_000),
  },
  {
    kind: 'notions',
    id: 'buttons',
    label: 'Buttons at the cuffs',
    name: 'buttons',
    sites: value(2),
    every: value(1),
    startAt: value(1),
    each: value(0),
    waste: value(0),
  },
];

const checks: Cell[] = [
  check(
    'Cuff',
    'JOINS(sleeve_settle_last; cuff_sts)',
    'The sleeve does not come to the stitches of its cuff.',
    { name: 'cuff_joins' },
  ),
  check(
    'Sleeve in its armhole',
    'ABS(ARMHOLEFIT(sleeve_sts; sleeve_fabric_sts; 2 * armhole_rows / body_rows + 2 * underarm_sts / body_sts)) <= 8%',
    'The sleeve is more than 8 % off the armhole it grows from, so it will pucker or flare.',
  ),
  check(
    'Room for the arm',
    'sleeve_start_width >= upper_arm + CM(3)',
    'The sleeve is less than 3 cm wider than the upper arm.',
  ),
  check(
    'Hand through the cuff',
    'PASSES(cuff_sts; rib_sts; rib_stretch; hand)',
    'The cuff does not stretch far enough for the hand.',
  ),
];

/** The gathered sleeve of a small child's blouse, in four sizes that follow the child's chart. */
export function blouseSleeve(): Notebook {
  return {
    title: 'Puddle blouse, its sleeve',
    settings: usualSettings,
    sizes,
    sections: [
      { id: 'swatches', label: 'Swatches', cells: swatches },
      { id: 'measurements', label: 'Measurements', cells: measures },
      { id: 'sleeve-section', label: 'Sleeve', cells: sleeve },
      { id: 'supplies-section', label: 'Yarn and notions', cells: supplies },
      { id: 'joins-section', label: 'Joins', cells: checks },
    ],
  };
}
