import { charts } from '../craft';
import {
  usualSettings,
  type Cell,
  type ClassResult,
  type Notebook,
  type Size,
  charted,
  f,
  fit,
  formula,
  measure,
  swatch,
  value,
} from '../notebook';

/*
 * A scenario of our own, for a class: a swatch, a scarf and the body of a sweater, all invented. Busts follow the women's
 * chart.
 */

const sizes: Size[] = charts.woman.sizes
  .filter((size) => ['S', 'M', 'L'].includes(size))
  .map((size) => ({ id: size.toLowerCase(), label: size, chart: { name: 'woman', size } }));

const note = (name: string, label: string, text: string): Cell => ({
  kind: 'note',
  id: name.replaceAll('_', '-'),
  name,
  label,
  text,
});

const gauge: Cell[] = [
  note(
    'about_gauge',
    'What gauge is',
    'Gauge is how many stitches lie side by side in a length of fabric, and how many rows lie on top of each other. Lay a swatch flat, count over 10 cm away from its edges, and count in several places. A width times the gauge is a number of stitches; stitches divided by the gauge are a width again. The centimetres cancel, and stitches are left.',
  ),
  swatch(
    'Practice swatch',
    { worked: '5 mm needles, stockinette', stitches: 18, rows: 24 },
    { name: 'swatch', note: 'Put your own counts in, on the leaf: everything else follows.' },
  ),
  measure('Width of the scarf', 'length', value(32.5), { name: 'scarf_width' }),
  formula('Stitches of the scarf', 'ROUNDCOUNT(scarf_width * swatch_sts)', {
    name: 'scarf_sts',
    note: 'Nobody can cast on half a stitch: the rounding is a decision.',
  }),
  formula('Width the scarf will have', 'scarf_sts / swatch_sts', { name: 'scarf_made' }),
  measure('Length of the scarf', 'length', value(150), { name: 'scarf_length' }),
  formula('Rows of the scarf', 'ROUNDCOUNT(scarf_length * swatch_rows)', { name: 'scarf_rows' }),
];

const half: Cell[] = [
  note(
    'about_half',
    'Half a stitch',
    'Half a stitch to 10 cm is easily miscounted: a stitch that begins at one end of the ruler and is cut off by the other. Across 10 cm it is hardly to be seen. Round a bust it is counted ten times over. The stitches stay as they were cast on; it is the width that is another.',
  ),
  charted('Bust', 'bust'),
  {
    kind: 'ease',
    id: 'sweater-bust',
    label: 'Finished bust',
    name: 'sweater_bust',
    by: 'length',
    body: f('bust'),
    ease: value(8),
  },
  fit('Stitches round the body', 'sweater_bust * swatch_sts', 4, 0, { name: 'body_sts' }),
  formula('Bust as planned', 'body_sts / swatch_sts', { name: 'planned' }),
  formula('Gauge with half a stitch fewer', 'swatch_sts - STS(0.5) / CM(10)', { name: 'loose' }),
  formula('Bust at that gauge', 'body_sts / loose', { name: 'loose_bust' }),
  formula('What half a stitch costs', 'loose_bust - planned', {
    name: 'half_costs',
    note: 'Compare it with the step from one size of the chart to the next.',
  }),
];

const inches: Cell[] = [
  note(
    'about_inches',
    '10 cm and 4 in',
    'Patterns write “4 in (10 cm)” as if they were one. An inch is 2.54 cm exactly, so 4 in are 10.16 cm. Whoever counts over 4 in and works it out as if it had been 10 cm has a gauge that is 1.6% off, every time and in the same direction.',
  ),
  formula('How much longer 4 in are', 'IN(4) - CM(10)', { name: 'longer' }),
  formula('Gauge, if it was counted over 4 in', 'swatch_sts * CM(10) / IN(4)', {
    name: 'over_inches',
    note: 'The same stitches, over a longer stretch.',
  }),
  formula('Bust, if it was counted over 4 in', 'body_sts / over_inches', { name: 'inch_bust' }),
  formula('What the difference comes to', 'inch_bust - planned', { name: 'inch_costs' }),
];

const refTo = (cell: string, key = 'value'): ClassResult => ({ cell, key });

/** Three short lessons on gauge, with a class sheet ready to be shown or handed out. */
export function lessons(): Notebook {
  return {
    title: 'Three lessons on gauge',
    settings: { ...usualSettings, craft: 'knitting' },
    sizes,
    sections: [
      { id: 'gauge', label: '1. What gauge is', cells: gauge },
      { id: 'half', label: '2. What half a stitch costs round a bust', cells: half },
      { id: 'inches', label: '3. Why 10 cm is not 4 in', cells: inches },
    ],
    classSheet: {
      size: 'm',
      results: [
        refTo('swatch', 'sts'),
        refTo('scarf-sts'),
        refTo('scarf-made'),
        refTo('scarf-rows'),
        refTo('body-sts', 'count'),
        refTo('planned'),
        refTo('loose'),
        refTo('loose-bust'),
        refTo('half-costs'),
        refTo('longer'),
        refTo('over-inches'),
        refTo('inch-bust'),
        refTo('inch-costs'),
      ],
    },
  };
}
