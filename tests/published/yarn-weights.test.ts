import { expect, test } from 'vitest';
import { yarnWeights, yarnWeightsFor } from '../../src/craft/yarn-weights';

const source =
  'Craft Yarn Council, Standards & Guidelines for Crochet and Knitting: Standard Yarn Weight System';

const stockinette: Record<string, [number, number]> = {
  lace: [33, 40],
  'super fine': [27, 32],
  fine: [23, 26],
  light: [21, 24],
  medium: [16, 20],
  bulky: [12, 15],
  'super bulky': [7, 11],
  jumbo: [0, 6],
};
const singleCrochet: Record<string, [number, number]> = {
  'super fine': [21, 32],
  fine: [16, 20],
  light: [12, 17],
  medium: [11, 14],
  bulky: [8, 11],
  'super bulky': [6, 9],
  jumbo: [0, 5],
};
const hooks: Record<string, [number, number]> = {
  'super fine': [2.25, 3.5],
  fine: [3.5, 4.5],
  light: [4.5, 5.5],
  medium: [5.5, 6.5],
  bulky: [6.5, 9],
  'super bulky': [9, 16],
};

for (const [fabric, published] of Object.entries({ stockinette, singleCrochet })) {
  test(`every whole number of stitches of ${fabric} to 4 in lies in the published weights and no others (${source})`, () => {
    for (let over4in = 1; over4in <= 45; over4in++) {
      const expected = Object.keys(published).filter(
        (name) => over4in >= published[name]![0] && over4in <= published[name]![1],
      );
      const found = yarnWeightsFor({
        stitchesPerCm: over4in / 10.16,
        fabric: fabric as 'stockinette' | 'singleCrochet',
      });
      expect(found.map(({ name }) => name)).toEqual(expected);
    }
  });
}

test(`hooks for the weights, in millimetres (${source})`, () => {
  const ours = yarnWeights.flatMap(({ name, hook }) => (hook ? [[name, [...hook]]] : []));
  expect(Object.fromEntries(ours)).toEqual(hooks);
});
