import { oneOf, perCm, roundNearest } from './numbers';

/** From and to, both included. */
type Range = readonly [from: number, to: number];

/** A published weight of yarn: the stitches to 4 in, and the hooks, that are recommended for it. */
export interface YarnWeight {
  number: number;
  name: string;
  /** Stitches to 4 in of knitted stockinette; null where none are published. */
  stockinette: Range | null;
  /** Stitches to 4 in of single crochet (US terms); null where none are published. */
  singleCrochet: Range | null;
  /** Hook sizes in millimetres; null where none are published. */
  hook: Range | null;
}

/** Where the ranges come from; shown beside them. */
export const yarnWeightsSource =
  'Craft Yarn Council, Standard Yarn Weight System, as reprinted in Crochet World, October 2018, page 64';

/** The weights from the finest to the thickest. Neighbours overlap in crochet, and a gauge may lie in two. */
export const yarnWeights: readonly YarnWeight[] = [
  { number: 0, name: 'lace', stockinette: [33, 40], singleCrochet: null, hook: null },
  { number: 1, name: 'super fine', stockinette: [27, 32], singleCrochet: [21, 32], hook: [2.25, 3.5] },
  { number: 2, name: 'fine', stockinette: [23, 26], singleCrochet: [16, 20], hook: [3.5, 4.5] },
  { number: 3, name: 'light', stockinette: [21, 24], singleCrochet: [12, 17], hook: [4.5, 5.5] },
  { number: 4, name: 'medium', stockinette: [16, 20], singleCrochet: [11, 14], hook: [5.5, 6.5] },
  { number: 5, name: 'bulky', stockinette: [12, 15], singleCrochet: [8, 11], hook: [6.5, 9] },
  { number: 6, name: 'super bulky', stockinette: [7, 11], singleCrochet: [6, 9], hook: [9, 16] },
  { number: 7, name: 'jumbo', stockinette: [0, 6], singleCrochet: [0, 5], hook: null },
];

/**
 * The published yarn weights in whose range a gauge lies: none, one or two of them.
 *
 * The ranges are whole stitches to 4 in (10.16 cm), so the gauge is compared as the nearest whole number of stitches
 * over 4 in (a half goes up). A designer's fabric may be looser or denser than its yarn is recommended for: the
 * weight is a hint for a substitute, and the swatch decides.
 *
 * @param o.stitchesPerCm stitch gauge, per cm
 * @param o.fabric knitted stockinette or single crochet (US terms)
 * @throws CraftError where the gauge is not more than 0
 * @example
 * yarnWeightsFor({ stitchesPerCm: 24 / 10.16, fabric: 'stockinette' }).map(({ name }) => name)
 * // ['fine', 'light']: 23 to 26 stitches, and 21 to 24
 *
 * Source: `yarnWeightsSource`.
 */
export function yarnWeightsFor(o: {
  stitchesPerCm: number;
  fabric: 'stockinette' | 'singleCrochet';
}): YarnWeight[] {
  const fabric = oneOf(o.fabric, ['stockinette', 'singleCrochet'], 'The fabric');
  const over4in = roundNearest(perCm(o.stitchesPerCm, 'The stitch gauge') * 10.16);
  return yarnWeights.filter((weight) => {
    const range = weight[fabric];
    return range !== null && over4in >= range[0] && over4in <= range[1];
  });
}
