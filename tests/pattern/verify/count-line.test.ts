import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countLine } from '../../../src/pattern';

describe('a pasted line is counted', () => {
  it.each([
    ['from 60: *k4, k2tog; rep from * to end', 60, 50],
    ['From 60 sts: *K4, k2tog; repeat from * to end of row.', 60, 50],
    ['from 41: *sc 6, sc2tog; rep from * 3 more times, sc 9', 41, 37],
    ['from 63: *k4, k2tog; rep from * to last 3 sts, k3', 63, 53],
    ['from 48: (sc 4, sc2tog) x 8', 48, 40],
    ['from 48: [sc 4, sc2tog] 8 times', 48, 40],
    ['from 48: (sc in next 4 sts, sc2tog) around', 48, 40],
    ['from 24: sc in each st around', 24, 24],
    ['from 24: 2 sc in each st around', 24, 48],
    ['from 24: *sc in next 3 sts, 2 sc in next st; rep from * around', 24, 30],
    ['from 24: (sc 3, inc) 6 times', 24, 30],
    ['from 6: inc 6 times', 6, 12],
    ['from 20: k2, ssk, k to last 4 sts, k2tog, k2', 20, 18],
    ['from 20: k1, m1, k to last st, m1, k1', 20, 22],
    ['from 20: k1, kfb, knit to last 2 sts, kfb, k1', 20, 22],
    ['from 13: k1, *yo, k2tog; rep from * to end', 13, 13],
    ['from 12: *yo, k3; rep from * to end', 12, 16],
    ['from 12: *ch 2, skip 2, sc in next st; rep from * around', 12, 12],
    ['from 12: *ch 1, skip 1, sc in next st; rep from * around', 12, 12],
    ['from 10: ch 1, turn, sc in each st across', 10, 10],
    ['from 10: ch 3 (counts as first dc), dc in each st across', 10, 10],
    ['from 10: 2 dc in first st, dc to last st, 2 dc in last st', 10, 12],
    ['from 9: k2tog twice, k5', 9, 7],
    ['from 9: k3tog, p6', 9, 7],
    ['from 16: *p2, k2; rep from * to end', 16, 16],
    ['from 30: bind off 5 sts, k to end', 30, 25],
    ['from 12: (sc, ch 1, sc) in next st, sc 11', 12, 14],
    ['from 12: *sc 1, dc2tog; rep from * 3 more times (8 sts)', 12, 8],
    ['from 12: *miss 2 sts, tr in next st; rep from * to end', 12, 4],
    ['Row 3: *k4, k2tog; rep from * 9 more times. [50 sts]', 60, 50],
    ['Rnd 4: (sc 2, sc2tog) 6 times (18)', 24, 18],
    ['from 30: *k4, k2tog* 5 times', 30, 25],
    ['from 30: *k4, k2tog; rep from * 5 times in all', 30, 25],
    ['from 8: knit', 8, 8],
    ['from 3: *k4, k2tog; rep from * to last 3 sts, k3', 3, 3],
    ['from 5000000: 2 sc in each st around', 5_000_000, 10_000_000],
    ['from 8: dec 4 times', 8, 4],
    ['from 8: skip next st, sc in each of next 7 sts', 8, 7],
  ])('%s: from %i to %i', (line, from, count) => {
    expect(countLine(line)).toMatchObject({ from, count });
  });

  it.each([
    ['  - from 10: k10', 10],
    ['•   from  10 , k10', 10],
    ['from 10 st: k10', 10],
    ['from 10stitches:k10', 10],
    ['FROM 10 sts ,k10', 10],
    ['from 10: Row 3: k10', 10],
    ['from 10: next   row:k10', 10],
    ['Next round: k10', 10],
    ['round 3 (RS):  k10', 10],
    ['Rnds 3 and 4: k10', 10],
    ['Rows 3: k10', 10],
  ])('“%s” begins with what is no instruction', (line, count) => {
    expect(countLine(line)).toEqual({ from: count, count });
  });

  it.each([
    'k10 [10]',
    'k10 [10 sts]',
    'k10(10 st)',
    'k10   ( 10 stitches )',
    'k10 = 10',
    'k10 – 10 sts',
    'k10 — 10sts.',
    'k10 - 10 sts left.',
    'k10 (10 sts   remain).',
    'k10 [10 ] .',
  ])('“%s” states its count', (line) => {
    expect(countLine(line)).toEqual({ from: 10, count: 10, stated: 10 });
    expect(countLine(line.replace(/10(?!.*10)/u, '11'))).toEqual({
      problem: 'It says 11 stitches, and following it gives 10.',
    });
  });

  it.each([
    ['k2; from 10: k10', '“; from 10 : k” could not be read.'],
    ['k2; row 3: k10', '“; row 3 : k” could not be read.'],
    ['k2 - from 3: k10', '“2 - from 3 :” could not be read.'],
    ['from 10000001: knit', 'That is more stitches than can be counted.'],
    ['from 99999999999999999999: knit', 'That is more stitches than can be counted.'],
    [`k${' '.repeat(6000)}1`, 'A line of more than 6000 characters is not read.'],
    ['k1'.padEnd(6001), 'A line of more than 6000 characters is not read.'],
  ])('“%s” cannot be counted', (line, problem) => {
    expect(countLine(line)).toEqual({ problem });
  });

  it('a number after “x”, “last” or “to” is no count, whatever stands about it', () => {
    for (const line of ['(k2, k2tog) x (3)', '(k2, k2tog) x(3)', 'k to last   (3)', 'k to (3)']) {
      expect(countLine(line, 12)).toEqual({ problem: '“3 )” could not be read.' });
    }
  });

  it('ten million stitches and 6000 characters are counted', () => {
    expect(countLine('from 10000000: knit')).toEqual({ from: 10_000_000, count: 10_000_000 });
    expect(countLine('k1'.padEnd(6000))).toEqual({ from: 1, count: 1 });
  });

  it('takes the stitches from whoever asks where the line does not say', () => {
    expect(countLine('*k4, k2tog; rep from * to end', 60)).toStrictEqual({ from: 60, count: 50 });
    expect(countLine('*k4, k2tog; rep from * to end')).toEqual({
      problem: 'Say how many stitches there are before it, as in “from 60: …”.',
    });
  });

  it.each([
    ['from 52: *k4, k2tog; rep from * to end', 'After 8 repeats 4 stitches are left, and another takes 6.'],
    ['from 49: *k4, k2tog; rep from * to end', 'After 8 repeats 1 stitch is left, and another takes 6.'],
    [
      'from 50: *k4, k2tog; rep from * to last 3 sts, k3',
      'After 7 repeats 5 stitches are left before the last 3, and another takes 6.',
    ],
    ['from 8: *k4, k2tog; rep from * to end', 'After 1 repeat 2 stitches are left, and another takes 6.'],
    ['from 4: *k1; rep from * to last 6 sts, k6', 'Only 4 stitches are left where 6 should stay.'],
    ['from 50: k49', '1 stitch of 50 is left over at the end of the row.'],
    ['from 5000001: 2 sc in each st around', 'The row makes more stitches than can be counted.'],
    [
      'from 60: *k to end; rep from * 3 times',
      'A part that goes on to the end cannot stand inside a repeat.',
    ],
    ['from 50: k20', '30 stitches of 50 are left over at the end of the row.'],
    ['from 10: k20', 'The row takes 20 stitches, and there are 10.'],
    ['from 10: *yo; rep from * to end', 'What is repeated uses no stitch, so it comes to no end.'],
    ['from 60: *k4, k2tog; rep from * to end [51 sts]', 'It says 51 stitches, and following it gives 50.'],
    ['from 10: frobnicate 3', '“frobnicate 3” could not be read.'],
    ['from 10: (k2, k2tog', 'A bracket is not closed.'],
    ['from 10: *k2, k2tog', 'A * has no “rep from *” after it.'],
    ['', 'There is no instruction in this line.'],
  ])('%s: %s', (line, problem) => {
    expect(countLine(line)).toEqual({ problem });
  });

  it('survives any text, and answers in time', () => {
    const words = fc.constantFrom(
      ...'k p sc 2 9999999 ( ) [ ] * ; , . rep from to end last sts in each next x times more – constructor __proto__ k2tog 3tog inc around {'.split(
        ' ',
      ),
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ maxLength: 300, unit: 'grapheme' }),
          fc.array(words, { maxLength: 60 }).map((list) => list.join(' ')),
        ),
        (text) => {
          const counted = countLine(text, 40);
          if ('problem' in counted) expect(counted.problem).toMatch(/\S.*\.$/su);
          else expect(Number.isSafeInteger(counted.count)).toBe(true);
        },
      ),
      { numRuns: 3000 },
    );
    expect(countLine(`from 9: ${'('.repeat(5000)}`)).toHaveProperty('problem');
    expect(countLine(`from 9: ${'(k1, '.repeat(12)}${') 100000 times'.repeat(12)}`)).toHaveProperty(
      'problem',
    );
    expect(countLine('k'.repeat(100_000))).toHaveProperty('problem');
  });
});
