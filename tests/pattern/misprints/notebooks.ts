import { usualSettings, type Cell, type Notebook, type PieceStretch, type Size } from '../../../src/notebook';
import { hatCrown } from '../../../src/starters/hat-crown';
import { singleSleeve } from '../../../src/starters/single-sleeve';
import { adaptedPullover } from '../../../src/starters/adapted-pullover';
import {
  check,
  chosen,
  each,
  even,
  f,
  formula,
  measure,
  pickUp,
  piece,
  swatch,
  value,
} from '../../../src/notebook/cell-builders';

/*
 * Notebooks whose patterns are misprinted. A vest of our own has what the starters lack: stitches held and taken up
 * again, an edge of every kind, bands, buttons and cords, and nine sizes or one.
 */

const labels = ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X'];

const taper = (label: string, name: string, to: string, over: string, perRow: number): PieceStretch => ({
  kind: 'taper',
  name,
  label,
  fabric: 'body',
  to: f(to),
  over: f(over),
  perRow: value(perRow),
  every: 2,
  before: value(1),
  after: value(2),
  order: 'longFirst',
});

const leave = (label: string, name: string, atStart: string, atEnd: string): PieceStretch => ({
  kind: 'leave',
  name,
  label,
  fabric: 'body',
  atStart: f(atStart),
  atEnd: f(atEnd),
});

function vestCells(sizes: readonly Size[], craft: 'crochet' | 'knitting'): Cell[] {
  const tool = craft === 'crochet' ? 'hook' : 'needles';
  const stitch = craft === 'crochet' ? 'hdc' : 'stockinette';
  const bySize = (from: number, step: number) =>
    each(
      sizes,
      sizes.map((_size, at) => from + at * step),
    );
  return [
    {
      ...swatch(
        'Body fabric',
        { worked: `4.5 mm ${tool}`, stitches: 20, rows: 28, weighed: [15, 15, 9] },
        { name: 'body' },
      ),
      stitch,
    } as Cell,
    swatch(
      'Rib',
      { worked: `3.75 mm ${tool}`, stitches: 22, rows: 30, weighed: [15, 12, 8] },
      { name: 'rib' },
    ),
    measure('Bust', 'length', bySize(76, 10.3)),
    {
      kind: 'ease',
      id: 'chest',
      label: 'Finished bust',
      name: 'chest',
      by: 'length',
      body: f('bust'),
      ease: value(7),
    },
    chosen('Half', 'stitches', bySize(80, 10), { name: 'half' }),
    chosen('Underarm', 'stitches', bySize(5, 1), { name: 'under' }),
    chosen('Straight', 'rows', bySize(70, 2), { name: 'straight' }),
    chosen('Depth', 'rows', bySize(40, 2), { name: 'depth' }),
    piece(
      'Back',
      'flat',
      'half',
      [
        even('Hem', 'rib', 'ROWS(12)', 'hem'),
        even('Hem to underarm', 'body', 'straight', 'lower'),
        leave('Underarms', 'under', 'under', 'under'),
        even('Armhole', 'body', 'depth', 'upper'),
        taper('Shoulders', 'slope', 'half - 2 * under - STS(12)', 'ROWS(18)', 2),
      ],
      { ends: 'held', note: 'Press it flat, 2 times, under a damp cloth.' },
    ),
    piece('Front', 'flat', 'half', [
      even('Hem', 'rib', 'ROWS(12)', 'hem'),
      even('Hem to underarm', 'body', 'straight', 'lower'),
      leave('Underarms', 'under', 'under', 'under'),
      {
        kind: 'evenly',
        name: 'ease',
        label: 'Armhole',
        fabric: 'body',
        to: f('half - 2 * under - STS(4)'),
        ends: 'half',
      },
      even('Armhole', 'body', 'depth - 1', 'upper'),
    ]),
    formula('Collar stitches', 'STS(30)', { name: 'collar_sts' }),
    piece('Strap', 'flat', 'back_end - collar_sts', [
      even('Strap', 'body', 'ROWS(6)', 'strap'),
      taper('Neck edge of the strap', 'neck', 'back_end - collar_sts - STS(4)', 'ROWS(20)', 1),
    ]),
    piece('Armhole facing', 'round', 'JOINARMHOLE(depth; 3; 4; 2 * under; STS(0))', [
      even('Facing', 'rib', 'ROWS(4)', 'facing'),
      {
        kind: 'gather',
        name: 'draw',
        label: 'Drawn in',
        fabric: 'rib',
        to: f('JOINARMHOLE(depth; 3; 4; 2 * under; STS(0)) - STS(12)'),
        rounds: value(1),
      },
    ]),
    pickUp(
      'Band',
      [
        {
          kind: 'rows',
          name: 'right',
          label: 'Right front',
          rows: f('straight'),
          pick: value(3),
          of: value(4),
        },
        { kind: 'curve', name: 'neck', label: 'Right neck', length: bySize(14.6, 0.7), gauge: f('rib_sts') },
        { kind: 'stitches', name: 'back', label: 'Back neck', count: f('collar_sts') },
        { kind: 'motifs', name: 'motifs', label: 'Shells of the hem', motifs: bySize(7, 1), each: value(6) },
      ],
      2,
      1,
      { name: 'band' },
    ),
    piece('Button band', 'flat', 'band', [even('Band', 'rib', 'ROWS(9)', 'band')]),
    {
      kind: 'notions',
      id: 'buttons',
      label: 'Buttons',
      name: 'buttons',
      sites: bySize(12, 2),
      every: value(2),
      startAt: value(1),
      each: value(0),
      waste: value(0),
    },
    {
      kind: 'notions',
      id: 'cords',
      label: 'Cords',
      name: 'cords',
      sites: bySize(4, 1),
      every: value(1),
      startAt: value(1),
      each: value(32.5),
      waste: value(0.1),
    },
    {
      kind: 'yarn',
      id: 'yarn',
      label: 'Wool',
      name: 'wool',
      uses: [
        { area: f('back_area + front_area'), fabric: 'body' },
        { area: f('button_band_area'), fabric: 'rib' },
      ],
      reserve: value(0.125),
      ballGrams: value(50),
      ballLength: value(12_500),
    },
    check('Side seams', 'JOINS(back_hem_rows + back_lower_rows; front_hem_rows + front_lower_rows)', 'No.'),
    check('Shoulders', 'JOINS(strap_end; front_end - STS(42))', 'No.'),
  ];
}

/** A vest in so many sizes. */
export function vest(
  craft: 'crochet' | 'knitting',
  many: number,
  settings: Partial<Notebook['settings']> = {},
): Notebook {
  const sizes = labels.slice(0, many).map((label): Size => ({ id: label.toLowerCase(), label }));
  return {
    title: 'A vest with bands',
    settings: { ...usualSettings, craft, ...settings },
    sizes,
    sections: [{ id: 'all', label: '', cells: vestCells(sizes, craft) }],
  };
}

/** A band with buttonholes on a row of its own. */
function buttonBand(settings: Partial<Notebook['settings']>): Notebook {
  const sizes = labels.slice(0, 3).map((label): Size => ({ id: label.toLowerCase(), label }));
  const cells = [
    {
      ...swatch('Rib', { worked: '4 mm hook', stitches: 18, rows: 20 }, { name: 'rib' }),
      stitch: 'sc',
    } as Cell,
    chosen('Edge', 'stitches', each(sizes, [61, 75, 86]), { name: 'edge' }),
    piece('Band', 'flat', 'edge', [
      even('Plain', 'rib', 'ROWS(2)', 'plain'),
      even('Holes', 'rib', 'ROWS(3)', 'holes'),
    ]),
    formula('Places', 'BUTTONHOLES(band_holes_last; STS(3); 5; STS(2))'),
  ];
  return {
    title: 'A band',
    settings: { ...usualSettings, craft: 'crochet', ...settings },
    sizes,
    sections: [{ id: 'all', label: '', cells }],
  };
}

const inches = { length: 'in', gaugeOver: '4 in' } as const;
const withSettings = (notebook: Notebook, settings: Partial<Notebook['settings']>): Notebook => ({
  ...notebook,
  settings: { ...notebook.settings, ...settings },
});

/** What is misprinted: both crafts, US and UK, cm and inches, one size and many. */
export const misprinted: readonly (readonly [name: string, make: () => Notebook])[] = [
  ['vest, crochet, US, nine sizes', () => vest('crochet', 9)],
  ['vest, knitting, UK, inches, three sizes', () => vest('knitting', 3, { terms: 'UK', ...inches })],
  ['vest, knitting, US, one size', () => vest('knitting', 1)],
  ['sleeve, crochet, UK, inches', () => withSettings(singleSleeve(), { terms: 'UK', ...inches })],
  [
    'sleeve that keeps its hook, knitting, UK',
    () => withSettings(singleSleeve(), { craft: 'knitting', terms: 'UK' }),
  ],
  ['hat, knitting, US', hatCrown],
  ['pullover fitted again, knitting, ten columns', adaptedPullover],
  ['band with buttonholes, crochet, UK', () => buttonBand({ terms: 'UK' })],
];
