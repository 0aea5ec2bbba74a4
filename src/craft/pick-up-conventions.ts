import { oneOf, perCm } from './numbers';
import { pickUpRatio } from './pick-up-ratio';

/** The fabrics for which a ratio is in common use; crochet in US terms. */
export type EdgeFabric =
  'single crochet' | 'half double crochet' | 'double crochet' | 'treble' | 'stockinette' | 'garter';

/**
 * The stitches that are commonly picked up for so many row ends of a fabric. Common practice: they hold for yarn,
 * tools and hands of the usual sort, and the two gauges of a swatch decide.
 */
export const pickUpConventions: Readonly<Record<EdgeFabric, { readonly pick: number; readonly of: number }>> =
  {
    'single crochet': { pick: 1, of: 1 },
    'half double crochet': { pick: 3, of: 2 },
    'double crochet': { pick: 2, of: 1 },
    treble: { pick: 3, of: 1 },
    stockinette: { pick: 3, of: 4 },
    garter: { pick: 1, of: 2 },
  };

/**
 * The pick-up ratio worked from the two gauges, beside the one in common use for the fabric.
 *
 * `difference` is what the convention picks up against what the gauges ask for, as a part of the latter: 0.05 is 5 %
 * too many, which flares; −0.05 is 5 % too few, which draws in.
 *
 * Gauges are per cm; `most` is the most rows the worked ratio may run over (8 unless told). Throws a CraftError for a
 * fabric without a convention and for gauges that are not more than 0.
 *
 * @example
 * pickUpAgainstConvention({ fabric: 'stockinette', rowsPerCm: 2.6, stitchesPerCm: 2, most: 13 })
 * // { worked: { pick: 10, of: 13, off: 0 }, convention: { pick: 3, of: 4 }, difference: -0.025 }
 *
 * Source: common practice.
 */
export function pickUpAgainstConvention(o: {
  fabric: EdgeFabric;
  rowsPerCm: number;
  stitchesPerCm: number;
  most?: number;
}): {
  worked: { pick: number; of: number; off: number };
  convention: { pick: number; of: number };
  difference: number;
} {
  const fabric = oneOf(o.fabric, Object.keys(pickUpConventions) as EdgeFabric[], 'The fabric of the edge');
  const worked = pickUpRatio(o);
  const exact = perCm(o.stitchesPerCm, 'The stitch gauge') / perCm(o.rowsPerCm, 'The row gauge');
  const { pick, of } = pickUpConventions[fabric];
  const difference = pick / of / exact - 1;
  return { worked, convention: { pick, of }, difference: Math.abs(difference) < 1e-9 ? 0 : difference };
}
