import { type Cell, type Notebook } from '../../src/notebook';
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
} from '../../src/starters/cells';
import { vest } from './vest';

/*
 * For tests that want one large notebook with every capability in it: the vest, with sleeves picked up round its armholes,
 * worked in the round and gathered to their cuffs. Invented.
 */

const swatches: Cell[] = [
  swatch('Sleeve fabric', {
    worked: '5.5 mm hook, in the round',
    stitches: 16,
    rows: 14,
    weighed: [20, 20, 26],
  }),
];

const body: Cell[] = [
  charted('Neck to wrist', 'neckToWrist', {
    note: 'From the bone at the back of the neck, over the shoulder, to the wrist.',
  }),
  measure('Hand', 'length', value(20.2), {
    note: 'Round the knuckles; 95 of 100 women of the ANSUR II survey (2012) measure no more than this. Measure your own.',
  }),
];

const sleeves = (sizes: Notebook['sizes']): Cell[] => [
  formula(
    'Sleeve stitches picked up',
    'JOINARMHOLE(armhole_rows; PICKUPSTITCHES(body_rows; sleeve_fabric_sts); PICKUPROWS(body_rows; sleeve_fabric_sts); 2 * underarm_sts; STS(0))',
    { name: 'sleeve_sts', note: 'Along both sides of the armhole, and one for one at the underarm.' },
  ),
  chosen('Length of the cuff', 'length', value(6), { name: 'cuff_length' }),
  formula('Sleeve length above the cuff', 'DROPSLEEVE(neck_to_wrist; back_end_width) - cuff_length', {
    name: 'sleeve_wanted',
  }),
  chosen('Round of the cuff', 'length', each(sizes, [22, 23, 24, 25, 26.5, 28, 29.5, 31, 32]), {
    name: 'cuff',
  }),
  fit('Cuff stitches', 'cuff * rib_sts', 4, 0, { name: 'cuff_sts' }),
  formula('Wrist stitches, before gathering', 'ROUNDCOUNT(cuff * 1.5 * sleeve_fabric_sts; "even")', {
    name: 'wrist_sts',
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

const checks: Cell[] = [
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

/** The vest with gathered sleeves, in nine sizes. */
export function smock(): Notebook {
  const under = vest();
  const section = (id: string): readonly Cell[] => under.sections.find((one) => one.id === id)!.cells;
  const [bodyFabric, rib] = section('swatches') as [Cell, Cell];
  const supplies = section('supplies-section').map((cell) =>
    cell.kind === 'yarn'
      ? {
          ...cell,
          uses: [cell.uses[0]!, { area: f('2 * sleeve_area'), fabric: 'sleeve_fabric' }, cell.uses[1]!],
        }
      : cell,
  );
  const measured = [...section('across-section'), ...section('down-section')].filter(isCharted);
  const others = (id: string): Cell[] => section(id).filter((cell) => !isCharted(cell));
  return {
    ...under,
    title: 'Skerry smock',
    sections: [
      { id: 'swatches', label: 'Swatches', cells: [bodyFabric, ...swatches, rib] },
      { id: 'measurements', label: 'Body measurements', cells: [...measured, ...body] },
      { id: 'across-section', label: 'Widths', cells: others('across-section') },
      { id: 'down-section', label: 'Lengths', cells: others('down-section') },
      { id: 'body-section', label: 'Back and fronts', cells: section('body-section') },
      { id: 'sleeve-section', label: 'Sleeves', cells: sleeves(under.sizes) },
      { id: 'edge-section', label: 'Bands and borders', cells: section('edge-section') },
      { id: 'supplies-section', label: 'Yarn and notions', cells: supplies },
      { id: 'joins-section', label: 'Joins', cells: [...section('joins-section'), ...checks] },
    ],
  };
}

const isCharted = (cell: Cell): boolean => cell.kind === 'measure' && 'chart' in cell.entry;
