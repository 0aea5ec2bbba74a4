import { expect, test } from 'vitest';
import { legendFor } from '../../../src/pictures/charts/legend';
import { sizeStyle } from '../../../src/pictures/charts/palette';
import { rowsOf, sizeOf } from './pieces';

const sizes = [sizeOf('s', null, 'The cuff is missing.'), sizeOf('m', rowsOf([20])), sizeOf('l', [])];

test('every size is in the legend with the style of its place, drawn or not', () => {
  const legend = legendFor(sizes, 'dark', 'm');
  expect(legend.map(({ id, label, highlighted }) => [id, label, highlighted])).toEqual([
    ['s', 'S', false],
    ['m', 'M', true],
    ['l', 'L', false],
  ]);
  legend.forEach((entry, sizeIndex) => expect(entry).toMatchObject(sizeStyle(sizeIndex, 'dark')));
});

test('a size that is not drawn says why, and one that is says nothing', () => {
  expect(legendFor(sizes, 'light', null).map(({ problem }) => problem)).toEqual([
    'The cuff is missing.',
    null,
    'This size has no rows yet.',
  ]);
});
