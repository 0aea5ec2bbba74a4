import { describe, expect, it } from 'vitest';
import { readInstruction, sum, type InstructionStep } from '../../../src/pattern/verify/instruction';

/** So many stitches of the row below become so many. */
const work = (uses: number, makes: number): InstructionStep => ({ kind: 'work', uses, makes });
const plain = (count: number): InstructionStep => work(count, count);
const rest = (makes = 1, before = 0): InstructionStep => ({ kind: 'rest', makes, before });
const times = (many: number, ...parts: InstructionStep[]): InstructionStep => ({
  kind: 'repeat',
  parts,
  until: { kind: 'times', times: many },
});
const toLast = (stitches: number, ...parts: InstructionStep[]): InstructionStep => ({
  kind: 'repeat',
  parts,
  until: { kind: 'to last', stitches },
});

const reads = (cases: readonly (readonly [text: string, ...parts: InstructionStep[]])[]) => {
  it.each(cases.map(([text, ...parts]) => [text, parts] as const))('%s', (text, parts) => {
    expect(readInstruction(text)).toEqual(parts);
  });
};

describe('stitches worked one into one', () => {
  reads([
    ['k6', plain(6)],
    ['sc', plain(1)],
    ['sc 4 sts', plain(4)],
    ['k next 3 sts', plain(3)],
    ['k next st', plain(1)],
    ['sc in next st', plain(1)],
    ['sc in next 6 sts', plain(6)],
    ['sc in the next 6 stitches', plain(6)],
    ['sc in same st', plain(1)],
    ['sc in next dc', plain(1)],
    ['sc into first st', plain(1)],
    ['sc in st', plain(1)],
    ['sc in 3 sts', plain(3)],
    ['sc in each of the next 4 sts', plain(4)],
    ['sc in each of next 4 ch', plain(4)],
    ['sc in each next st', plain(1)],
    ['sc in every of next dc', plain(1)],
    ['sc in each of the 4 sts', plain(4)],
    ['sc in 5 hdc', plain(5)],
    ['4 sc', plain(4)],
    ['sc twice', plain(2)],
    ['sc once, sc thrice', plain(1), plain(3)],
    ['k 2, p 2, then k2 and p2', plain(2), plain(2), plain(2), plain(2)],
    ['K2. P2: k2; p2', plain(2), plain(2), plain(2), plain(2)],
    ['slip 2', plain(2)],
    ['sl 1 purlwise, sl st in next 3 sts', plain(1), plain(3)],
    ['slip stitch 2, ss 3', plain(2), plain(3)],
    ['sl st, k1', plain(1), plain(1)],
    ['sl 1 wyif, k2', plain(1), plain(2)],
    ['ss into each of the next 4 sts', plain(4)],
    ['sc in – sts', plain(0)],
  ]);
});

describe('the stitches that are left', () => {
  reads([
    ['knit', rest()],
    ['purl to end', rest()],
    ['knit across', rest()],
    ['work even', rest()],
    ['even', rest()],
    ['work every st to end of the row', rest()],
    ['work each st around', rest()],
    ['k to end of round', rest()],
    ['k to last st', rest(1, 1)],
    ['k to last 3 sts, k3', rest(1, 3), plain(3)],
    ['k until 2 sts remain', rest(1, 2)],
    ['k to within 3 sts of the end', rest(1, 3)],
    ['k to within the last 3 sts', rest(1, 3)],
    ['sc all around', rest()],
    ['sc even across the row', rest()],
    ['sc in each st', rest()],
    ['sc in each st across', rest()],
    ['sc in each remaining st', rest()],
    ['2 sc in each st to last 2 sts', rest(2, 2)],
    ['2 sc in each st to the last st, sc', rest(2, 1), plain(1)],
    ['(sc, ch 1) in each st around the round', rest(2)],
  ]);
});

describe('increases', () => {
  reads([
    ['inc', work(1, 2)],
    ['inc 3 times', work(3, 6)],
    ['inc x 3', work(3, 6)],
    ['inc 3 x', work(3, 6)],
    ['inc twice', work(2, 4)],
    ['increase in next st', work(1, 2)],
    ['inc in each of the next 3 sts', work(3, 6)],
    ['kfb, pfb 2 times', work(1, 2), work(2, 4)],
    ['kf&b, kfandb', work(1, 2), work(1, 2)],
    ['m1, m1l, m1r, yo, yrn', ...Array.from({ length: 5 }, () => work(0, 1))],
    ['m1 3 times, yo twice', work(0, 3), work(0, 2)],
    ['2 sc in next st', work(1, 2)],
    ['2 sc in each of next 3 sts', work(3, 6)],
    ['3 dc into the next ch', work(1, 3)],
    ['6 sc in ring', work(0, 6)],
    ['6 sc in the loop', work(0, 6)],
    ['6 sc in st', work(1, 6)],
    ['2 sc in 4 sts', work(4, 8)],
    ['(sc, ch 1, sc) in next st', work(1, 3)],
    ['(2 dc, ch 2, 2 dc) in next 2 sts', work(2, 12)],
    ['[k1, p1] in next st', work(1, 2)],
    ['{k1, yo, k1} in st', work(1, 3)],
    ['co 3 sts', work(0, 3)],
    ['cast on 4, k2', work(0, 4), plain(2)],
    ['2 ch', work(0, 2)],
  ]);
});

describe('decreases', () => {
  reads([
    ['k2tog', work(2, 1)],
    ['p3tog, sc20tog', work(3, 1), work(20, 1)],
    ['ssk, ssp, skp, skpo, dec, decrease, invdec', ...Array.from({ length: 7 }, () => work(2, 1))],
    ['sssk, sssp, cdd, sk2p, sk2po', ...Array.from({ length: 5 }, () => work(3, 1))],
    ['k2tog twice', work(4, 2)],
    ['k2tog thrice', work(6, 3)],
    ['k2tog 4 times, k2tog x 4', work(8, 4), work(8, 4)],
    ['sc2tog over next 2 sts', work(2, 1)],
    ['dc3tog across the next 3 sts, dc', work(3, 1), plain(1)],
    ['skip 2, sc', work(2, 0), plain(1)],
    ['skip next st', work(1, 0)],
    ['skip the next 3 sts', work(3, 0)],
    ['miss the first st', work(1, 0)],
    ['sk last 2 ch', work(2, 0)],
    ['skip two sts, sc', work(2, 0), plain(1)],
    ['bind off 5 sts, k 2', work(5, 0), plain(2)],
    ['cast off the first 5 sts', work(5, 0)],
    ['bo next 3, k 1', work(3, 0), plain(1)],
  ]);
});

describe('chains', () => {
  reads([
    ['sc, ch', plain(1), work(0, 1)],
    ['sc, ch 3', plain(1), work(0, 3)],
    ['sc, ch 1', plain(1), work(0, 1)],
    ['sc, ch 3, turn', plain(1), work(0, 3)],
    ['ch 2, sc', work(0, 2), plain(1)],
    // At the beginning a chain of 1 turns the work, and so does any that is followed by a turn.
    ['ch 1, sc', plain(1)],
    ['ch, sc', plain(1)],
    ['ch 3, turn, sc', plain(1)],
    ['chain 3 turn, sc', plain(1)],
    ['ch 3 (counts as a dc), dc', plain(1), plain(1)],
    ['ch 3 (counts as first dc here and throughout), dc 2', plain(1), plain(2)],
    ['ch 1 (does not count as a st), sc', plain(1)],
    ['ch 2 (not a st), hdc', plain(1)],
    ['ch 2 (does not count as a st), hdc', plain(1)],
    ['sc, ch 3 (counts as a dc)', plain(1), plain(1)],
    ['(ch 1, sc) in next st', work(1, 2)],
  ]);
});

describe('repeats', () => {
  reads([
    ['*k4, k2tog; rep from * to end', toLast(0, plain(4), work(2, 1))],
    ['*k4, k2tog; repeat from * across the row', toLast(0, plain(4), work(2, 1))],
    ['*k4, k2tog; rep from *', toLast(0, plain(4), work(2, 1))],
    ['*k4; rep from * to last 3 sts, k3', toLast(3, plain(4)), plain(3)],
    ['*k4; rep from * until 1 st left', toLast(1, plain(4))],
    ['*k4; rep from * 3 times', times(4, plain(4))],
    ['*k4; rep from * three times', times(4, plain(4))],
    ['*k4; rep from * once more, k1', times(2, plain(4)), plain(1)],
    ['*k4; rep from * twice more', times(3, plain(4))],
    ['*k4; rep from * 3 more times', times(4, plain(4))],
    ['*k4; rep from * 3 times more', times(4, plain(4))],
    ['*k4; rep from * 3 further times', times(4, plain(4))],
    ['*k4; rep from * 3 times in all', times(3, plain(4))],
    ['*k4; rep from * 3 times in total, k1', times(3, plain(4)), plain(1)],
    ['*k4; rep from * 3 times total', times(3, plain(4))],
    ['*k4; rep from * to * 3 times', times(4, plain(4))],
    ['*k4; rep between * and * 3 times', times(4, plain(4))],
    ['*k4; rep from * to last st, k1', toLast(1, plain(4)), plain(1)],
    ['*k4* 3 times', times(3, plain(4))],
    ['*k4*, rep from * 3 times', times(4, plain(4))],
    ['*k4*. Rep 3 more times', times(4, plain(4))],
    ['*k4* to end', toLast(0, plain(4))],
    ['**k4; rep from ** 2 times', times(3, plain(4))],
    ['(k1, p1) 3 times', times(3, plain(1), plain(1))],
    ['(k1, p1) x 3', times(3, plain(1), plain(1))],
    ['(k1, p1) × 3', times(3, plain(1), plain(1))],
    ['(k1, p1) x3', times(3, plain(1), plain(1))],
    ['[k1, p1] twice, k1', times(2, plain(1), plain(1)), plain(1)],
    ['{k1, p1} once', times(1, plain(1), plain(1))],
    ['(k1, p1), k1', times(1, plain(1), plain(1)), plain(1)],
    ['(k1, p1) 3 more times', times(4, plain(1), plain(1))],
    ['(k1, p1) 3 additional times', times(4, plain(1), plain(1))],
    ['(k1, p1) around', toLast(0, plain(1), plain(1))],
    ['(k1, p1) all around the round, k1', toLast(0, plain(1), plain(1)), plain(1)],
    ['((k1, p1) twice, k1) 3 times', times(3, times(2, plain(1), plain(1)), plain(1))],
    ['(k1, p1) – times', times(0, plain(1), plain(1))],
  ]);
});

describe('what uses no stitch and makes none', () => {
  reads([
    ['k2, pm, k2', plain(2), plain(2)],
    ['k2, place a marker for the underarm, k2', plain(2), plain(2)],
    ['k2, sl marker, k2', plain(2), plain(2)],
    ['k2, slip m, k2', plain(2), plain(2)],
    ['sc 4, join with a sl st in first sc', plain(4)],
    ['sc 4, sl st in first sc, turn', plain(4)],
    ['sc 4, sl st to join; sc', plain(4), plain(1)],
    ['(sc 4, turn) twice', times(2, plain(4))],
    ['[sc 4, sl st in top of the chain] twice', times(2, plain(4))],
    ['k2 (the first of them is loose), k1', plain(2), plain(1)],
    ['k2 (does count), k1', plain(2), plain(1)],
    ['– sc, sc 2', plain(2)],
    ['– sc in next st, sc 2', plain(2)],
    ['sc –, sc 2', plain(0), plain(2)],
  ]);
});

describe('what cannot be read is told at its words', () => {
  it.each([
    ['', 'There is no instruction in this line.'],
    ['pm', 'There is no instruction in this line.'],
    ['k2, wander off over the hill', '“, wander off over the” could not be read.'],
    ['wander', '“wander” could not be read.'],
    ['k2tog in the', '“k2tog in the” could not be read.'],
    ['sc in', '“in” could not be read.'],
    ['3 wander', '“3 wander” could not be read.'],
    ['k 3rd', '“k 3rd” could not be read.'],
    ['skfb', '“skfb” could not be read.'],
    ['sc in each st 3 times', '“times” could not be read.'],
    ['work even 3 times', '“times” could not be read.'],
    ['(k1, p1) twice in next st', '“twice in next st” could not be read.'],
    ['(k1, p1) 3 times all', '“times all” could not be read.'],
    ['inc 3, sc', '“3 , sc” could not be read.'],
    ['inc 3rd times', '“inc 3rd times” could not be read.'],
    ['inc x 3rd', '“inc x 3rd” could not be read.'],
    ['inc two', '“inc two” could not be read.'],
    ['sc, ch 3, counts as a dc', '“, counts as a dc” could not be read.'],
    ['k100001', '100001 is more than 100000, which no row has.'],
    ['k2tog 100001 times', '100001 times is more than 100000, which no row has.'],
    ['k2tog x 100001', '100001 times is more than 100000, which no row has.'],
    ['k1tog', '“k1tog” could not be read.'],
    ['k21tog', '“k21tog” could not be read.'],
    ['bind off', '“off” could not be read.'],
    ['(k2', 'A bracket is not closed.'],
    ['(k2]', '“2 ]” could not be read.'],
    ['*k2', 'A * has no “rep from *” after it.'],
    ['*; rep from *', '“; rep from *” could not be read.'],
    [`${'('.repeat(13)}k${')'.repeat(13)}`, 'Brackets stand too deep in one another to be read.'],
    ['(k to end) in next st', 'A part that goes on to the end cannot stand inside a repeat.'],
    ['k '.repeat(3001), 'A line of more than 6000 characters is not read.'],
  ])('%s: %s', (text, problem) => {
    expect(readInstruction(text)).toEqual({ problem });
  });

  it('numbers up to 100,000, brackets up to twelve deep and lines up to 6000 characters are read', () => {
    expect(readInstruction('k100000')).toEqual([plain(100_000)]);
    expect(readInstruction('k2tog 100000 times')).toEqual([work(200_000, 100_000)]);
    expect(readInstruction(`${'('.repeat(12)}k1${')'.repeat(12)}`)).toHaveLength(1);
    expect(readInstruction(`*${'('.repeat(12)}k1${')'.repeat(12)}; rep from *`)).toHaveProperty('problem');
    expect(readInstruction('k '.repeat(3000))).toHaveLength(3000);
  });
});

describe('the stitches that parts use and make in all', () => {
  it('of a repeat, so many times its parts', () => {
    const parts = [times(3, plain(4), work(2, 1)), plain(2)];
    expect([sum(parts, 'uses'), sum(parts, 'makes')]).toEqual([20, 17]);
  });

  it.each([[rest()], [toLast(0, plain(1))], [times(2, rest())]])(
    'of %j it is not told, since it goes on to the end',
    (part) => {
      expect(() => sum([part], 'uses')).toThrow(
        'A part that goes on to the end cannot stand inside a repeat.',
      );
    },
  );
});
