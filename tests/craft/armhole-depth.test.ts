import { expect, test } from 'vitest';
import { armholeDepthFor } from '../../src/craft/armhole-depth';
import { chartPoint, charts } from '../../src/craft/charts';

test('an upper arm of 47 cm with 8 cm of ease asks for 27.5 cm, more than a chart’s 25.4', () => {
  expect(armholeDepthFor({ chartDepth: 25.4, upperArm: 47, ease: 8 })).toBe(27.5);
});

test('where the chart’s depth is enough it is kept', () => {
  expect(armholeDepthFor({ chartDepth: 19, upperArm: 28, ease: 5 })).toBe(19);
  expect(armholeDepthFor({ chartDepth: 19, upperArm: 28, ease: -5 })).toBe(19);
});

test('in the woman’s chart, with 5 cm of ease, the arm overtakes the depth from size 3X on', () => {
  const overtakes = charts.woman.sizes.filter((size) => {
    const chartDepth = chartPoint('woman', size, 'armholeDepth');
    return (
      armholeDepthFor({ chartDepth, upperArm: chartPoint('woman', size, 'upperArm'), ease: 5 }) > chartDepth
    );
  });
  expect(overtakes).toEqual(['3X', '4X', '5X']);
});

test('an ease that leaves no sleeve is refused', () => {
  expect(() => armholeDepthFor({ chartDepth: 19, upperArm: 28, ease: -28 })).toThrow('take more than −28 cm');
});
