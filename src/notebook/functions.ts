import { area, length, mass, plain, rowGauge, rows, stitchGauge, stitches, type Unit } from './units';

/**
 * The functions a formula may use. What each computes is in `sheet/`; what a person is told of it is here,
 * where the tokenizer, the completion and the help can read it.
 */
export interface FunctionEntry {
  readonly name: string;
  readonly arguments: readonly Argument[];
  /** The last argument may be repeated. */
  readonly repeats?: true;
  readonly gives: Unit | 'any';
  readonly about: string;
  readonly example: string;
  readonly of: 'the trade' | 'the standard';
}

export interface Argument {
  readonly label: string;
  /** 'any' where the function has a rule of its own for units. */
  readonly unit: Unit | 'any';
  readonly optional?: true;
}

const given = (label: string, unit: Unit | 'any'): Argument => ({ label, unit });
const optional = (label: string, unit: Unit | 'any'): Argument => ({ label, unit, optional: true });

const trade: Omit<FunctionEntry, 'of'>[] = [
  {
    name: 'CM',
    arguments: [given('number', plain)],
    gives: length,
    about: 'A length in centimetres.',
    example: 'CM(10)',
  },
  {
    name: 'IN',
    arguments: [given('number', plain)],
    gives: length,
    about: 'A length in inches; one inch is 2.54 cm exactly.',
    example: 'IN(4)',
  },
  {
    name: 'STS',
    arguments: [given('number', plain)],
    gives: stitches,
    about: 'A number of stitches.',
    example: 'STS(2)',
  },
  {
    name: 'ROWS',
    arguments: [given('number', plain)],
    gives: rows,
    about: 'A number of rows or rounds.',
    example: 'ROWS(6)',
  },
  {
    name: 'GRAMS',
    arguments: [given('number', plain)],
    gives: mass,
    about: 'A weight in grams.',
    example: 'GRAMS(50)',
  },
  {
    name: 'GAUGE',
    arguments: [given('count', 'any'), given('over', length)],
    repeats: true,
    gives: 'any',
    about:
      'Stitches or rows to the length, from one reading of a swatch or several: all counts over all lengths.',
    example: 'GAUGE(STS(14); CM(10))',
  },
  {
    name: 'FABRIC',
    arguments: [given('stitch gauge', stitchGauge), given('row gauge', rowGauge)],
    gives: 'fabric',
    about: 'A fabric, as the stretches of a piece need it.',
    example: 'FABRIC(body_sts; body_rows)',
  },
  {
    name: 'FINISHED',
    arguments: [given('body', length), given('ease', length)],
    gives: length,
    about: 'A finished measurement: the body and the ease added to it, which may be negative.',
    example: 'FINISHED(bust; CM(10))',
  },
  {
    name: 'FINISHEDBY',
    arguments: [given('body', length), given('ease', plain)],
    gives: length,
    about: 'A finished measurement with ease as a share of the body: 10% is a tenth more.',
    example: 'FINISHEDBY(bust; 10%)',
  },
  {
    name: 'DROPSLEEVE',
    arguments: [given('neck to wrist', length), given('body width', length)],
    gives: length,
    about:
      'The length of a sleeve that begins where a dropped shoulder ends: half the body width is already on the way.',
    example: 'DROPSLEEVE(neck_to_wrist; back_width)',
  },
  {
    name: 'FITREPEAT',
    arguments: [
      given('wanted', 'any'),
      given('multiple', plain),
      given('plus', plain),
      optional('"nearest", "up" or "down"', 'text'),
    ],
    gives: 'any',
    about:
      'The count nearest to the wanted one that is a multiple of the repeat plus the edge; or the next up, or down.',
    example: 'FITREPEAT(finished_back * body_sts; 8; 3)',
  },
  {
    name: 'ROUNDCOUNT',
    arguments: [given('wanted', 'any'), optional('"nearest", "up", "down", "even" or "odd"', 'text')],
    gives: 'any',
    about:
      'A whole count from a wanted one: the nearest, the next up or down, or the nearest even or odd one.',
    example: 'ROUNDCOUNT(sleeve_length * cuff_rows; "even")',
  },
  {
    name: 'PICKUPSTITCHES',
    arguments: [
      given('row gauge of the edge', rowGauge),
      given('stitch gauge of what is picked up', stitchGauge),
    ],
    gives: stitches,
    about: 'How many stitches to pick up along every PICKUPROWS row ends, so that neither fabric puckers.',
    example: 'PICKUPSTITCHES(body_rows; sleeve_fabric_sts)',
  },
  {
    name: 'PICKUPROWS',
    arguments: [
      given('row gauge of the edge', rowGauge),
      given('stitch gauge of what is picked up', stitchGauge),
    ],
    gives: rows,
    about: 'The row ends along which PICKUPSTITCHES stitches are picked up.',
    example: 'PICKUPROWS(body_rows; sleeve_fabric_sts)',
  },
  {
    name: 'JOINARMHOLE',
    arguments: [
      given('rows of one side', rows),
      given('pick up', stitches),
      given('along every', rows),
      given('underarm', stitches),
      given('taken by the seam', stitches),
    ],
    gives: stitches,
    about:
      'Stitches picked up round an armhole: both sides at the ratio, the underarm, and what a seam will take.',
    example: 'JOINARMHOLE(ROWS(48); STS(2); ROWS(3); STS(10); STS(2))',
  },
  {
    name: 'EVENROWS',
    arguments: [given('rows', rows), given('fabric', 'fabric')],
    gives: 'stretch',
    about: 'A stretch of a piece worked without shaping.',
    example: 'EVENROWS(ROWS(24); body)',
  },
  {
    name: 'TAPERROWS',
    arguments: [
      given('to', stitches),
      given('over', rows),
      given('stitches per shaping row', stitches),
      given('on every row (1) or right-side rows (2)', plain),
      given('plain rows before', rows),
      given('plain rows after', rows),
      given('"longFirst", "shortFirst" or "spread"', 'text'),
      given('fabric', 'fabric'),
    ],
    gives: 'stretch',
    about: 'A stretch of a piece that comes to another count by shaping rows spread over its length.',
    example: 'TAPERROWS(STS(38); ROWS(60); STS(2); 1; ROWS(0); ROWS(2); "longFirst"; sleeve_fabric)',
  },
  {
    name: 'PIECE',
    arguments: [
      given('"flat" or "round"', 'text'),
      given('stitches to start', stitches),
      given('"bound off" or "held"', 'text'),
      given('stretch', 'stretch'),
    ],
    repeats: true,
    gives: 'piece',
    about: 'A piece: worked flat or in the round from a first count through its stretches, row by row.',
    example: 'PIECE("flat"; back_sts; "bound off"; EVENROWS(back_rows; body))',
  },
  {
    name: 'PIECELENGTH',
    arguments: [given('piece', 'piece')],
    gives: length,
    about: 'The length of a piece: the heights of its rows.',
    example: 'PIECELENGTH(sleeve)',
  },
  {
    name: 'PIECEROWS',
    arguments: [given('piece', 'piece')],
    gives: rows,
    about: 'The rows, or rounds, of a piece.',
    example: 'PIECEROWS(sleeve)',
  },
  {
    name: 'PIECEEND',
    arguments: [given('piece', 'piece')],
    gives: stitches,
    about: 'The stitches of the last row of a piece.',
    example: 'PIECEEND(sleeve)',
  },
  {
    name: 'PIECEWIDTH',
    arguments: [given('piece', 'piece'), given('at', length)],
    gives: length,
    about: 'The width of a piece at a length from its start; in the round, the circumference.',
    example: 'PIECEWIDTH(sleeve; CM(0))',
  },
  {
    name: 'PIECEAREA',
    arguments: [given('piece', 'piece')],
    gives: area,
    about: 'The area of a piece: width times height, row by row.',
    example: 'PIECEAREA(back)',
  },
  {
    name: 'PIECESTITCHES',
    arguments: [given('piece', 'piece')],
    gives: stitches,
    about: 'All the stitches worked in a piece.',
    example: 'PIECESTITCHES(back)',
  },
];

const value = given('value', 'any');
const standard: Omit<FunctionEntry, 'of'>[] = [
  {
    name: 'IF',
    arguments: [given('condition', 'truth'), given('then', 'any'), given('else', 'any')],
    gives: 'any',
    about: 'One result where a condition holds, another where it does not.',
    example: 'IF(bust > CM(110); STS(4); STS(2))',
  },
  {
    name: 'AND',
    arguments: [given('condition', 'truth')],
    repeats: true,
    gives: 'truth',
    about: 'Whether all conditions hold.',
    example: 'AND(back_sts > STS(40); back_sts < STS(90))',
  },
  {
    name: 'OR',
    arguments: [given('condition', 'truth')],
    repeats: true,
    gives: 'truth',
    about: 'Whether any condition holds.',
    example: 'OR(back_sts = STS(67); back_sts = STS(75))',
  },
  {
    name: 'NOT',
    arguments: [given('condition', 'truth')],
    gives: 'truth',
    about: 'Whether a condition does not hold.',
    example: 'NOT(back_sts = front_sts)',
  },
  {
    name: 'MIN',
    arguments: [value],
    repeats: true,
    gives: 'any',
    about: 'The least.',
    example: 'MIN(bust; hips)',
  },
  {
    name: 'MAX',
    arguments: [value],
    repeats: true,
    gives: 'any',
    about: 'The greatest.',
    example: 'MAX(bust; hips)',
  },
  {
    name: 'SUM',
    arguments: [value],
    repeats: true,
    gives: 'any',
    about: 'All added up.',
    example: 'SUM(left_front; back_width; right_front)',
  },
  {
    name: 'AVERAGE',
    arguments: [value],
    repeats: true,
    gives: 'any',
    about: 'The mean.',
    example: 'AVERAGE(bust; hips)',
  },
  {
    name: 'ABS',
    arguments: [value],
    gives: 'any',
    about: 'The size without its sign.',
    example: 'ABS(bust - hips)',
  },
  {
    name: 'INT',
    arguments: [value],
    gives: 'any',
    about: 'Rounded down to a whole number.',
    example: 'INT(finished_bust * body_sts)',
  },
  {
    name: 'ROUND',
    arguments: [value, optional('places', plain)],
    gives: 'any',
    about: 'Rounded to a number of decimal places.',
    example: 'ROUND(finished_bust * body_sts; 0)',
  },
  {
    name: 'ROUNDUP',
    arguments: [value, optional('places', plain)],
    gives: 'any',
    about: 'Rounded away from zero.',
    example: 'ROUNDUP(back_length * body_rows; 0)',
  },
  {
    name: 'ROUNDDOWN',
    arguments: [value, optional('places', plain)],
    gives: 'any',
    about: 'Rounded toward zero.',
    example: 'ROUNDDOWN(back_length * body_rows; 0)',
  },
  {
    name: 'MOD',
    arguments: [given('number', 'any'), given('divisor', 'any')],
    gives: 'any',
    about: 'What is left over.',
    example: 'MOD(back_sts; STS(8))',
  },
  {
    name: 'SQRT',
    arguments: [given('value', 'any')],
    gives: 'any',
    about: 'The square root.',
    example: 'SQRT(PIECEAREA(back))',
  },
  { name: 'TRUE', arguments: [], gives: 'truth', about: 'Yes.', example: 'TRUE()' },
  { name: 'FALSE', arguments: [], gives: 'truth', about: 'No.', example: 'FALSE()' },
  {
    name: 'PI',
    arguments: [],
    gives: plain,
    about: 'The ratio of a circumference to its diameter.',
    example: 'PI() * CM(18)',
  },
];

export const functions: readonly FunctionEntry[] = [
  ...trade.map((entry) => ({ ...entry, of: 'the trade' as const })),
  ...standard.map((entry) => ({ ...entry, of: 'the standard' as const })),
];

const byName = new Map(functions.map((entry) => [entry.name, entry]));

/** The entry of a function by its name, in any case; undefined where it is not offered. */
export function functionNamed(name: string): FunctionEntry | undefined {
  return byName.get(name.toUpperCase());
}
