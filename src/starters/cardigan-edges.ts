import { type Cell, asMade, check, chosen, even, f, formula, pickUp, piece, value } from '../notebook';

/** A front band, fitted so that the buttonholes have even gaps; its parts in the order they are picked up. */
function frontBand(
  label: string,
  front: 'left_front' | 'right_front',
  order: readonly ('hem' | 'front' | 'neckband')[],
  name: string,
): Cell {
  const parts = {
    hem: { kind: 'stitches', name: 'hem', label: 'Hem', count: f('front_hem_end') },
    front: {
      kind: 'rows',
      name: 'front',
      label: 'Front',
      rows: f(`${front}_lower_worked_rows + ${front}_upper_worked_rows`),
      pick: f('PICKUPSTITCHES(body_rows; band_sts)'),
      of: f('PICKUPROWS(body_rows; band_sts)'),
    },
    neckband: {
      kind: 'rows',
      name: 'neckband',
      label: 'Neckband',
      rows: f('neckband_rows'),
      pick: f('PICKUPSTITCHES(band_rows; band_sts)'),
      of: f('PICKUPROWS(band_rows; band_sts)'),
    },
  } as const;
  const cell = pickUp(
    label,
    order.map((part) => parts[part]),
    1,
    0,
    {
      name,
      note: 'So many that the gaps between the buttonholes are all alike.',
    },
  );
  return {
    ...cell,
    multiple: f('button_count - 1'),
    plus: f('(2 * hole_ends + button_count * hole_sts) / STS(1)'),
  } as Cell;
}

/** Neckband, front bands and buttonholes. */
export const edges: readonly Cell[] = [
  formula('Rows of the neckband', 'ROUNDCOUNT(CM(2.2) * band_rows)', { name: 'neckband_deep' }),
  formula('Length of the front neck edge', 'EDGELENGTH(right_front; "right"; 4; 8)', {
    name: 'neck_edge',
    note: 'Along its rows: across the stitches left, aslant where one is taken, up where it is straight.',
  }),
  formula('Picked up along each front neck', 'ROUNDCOUNT(neck_edge * band_sts)', { name: 'neck_side' }),
  pickUp(
    'Neckband stitches',
    [
      {
        kind: 'curve',
        name: 'right_neck',
        label: 'Right front neck',
        length: f('neck_edge'),
        gauge: f('neck_side / neck_edge'),
      },
      { kind: 'stitches', name: 'back_neck', label: 'Back neck', count: f('back_end - 2 * shoulder_sts') },
      {
        kind: 'curve',
        name: 'left_neck',
        label: 'Left front neck',
        length: f('EDGELENGTH(left_front; "left"; 4; 8)'),
        gauge: f('neck_side / neck_edge'),
      },
    ],
    1,
    0,
    { name: 'neckband_sts' },
  ),
  piece('Neckband', 'flat', 'neckband_sts', [even('Band', 'band', 'neckband_deep')]),
  chosen('Number of buttons', 'number', value(7), { name: 'button_count' }),
  chosen('Width of a buttonhole', 'stitches', value(2), { name: 'hole_sts' }),
  chosen('Plain before the first buttonhole', 'stitches', value(3), { name: 'hole_ends' }),
  frontBand('Left band stitches', 'left_front', ['neckband', 'front', 'hem'], 'left_band'),
  piece('Button band', 'flat', 'left_band', [even('Band', 'band', 'band_deep')], {
    note: 'Down the left front. Sew a button on it opposite each buttonhole.',
  }),
  frontBand('Right band stitches', 'right_front', ['hem', 'front', 'neckband'], 'right_band'),
  piece(
    'Buttonhole band',
    'flat',
    'right_band',
    [
      even('Before the buttonholes', 'band', 'ROUNDCOUNT(band_deep / 2; "even")', 'before'),
      even('Buttonholes', 'band', 'band_deep - ROUNDCOUNT(band_deep / 2; "even")', 'holes'),
    ],
    { note: 'Up the right front.' },
  ),
  formula(
    'Places of the buttonholes',
    'BUTTONHOLES(buttonhole_band_holes_last; hole_ends; button_count; hole_sts)',
    {
      name: 'buttonhole_places',
      note: 'Counted from the hem.',
    },
  ),
  formula(
    'From buttonhole to buttonhole',
    '(right_band - 2 * hole_ends - hole_sts) / (button_count - 1) / band_sts',
    { name: 'button_spacing' },
  ),
  asMade(
    'Finished bust',
    'finished_bust',
    [
      ['back_start_width', 1],
      ['right_front_start_width', 1],
      ['left_front_start_width', 1],
      ['button_band_length', 1],
    ],
    'STS(2) / body_sts / 2',
    {
      name: 'bust_made',
      note: 'Back, both fronts, and one band over the other. The back goes in twos, so a step is two stitches.',
    },
  ),
  asMade(
    'Finished length',
    'body_length',
    [
      ['back_hem_start_width', 1],
      ['back_length', 1],
      ['back_neck_rows / body_rows', 1],
    ],
    'ROWS(3) / body_rows / 2',
    {
      name: 'length_made',
      note: 'From the top of the shoulder, with the hem. Rows to the underarm go in twos, and those of the armhole are rounded.',
    },
  ),
  asMade(
    'Finished sleeve',
    'sleeve_wanted',
    [
      ['cuff_piece_start_width', 1],
      ['sleeve_length', 1],
    ],
    'ROWS(1) / body_rows / 2',
    { name: 'sleeve_made', note: 'From the edge of the shoulder, with the cuff.' },
  ),
];

/** What has to hold in every size of the cardigan, and across its sizes. */
export const checks: readonly Cell[] = [
  check(
    'Bust as wanted',
    'ABS(bust_made - finished_bust) <= CM(1)',
    'The counts give a bust more than 1 cm off the one wanted: this size would grow too much, or too little.',
  ),
  check('Bust from size to size', 'bust_made', 'The bust does not grow from the size before to this one.', {
    across: 'grow',
  }),
  check(
    'Fronts meet',
    'ABS((2 * front_sts - back_sts) / body_sts + button_band_length) <= CM(1.5)',
    'Buttoned, the fronts are more than 1.5 cm wider or narrower than the back, so the side seams do not hang at the sides.',
  ),
  check(
    'Side seams',
    'JOINS(back_lower_worked_rows; right_front_lower_worked_rows; left_front_lower_worked_rows)',
    'Back and fronts have other numbers of rows below the underarm, so the side seam will not lie flat.',
  ),
  check(
    'Hems at the sides',
    'JOINS(back_hem_end; front_hem_start)',
    'The hems of back and fronts have other numbers of stitches where they meet at the sides.',
  ),
  check(
    'Shoulders',
    'JOINS((back_end - neck_sts) / 2; right_front_end; left_front_end)',
    'The front shoulder has another count than the back shoulder.',
  ),
  check(
    'Shoulders and neck',
    'back_end = 2 * shoulder_sts + neck_sts',
    'Both shoulders and the neck are not the stitches of the back.',
  ),
  check(
    'Fronts over the shoulder',
    'right_front_rows = back_rows + 2 * back_neck_rows',
    'The fronts do not reach over the shoulder by the rows the back neck is dropped.',
  ),
  check(
    'Neck, front and back',
    'ABS(2 * front_neck_sts / body_sts + button_band_length - neck_sts / body_sts) <= CM(1.5)',
    'The fronts and a band leave another width for the neck than the back does.',
  ),
  check('Armhole from size to size', 'armhole_rows', 'The armhole is no deeper than in the size before.', {
    across: 'grow',
  }),
  check(
    'Sleeve in its armhole',
    'ABS(sleeve_end_width - 2 * armhole_rows / body_rows) <= CM(1)',
    'The top of the sleeve is more than 1 cm off the armhole, so it will pucker or flare.',
  ),
  check(
    'Sleeve at the underarm',
    'ABS(sleeve_sewn_length - underarm_sts / body_sts) <= CM(0.5)',
    'The rows at the end of the sleeve are more than 0.5 cm off the stitches left at the underarm.',
  ),
  check(
    'Room for the arm',
    'sleeve_end_width >= upper_arm + CM(5)',
    'The sleeve is less than 5 cm wider than the upper arm.',
  ),
  check(
    'Hand through the cuff',
    'cuff_piece_length * rib_stretch >= hand',
    'The cuff does not stretch far enough for the hand.',
  ),
  check(
    'Neck edges',
    'ABS(neck_edge - EDGELENGTH(left_front; "left"; 4; 8)) <= CM(0.1)',
    'The neck edges of the two fronts are not of one length.',
  ),
  check('Front bands', 'left_band = right_band', 'The two front bands have other counts.'),
  check(
    'Buttons',
    'AND(button_spacing >= CM(6); button_spacing <= CM(10))',
    'The buttons are closer than 6 cm, or further apart than 10 cm, where the band gapes.',
    { name: 'buttons_spaced' },
  ),
];
