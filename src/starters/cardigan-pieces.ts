import {
  type Cell,
  type PieceStretch,
  type Size,
  chosen,
  each,
  even,
  f,
  fit,
  formula,
  pickUp,
  piece,
  value,
} from '../notebook';

const hemRows = (wide: string): string => `ROUNDCOUNT(${wide} / body_sts * rib_rows)`;
const alongHem = (label: string, sts: string, rows: string, name: string): Cell =>
  pickUp(
    label,
    [{ kind: 'rows', name: 'hem', label: 'Hem', rows: f(rows), pick: f(sts), of: f(rows) }],
    1,
    0,
    { name },
  );

/**
 * Stitches are left at the sides that rows begin and end on, so the first row is a right-side row in knitting too, where
 * it would come back over the pick-up: there the wrong side faces while stitches are picked up.
 */
const beginsRight = { startsOn: 'RS' } as const;

/** A front from its hem; seen from the right side, its armhole is where rows begin, or where they end. */
function front(label: string, armhole: 'start' | 'end'): Cell {
  const at = (where: 'start' | 'end', sts: string) => ({
    atStart: where === 'start' ? f(sts) : value(0),
    atEnd: where === 'end' ? f(sts) : value(0),
  });
  const neck = armhole === 'start' ? 'end' : 'start';
  const leave = (name: string, named: string, ends: ReturnType<typeof at>): PieceStretch => ({
    kind: 'leave',
    name,
    label: named,
    fabric: 'body',
    ...ends,
  });
  return piece(
    label,
    'flat',
    'front_along_hem',
    [
      even('Hem to underarm', 'body', 'lower_rows', 'lower'),
      leave('underarm', 'Underarm', at(armhole, 'underarm_sts')),
      even('Underarm to neck', 'body', 'upper_rows', 'upper'),
      leave('neck_first', 'Neck to shoulder', at(neck, 'neck_first')),
      { ...even('Neck to shoulder', 'body', '1', 'neck_row'), rows: value(1) } as PieceStretch,
      // The next row is a wrong-side row, and begins where the last one ended.
      leave('neck_second', 'Neck to shoulder', at(armhole, 'neck_second')),
      { ...even('Neck to shoulder', 'body', '1', 'next_row'), rows: value(1) } as PieceStretch,
      {
        kind: 'taper',
        name: 'neck',
        label: 'Neck to shoulder',
        fabric: 'body',
        to: f('shoulder_sts'),
        over: f('neck_rows - 2'),
        perRow: value(1),
        every: 1,
        before: value(0),
        after: value(2),
        order: 'shortFirst',
      },
    ],
    beginsRight,
  );
}

/** Hems, back and fronts. */
export const backAndFronts: readonly Cell[] = [
  piece('Back hem', 'flat', 'hem_sts', [even('Rib', 'rib', hemRows('back_sts'))], {
    note: 'Its rows run up the body; the back is worked along one of its long edges.',
  }),
  alongHem('Back along its hem', 'back_sts', 'back_hem_rows', 'back_along_hem'),
  piece(
    'Back',
    'flat',
    'back_along_hem',
    [
      even('Hem to underarm', 'body', 'lower_rows', 'lower'),
      {
        kind: 'leave',
        name: 'underarm',
        label: 'Underarms',
        fabric: 'body',
        atStart: f('underarm_sts'),
        atEnd: f('underarm_sts'),
      },
      even('Underarm to shoulder', 'body', 'armhole_rows - back_neck_rows', 'upper'),
    ],
    {
      ...beginsRight,
      note: 'The stitches between the shoulders are the back neck: put markers in the first and the last of them.',
    },
  ),
  piece('Front hem', 'flat', 'hem_sts', [even('Rib', 'rib', hemRows('front_sts'))], {
    note: 'Make two, one for each front.',
  }),
  alongHem('Front along its hem', 'front_sts', 'front_hem_rows', 'front_along_hem'),
  front('Right front', 'end'),
  front('Left front', 'start'),
];

/** Cuff and sleeve. */
export const sleevesOf = (sizes: readonly Size[]): readonly Cell[] => [
  chosen('Length of the cuff', 'length', value(6), { name: 'cuff_length' }),
  chosen('Round of the cuff', 'length', each(sizes, [18, 18.5, 19.5, 20.5, 21.5, 23, 24.5, 25.5, 26.5]), {
    name: 'cuff',
  }),
  formula('Stitches of the cuff', 'ROUNDCOUNT(cuff_length * rib_sts)', { name: 'cuff_sts' }),
  piece('Cuff', 'flat', 'cuff_sts', [even('Rib', 'rib', 'SIDEWAYSRIB(cuff; rib_rows)')], {
    name: 'cuff_piece',
    note: 'Make two.',
  }),
  fit('Sleeve stitches at the top', '2 * armhole_rows / body_rows * body_sts', 2, 1, {
    name: 'sleeve_sts',
    note: 'Twice the depth of the armhole.',
  }),
  formula('Sleeve length', 'DROPSLEEVE(neck_to_wrist; back_end_width)', {
    name: 'sleeve_wanted',
    note: 'Where the shoulder reaches down the arm, a wider body makes a shorter sleeve.',
  }),
  formula('Rows sewn to the underarm', 'ROUNDCOUNT(underarm_sts / body_sts * body_rows)', {
    name: 'sewn_rows',
  }),
  formula('Rows of the taper', 'ROUNDCOUNT((sleeve_wanted - cuff_sts / rib_sts) * body_rows) - sewn_rows', {
    name: 'taper_rows',
  }),
  pickUp(
    'Wrist stitches',
    [{ kind: 'rows', name: 'cuff', label: 'Cuff', rows: f('cuff_piece_rows'), pick: value(6), of: value(5) }],
    2,
    1,
    {
      name: 'wrist_sts',
      note: 'A fifth more than the rows of the cuff, so that the sleeve is a little fuller.',
    },
  ),
  piece(
    'Sleeve',
    'flat',
    'wrist_sts',
    [
      {
        kind: 'taper',
        name: 'taper',
        label: 'Cuff to underarm',
        fabric: 'body',
        to: f('sleeve_sts'),
        over: f('taper_rows'),
        perRow: value(2),
        every: 1,
        before: value(1),
        after: value(0),
        order: 'longFirst',
      },
      even('Sewn to the underarm', 'body', 'sewn_rows', 'sewn'),
    ],
    {
      note: 'Make two. Sew the last row to the rows of the armhole, its middle halfway round them, which is a little in front of the shoulder seam; sew the rows worked even at the end to the stitches left at the underarm. Then join the edges of the sleeve, and the ends of its cuff.',
    },
  ),
];
