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
  formula,
  measure,
  piece,
  swatch,
  value,
} from '../notebook';

/*
 * A scenario of our own: one sleeve to learn on, in a size M and in a size of one's own. Every number is invented
 * except where a note names its source.
 */

const sizes: Size[] = [
  { id: 'm', label: 'M' },
  { id: 'me', label: 'For me' },
];
const typed = (m: number, me: number) => each(sizes, [m, me]);

const swatches: Cell[] = [
  swatch(
    'Sleeve fabric',
    { worked: '5 mm hook, flat rows', stitches: 15, rows: 12, weighed: [20, 20, 18] },
    { name: 'fabric' },
  ),
  swatch(
    'Rib',
    { worked: '4.5 mm hook, post stitches', stitches: 16, rows: 13, weighed: [15, 10, 10] },
    { pulled: { relaxed: value(10), stretched: value(13) } },
  ),
];

const body: Cell[] = [
  measure('Upper arm', 'length', typed(28, 31), {
    note: 'Round the fullest part, relaxed. Under “For me” type your own over what stands there.',
  }),
  measure('Wrist', 'length', typed(15.5, 16.5), {
    note: 'M: the mean of the women of the ANSUR II survey (US Army, 2012), to the nearest half centimetre.',
  }),
  measure('Hand', 'length', typed(20.2, 19.5), {
    note: 'Round the knuckles. M: 95 of 100 women of the ANSUR II survey measure no more than this.',
  }),
  measure('Underarm to wrist', 'length', typed(43, 41)),
];

const counts: Cell[] = [
  {
    kind: 'ease',
    id: 'sleeve-top',
    label: 'Width at the underarm',
    name: 'sleeve_top',
    by: 'length',
    body: f('upper_arm'),
    ease: value(6),
  },
  {
    kind: 'ease',
    id: 'cuff',
    label: 'Round of the cuff',
    name: 'cuff',
    by: 'length',
    body: f('wrist'),
    ease: value(2),
  },
  chosen('Length of the cuff', 'length', value(6), { name: 'cuff_length' }),
  formula('Cuff stitches', 'ROUNDCOUNT(cuff * rib_sts; "even") + 2 * seam_sts', {
    name: 'cuff_sts',
    note: 'Even, so that front and back post stitches alternate to the end; with the stitches of the seam.',
  }),
  formula('Stitches above the cuff', 'ROUNDCOUNT(cuff * 1.15 * fabric_sts; "even") + 2 * seam_sts', {
    name: 'above_sts',
    note: 'A little fuller than the cuff; with the stitches of the seam.',
  }),
  formula('Stitches at the underarm', 'ROUNDCOUNT(sleeve_top * fabric_sts; "even") + 2 * seam_sts', {
    name: 'top_sts',
    note: 'Even like the stitches above the cuff, since each shaping row adds two; with the stitches of the seam.',
  }),
  measure('Stitches in the seam, each side', 'stitches', value(1), { name: 'seam_sts' }),
  formula('Rows of the cuff', 'ROUNDCOUNT(cuff_length * rib_rows; "even")', { name: 'cuff_rows' }),
  formula(
    'Rows above the cuff',
    'ROUNDCOUNT((underarm_to_wrist - cuff_rows / rib_rows) * fabric_rows; "even")',
    {
      name: 'rows_above',
      note: 'What the rows of the cuff leave of the length, so that what one rounds off the other makes up.',
    },
  ),
];

const sleeve: Cell[] = [
  piece('Sleeve', 'flat', 'cuff_sts', [
    even('Cuff', 'rib', 'cuff_rows', 'cuff'),
    {
      kind: 'evenly',
      name: 'above',
      label: 'First row above the cuff',
      fabric: 'fabric',
      to: f('above_sts'),
      ends: 'half',
    },
    {
      kind: 'taper',
      name: 'taper',
      label: 'Cuff to underarm',
      fabric: 'fabric',
      to: f('top_sts'),
      over: f('rows_above - 1'),
      perRow: value(2),
      every: 2,
      before: value(1),
      after: value(4),
      order: 'longFirst',
    },
  ]),
];

const made: Cell[] = [
  asMade('Round of the cuff', 'cuff', [['sleeve_start_width', 1]], 'STS(2) / rib_sts / 2', {
    closes: 'seamed',
    less: 'SEAMSTAKE(1; seam_sts; rib_sts)',
  }),
  asMade('Width at the underarm', 'sleeve_top', [['sleeve_end_width', 1]], 'STS(2) / fabric_sts / 2', {
    closes: 'seamed',
    less: 'SEAMSTAKE(1; seam_sts; fabric_sts)',
  }),
];

const supplies: Cell[] = [
  formula('Area of the cuff', 'sleeve_start / rib_sts * sleeve_cuff_length', {
    note: 'Unstretched, as its swatch was weighed.',
  }),
  {
    kind: 'yarn',
    id: 'yarn',
    label: 'Yarn for one sleeve',
    name: 'yarn',
    uses: [
      { area: f('sleeve_area - area_of_the_cuff'), fabric: 'fabric' },
      { area: f('area_of_the_cuff'), fabric: 'rib' },
    ],
    reserve: value(0.1),
    ballGrams: value(50),
    ballLength: value(9_000),
    note: 'A pair takes twice as many grams; round them up to balls only then.',
  },
];

const checks: Cell[] = [
  check(
    'Room for the arm',
    'SEAMEDWIDTH(sleeve_end; 1; seam_sts; fabric_sts) >= upper_arm + CM(5)',
    'Sewn up, the sleeve is less than 5 cm wider than the upper arm.',
  ),
  check(
    'Hand through the cuff',
    'PASSES(cuff_sts - 2 * seam_sts; rib_sts; rib_stretch; hand)',
    'The cuff does not stretch far enough for the hand.',
  ),
];

/** One sleeve worked flat from its cuff up, to be made to one's own measure. */
export function singleSleeve(): Notebook {
  return {
    title: 'A sleeve to measure',
    settings: usualSettings,
    sizes,
    sections: [
      { id: 'swatches', label: 'Swatches', cells: swatches },
      { id: 'measurements', label: 'Body measurements', cells: body },
      { id: 'counts-section', label: 'Stitches and rows', cells: counts },
      { id: 'sleeve-section', label: 'Sleeve', cells: [...sleeve, ...made] },
      { id: 'supplies-section', label: 'Yarn', cells: supplies },
      { id: 'checks-section', label: 'Checks', cells: checks },
    ],
  };
}
