import { bodySurvey } from '../craft';
import {
  usualSettings,
  type Cell,
  type Notebook,
  type Size,
  asMade,
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
} from '../notebook';

/*
 * A scenario of our own: a hat knit in the round from brim to crown. Swatches, depth and ease are invented; the heads
 * are the means of a survey named in their note.
 */

const sizes: Size[] = [
  { id: 'women', label: 'Women' },
  { id: 'men', label: 'Men' },
  { id: 'me', label: 'For me' },
];

const swatches: Cell[] = [
  swatch(
    'Rib',
    { worked: '3.5 mm needles, 2 by 2, in the round', stitches: 24, rows: 30, weighed: [20, 12, 11] },
    { pulled: { relaxed: value(10), stretched: value(15) } },
  ),
  swatch(
    'Hat fabric',
    { worked: '4 mm needles, stockinette in the round', stitches: 22, rows: 30, weighed: [20, 15, 11.5] },
    {
      name: 'fabric',
      note: 'Counted on a swatch knit in the round: flat knitting often has another row gauge.',
    },
  ),
];

const measures: Cell[] = [
  measure('Head', 'length', each(sizes, [bodySurvey.women.head.mean, bodySurvey.men.head.mean, 55]), {
    note: 'Round the widest part. Under “For me” type your own over what stands there. Women and Men: means of the ANSUR II survey (US Army, 2012, Natick/TR-15/007); braided hair was measured with the head, and there were no children.',
  }),
  chosen('Depth of the hat', 'length', each(sizes, [21, 22.5, 20.5]), {
    name: 'depth',
    note: 'From the edge of the brim to the middle of the crown.',
  }),
  chosen('Depth of the brim', 'length', value(5), { name: 'brim_depth' }),
];

const counts: Cell[] = [
  {
    kind: 'ease',
    id: 'round',
    label: 'Round of the hat',
    name: 'round',
    by: 'percent',
    body: f('head'),
    ease: value(-0.08),
    note: 'Less than the head: the fabric stretches to it, and stays on.',
  },
  fit('Stitches', 'round * fabric_sts', 8, 0, {
    name: 'hat_sts',
    note: 'A multiple of 8 makes a crown of 8 wedges, and has room for a rib of 2 by 2.',
  }),
  formula('Stitches of a wedge', 'hat_sts / hat_sts_multiple', { name: 'wedge_sts' }),
  formula('Rounds of the brim', 'ROUNDCOUNT(brim_depth * rib_rows)', { name: 'brim_rounds' }),
  measure('Wedge where every round is decreased', 'stitches', value(8), {
    name: 'steep_from',
    note: 'Down to so many stitches, every second round is decreased; from there to the end, every round.',
  }),
  formula('Wedge at the steep part of the crown', 'MIN(steep_from; wedge_sts)', {
    name: 'steep_sts',
    note: 'In thick wool the wedges are no wider to begin with: then every round is decreased from the start.',
  }),
  formula('Rounds decreased every second round', 'ROWS(2 * (wedge_sts - steep_sts) / STS(1))', {
    name: 'slow_rounds',
  }),
  formula('Rounds decreased every round', 'ROWS((steep_sts - STS(1)) / STS(1))', { name: 'steep_rounds' }),
  formula(
    'Rounds to the crown',
    'ROUNDCOUNT((depth - brim_rounds / rib_rows) * fabric_rows) - slow_rounds - steep_rounds',
    {
      name: 'even_rounds',
      note: 'What the brim and the crown leave of the depth.',
    },
  ),
];

const hat: Cell[] = [
  piece(
    'Hat',
    'round',
    'hat_sts',
    [
      even('Brim', 'rib', 'brim_rounds'),
      even('Brim to crown', 'fabric', 'even_rounds', 'side'),
      {
        kind: 'taper',
        name: 'crown',
        label: 'Crown, every second round',
        fabric: 'fabric',
        to: f('hat_sts_multiple * steep_sts'),
        over: f('slow_rounds'),
        perRow: f('STS(hat_sts_multiple)'),
        every: 1,
        before: value(0),
        after: value(0),
        order: 'longFirst',
      },
      {
        kind: 'taper',
        name: 'close',
        label: 'Crown, every round',
        fabric: 'fabric',
        to: f('STS(hat_sts_multiple)'),
        over: f('steep_rounds'),
        perRow: f('STS(hat_sts_multiple)'),
        every: 1,
        before: value(0),
        after: value(0),
        order: 'longFirst',
      },
    ],
    {
      ends: 'held',
      note: 'Draw the yarn through the last stitches, pull them together and fasten it inside.',
    },
  ),
];

const made: Cell[] = [
  asMade(
    'Round of the hat',
    'round',
    [['hat_side_last / fabric_sts', 1]],
    'STS(hat_sts_multiple) / fabric_sts / 2',
    { note: 'Above the brim, unstretched.' },
  ),
];

const supplies: Cell[] = [
  formula('Area of the brim', 'hat_start / rib_sts * hat_brim_length', {
    note: 'Unstretched, as its swatch was weighed.',
  }),
  {
    kind: 'yarn',
    id: 'yarn',
    label: 'Yarn for the hat',
    name: 'yarn',
    uses: [
      { area: f('hat_area - area_of_the_brim'), fabric: 'fabric' },
      { area: f('area_of_the_brim'), fabric: 'rib' },
    ],
    reserve: value(0.1),
    ballGrams: value(50),
    ballLength: value(11_000),
  },
];

const checks: Cell[] = [
  check(
    'Stitches left to draw together',
    'JOINS(hat_end; STS(hat_sts_multiple))',
    'The crown does not come down to one stitch of each wedge.',
  ),
  check(
    'Head through the brim',
    'PASSES(hat_sts; rib_sts; rib_stretch; head)',
    'The brim does not stretch far enough for the head.',
  ),
  check(
    'As deep as wanted',
    'ABS(hat_length - depth) <= CM(0.5)',
    'The hat is more than half a centimetre off the depth wanted: too few rounds are left between brim and crown.',
  ),
];

/** A hat knit in the round, its crown closed in eight wedges. */
export function hatCrown(): Notebook {
  return {
    title: 'A hat with eight wedges',
    settings: { ...usualSettings, craft: 'knitting' },
    sizes,
    sections: [
      { id: 'swatches', label: 'Swatches', cells: swatches },
      { id: 'measurements', label: 'Measurements', cells: measures },
      { id: 'counts-section', label: 'Stitches and rounds', cells: counts },
      { id: 'hat-section', label: 'Hat', cells: [...hat, ...made] },
      { id: 'supplies-section', label: 'Yarn', cells: supplies },
      { id: 'checks-section', label: 'Checks', cells: checks },
    ],
  };
}
