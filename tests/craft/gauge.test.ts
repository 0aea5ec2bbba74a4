import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gaugeOf } from '../../src/craft/gauge';

describe('one reading', () => {
  test('14 stitches over 10 cm are 1.4 to the cm, give or take half a stitch as a rectangle', () => {
    const gauge = gaugeOf([{ count: 14, over: 10 }]);
    expect(gauge.perCm).toBe(1.4);
    expect(gauge.u).toBeCloseTo(0.5 / Math.sqrt(3) / 10, 15);
    expect(gauge.dof).toBe(Infinity);
  });

  test('1 stitch over 49 cm is as sure as half a stitch in 49 cm, though 1 / 49 × 49 is not quite 1', () => {
    expect((1 / 49) * 49).not.toBe(1);
    expect(gaugeOf([{ count: 1, over: 49 }])).toEqual({
      perCm: 1 / 49,
      u: expect.closeTo(0.5 / Math.sqrt(3) / 49, 15),
      dof: Infinity,
    });
  });

  test('a reading over twice the length is twice as sure', () => {
    const short = gaugeOf([{ count: 14, over: 10 }]);
    const long = gaugeOf([{ count: 28, over: 20 }]);
    expect(short.u / long.u).toBeCloseTo(2, 12);
  });
});

describe('several readings', () => {
  test('14 and 15 over 10 cm each are 1.45 with u 0.05 and one degree of freedom', () => {
    const gauge = gaugeOf([
      { count: 14, over: 10 },
      { count: 15, over: 10 },
    ]);
    expect(gauge.perCm).toBe(1.45);
    expect(gauge.u).toBeCloseTo(0.05, 15);
    expect(gauge.dof).toBe(1);
  });

  test('over equal lengths the scatter is the standard deviation of the mean', () => {
    const counts = [13, 14, 16, 15, 12];
    const mean = 14;
    const deviation = Math.sqrt(counts.reduce((sum, count) => sum + (count - mean) ** 2, 0) / 4);
    const gauge = gaugeOf(counts.map((count) => ({ count, over: 10 })));
    expect(gauge.perCm).toBe(1.4);
    expect(gauge.u).toBeCloseTo(deviation / Math.sqrt(5) / 10, 14);
    expect(gauge.dof).toBe(4);
  });

  test('readings that agree exactly are as sure as a stitch can be read, and no surer', () => {
    const gauge = gaugeOf([
      { count: 14, over: 10 },
      { count: 14, over: 10 },
    ]);
    expect(gauge.u).toBeCloseTo((Math.sqrt(2) * 0.5) / Math.sqrt(3) / 20, 15);
    expect(gauge.dof).toBe(Infinity);
  });

  test('a long reading weighs more than a short one', () => {
    expect(
      gaugeOf([
        { count: 10, over: 10 },
        { count: 60, over: 30 },
      ]).perCm,
    ).toBe(70 / 40);
  });
});

test('the gauge lies between the least and the greatest reading, and u is the larger of the two parts', () => {
  const reading = fc.record({
    count: fc.integer({ min: 1, max: 200 }),
    over: fc.double({ min: 1, max: 50, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(reading, { minLength: 2, maxLength: 12 }), (readings) => {
      const { perCm, u, dof } = gaugeOf(readings);
      const single = readings.map(({ count, over }) => count / over);
      expect(perCm).toBeGreaterThanOrEqual(Math.min(...single) * (1 - 1e-12));
      expect(perCm).toBeLessThanOrEqual(Math.max(...single) * (1 + 1e-12));
      const n = readings.length;
      const over = readings.reduce((sum, reading) => sum + reading.over, 0);
      const squares = readings.reduce((sum, r) => sum + (r.count - perCm * r.over) ** 2, 0);
      const scatter = Math.sqrt((n / (n - 1)) * squares) / over;
      const read = (Math.sqrt(n) * 0.5) / Math.sqrt(3) / over;
      expect(u).toBeCloseTo(Math.max(scatter, read), 10);
      expect(dof).toBe(scatter >= read ? n - 1 : Infinity);
    }),
    { numRuns: 2000 },
  );
});

test('no reading gives no gauge', () => {
  expect(() => gaugeOf([])).toThrow('The readings of the swatch are missing: 1 or more are needed.');
  expect(() => gaugeOf([{ count: 0, over: 10 }])).toThrow('A count of the swatch has to be more than 0');
});
