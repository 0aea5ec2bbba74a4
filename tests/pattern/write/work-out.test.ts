import { describe, expect, it } from 'vitest';
import { argumentsOf } from '../../../src/pattern/write/work-out';
import { sourceOf } from './source-of';
import { blouseSleeve } from '../../notebooks/blouse-sleeve';

describe('the arguments of a formula', async () => {
  const source = await sourceOf(blouseSleeve());
  const of = (formula: string) => argumentsOf(source, 'c4', formula, 'JOINARMHOLE');

  it.each([
    ['JOINARMHOLE(31; 3; 4; 8; 2)', [31, 3, 4, 8, 2]],
    ['=joinarmhole(2 * underarm_sts; STS(0); 1; 1; 1)', [8, 0, 1, 1, 1]],
    ['JOINARMHOLE(underarm_sts - 2 - 1; (1 + 2) * 3; 12 / 4; 1; 1)', [1, 9, 3, 1, 1]],
    // 13 rows and 18 stitches to 10 cm are 1.385 stitches to a row end: 11 in every 8 row ends.
    [
      'JOINARMHOLE(1; PICKUPSTITCHES(body_rows; sleeve_fabric_sts); PICKUPROWS(body_rows; sleeve_fabric_sts); 1; 1)',
      [1, 11, 8, 1, 1],
    ],
    ['JOINARMHOLE(1 / 0; nobody; SQRT(4); 1; 1)', [undefined, undefined, undefined, 1, 1]],
  ])('%s', (formula, values) => {
    expect(of(formula)).toEqual(values);
  });

  it('are none where the formula is of another function, or of more than one', () => {
    expect(of('SQRT(4)')).toBeUndefined();
    expect(of('JOINARMHOLE(1; 2')).toBeUndefined();
    expect(of('')).toBeUndefined();
  });
});
