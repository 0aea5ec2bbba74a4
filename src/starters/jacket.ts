import { charts } from '../craft';
import type { Cell, Entry, Notebook, Size } from '../notebook';

const formula = (text: string): Entry => ({ formula: text });
const value = (number: number): Entry => ({ value: number });

const sizes: Size[] = charts.woman.sizes.map((size) => ({
  id: size.toLowerCase(),
  label: size,
  chart: { name: 'woman', size },
}));

/** Wanted round of the cuff, cm, from XS to 5X: invented for this jacket, with room to push the sleeve up. */
const cuffs = [22, 23, 24, 25, 26.5, 28, 29.5, 31, 32];

const swatches: Cell[] = [
  {
    kind: 'swatch',
    id: 'body',
    label: 'Body fabric',
    name: 'body',
    worked: '6.5 mm hook, flat',
    stitches: [{ count: value(14), over: value(10) }],
    rows: [{ count: value(12), over: value(10) }],
  },
  {
    kind: 'swatch',
    id: 'sleeve-fabric',
    label: 'Sleeve fabric',
    name: 'sleeve_fabric',
    worked: '5.5 mm hook, in the round',
    stitches: [{ count: value(16), over: value(10) }],
    rows: [{ count: value(14), over: value(10) }],
  },
];

const body: Cell[] = [
  {
    kind: 'measure',
    id: 'bust',
    label: 'Bust',
    name: 'bust',
    unit: 'length',
    entry: { chart: 'bust', point: 'middle' },
  },
  {
    kind: 'measure',
    id: 'neck-to-wrist',
    label: 'Neck to wrist',
    name: 'neck_to_wrist',
    unit: 'length',
    entry: { chart: 'neckToWrist', point: 'middle' },
    note: 'From the bone at the back of the neck, over the shoulder, to the wrist.',
  },
  {
    kind: 'measure',
    id: 'back-waist-length',
    label: 'Back waist length',
    name: 'back_waist_length',
    unit: 'length',
    entry: { chart: 'backWaistLength', point: 'middle' },
  },
  {
    kind: 'measure',
    id: 'upper-arm',
    label: 'Upper arm',
    name: 'upper_arm',
    unit: 'length',
    entry: { chart: 'upperArm', point: 'middle' },
  },
  {
    kind: 'measure',
    id: 'armhole-depth',
    label: 'Armhole depth',
    name: 'armhole_depth',
    unit: 'length',
    entry: { chart: 'armholeDepth', point: 'middle' },
  },
];

const back: Cell[] = [
  {
    kind: 'ease',
    id: 'finished-bust',
    label: 'Finished bust',
    name: 'finished_bust',
    by: 'length',
    body: formula('bust'),
    ease: value(20),
  },
  {
    kind: 'fit',
    id: 'back-sts',
    label: 'Back stitches',
    name: 'back_sts',
    counts: 'stitches',
    target: formula('finished_bust / 2 * body_sts'),
    multiple: value(8),
    plus: value(3),
    rule: 'nearest',
    note: 'The body fabric repeats over 8 stitches, with 3 more to balance the edges.',
  },
  {
    kind: 'formula',
    id: 'body-length',
    label: 'Body length',
    name: 'body_length',
    formula: 'back_waist_length + CM(14)',
  },
  {
    kind: 'piece',
    id: 'back',
    label: 'Back',
    name: 'back',
    worked: 'flat',
    start: formula('back_sts'),
    stretches: [
      {
        kind: 'even',
        name: 'even',
        label: 'Hem to shoulder',
        fabric: 'body',
        rows: formula('ROUNDCOUNT(body_length * body_rows; "even")'),
      },
    ],
    ends: 'bound off',
  },
];

const sleeve: Cell[] = [
  {
    kind: 'formula',
    id: 'armhole',
    label: 'Armhole, one side',
    name: 'armhole',
    formula: 'MAX(armhole_depth; (upper_arm + CM(10)) / 2)',
    note: 'The chart’s depth, or half the upper arm and its ease where that is more.',
  },
  {
    kind: 'formula',
    id: 'armhole-rows',
    label: 'Armhole rows, one side',
    name: 'armhole_rows',
    formula: 'ROUNDCOUNT(armhole * body_rows)',
  },
  {
    kind: 'formula',
    id: 'sleeve-sts',
    label: 'Sleeve stitches picked up',
    name: 'sleeve_sts',
    formula:
      'JOINARMHOLE(armhole_rows; PICKUPSTITCHES(body_rows; sleeve_fabric_sts); PICKUPROWS(body_rows; sleeve_fabric_sts); STS(0); STS(0))',
  },
  {
    kind: 'formula',
    id: 'sleeve-wanted',
    label: 'Sleeve length wanted',
    name: 'sleeve_wanted',
    formula: 'DROPSLEEVE(neck_to_wrist; back_start_width)',
    note: 'On a dropped shoulder a wider body makes a shorter sleeve.',
  },
  {
    kind: 'measure',
    id: 'cuff',
    label: 'Round of the cuff',
    name: 'cuff',
    unit: 'length',
    entry: { each: Object.fromEntries(sizes.map((size, at) => [size.id, cuffs[at]!])) },
  },
  {
    kind: 'formula',
    id: 'cuff-sts',
    label: 'Cuff stitches',
    name: 'cuff_sts',
    formula: 'ROUNDCOUNT(cuff * sleeve_fabric_sts; "even")',
    note: 'An even count, since each decrease round takes two stitches.',
  },
  {
    kind: 'piece',
    id: 'sleeve',
    label: 'Sleeve',
    name: 'sleeve',
    worked: 'round',
    start: formula('sleeve_sts'),
    stretches: [
      {
        kind: 'taper',
        name: 'taper',
        label: 'Armhole to cuff',
        fabric: 'sleeve_fabric',
        to: formula('cuff_sts'),
        over: formula('ROUNDCOUNT(sleeve_wanted * sleeve_fabric_rows) - sleeve_cuff_rows'),
        perRow: value(2),
        every: 1,
        before: value(3),
        after: value(0),
        order: 'longFirst',
      },
      { kind: 'even', name: 'cuff', label: 'Cuff', fabric: 'sleeve_fabric', rows: value(8) },
    ],
    ends: 'bound off',
  },
];

/** A jacket with dropped shoulders: the back, and a sleeve worked down in the round from the armhole. */
export function jacket(): Notebook {
  return {
    title: 'Slipway jacket',
    settings: { length: 'cm', gaugeOver: '10 cm', decimal: '.' },
    sizes,
    sections: [
      { id: 'swatches', label: 'Swatches', cells: swatches },
      { id: 'measurements', label: 'Body measurements', cells: body },
      { id: 'back-section', label: 'Back', cells: back },
      { id: 'sleeve-section', label: 'Sleeve', cells: sleeve },
    ],
  };
}
