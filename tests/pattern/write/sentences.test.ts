import { describe, expect, it } from 'vitest';
import type { Piece, Stretch } from '../../../src/craft';
import {
  usualSettings,
  type Notebook,
  type PieceStretch,
  type Settings,
  type Swatch,
} from '../../../src/notebook';
import { value } from '../../../src/notebook/cell-builders';
import { linesOf, patternOf, prove, type PatternSource } from '../../../src/pattern';
import { uncountedFabric } from './uncounted-fabric';

const fabric = { stitches: 1.4, rows: 1.2 };
type Seen = Stretch extends infer S ? (S extends Stretch ? Omit<S, 'fabric'> : never) : never;

/** The lines of a piece with these stretches, a list for each size. */
function lines(
  sizes: readonly (readonly Seen[])[],
  o: {
    start?: readonly number[];
    worked?: 'flat' | 'round';
    settings?: Partial<Settings>;
    stitch?: Swatch['stitch'];
    label?: string;
    labels?: readonly string[];
  } = {},
): string[] {
  const plans = sizes.map((stretches, sizeIndex): Piece => ({
    name: '',
    worked: o.worked ?? 'flat',
    start: o.start?.[sizeIndex] ?? 40,
    stretches: stretches.map((stretch) => ({ ...stretch, fabric }) as Stretch),
    ends: 'bound off',
  }));
  const cell = (sizes[0] ?? []).map(
    ({ kind }, at) =>
      ({
        kind,
        name: `part_${at}`,
        label: o.labels?.[at] ?? o.label ?? '',
        fabric: 'fabric',
        counts: [],
      }) as unknown as PieceStretch,
  );
  const notebook: Notebook = {
    title: 'Piece',
    settings: { ...usualSettings, craft: 'knitting', ...o.settings },
    sizes: plans.map((_plan, at) => ({ id: `s${at}`, label: ['S', 'M', 'L'][at]! })),
    sections: [
      {
        id: 'all',
        label: '',
        cells: [
          uncountedFabric(o.stitch),
          {
            kind: 'piece',
            id: 'piece',
            name: 'piece',
            label: 'Piece',
            worked: o.worked ?? 'flat',
            start: value(1),
            stretches: cell,
            ends: 'bound off',
          },
        ],
      },
    ],
  };
  const source: PatternSource = {
    notebook,
    number: () => undefined,
    truth: () => undefined,
    errorAt: () => undefined,
    plan: (size) => plans[Number(size.slice(1))]!,
  };
  const document = patternOf(source);
  expect(prove(document, source)).toEqual({ proven: true });
  return document.parts.flatMap(linesOf).map(({ text }) => text);
}

const taper = (to: number, over: number, more: Partial<Seen & { kind: 'taper' }> = {}): Seen => ({
  kind: 'taper',
  to,
  over,
  perRow: 2,
  every: 1,
  before: 0,
  after: 0,
  ...more,
});

describe('every kind of stretch in the trade’s words', () => {
  it('a taper with two intervals says both', () => {
    expect(lines([[taper(14, 68)]])).toEqual([
      'Cast on 40 sts.',
      'Dec 1 st at each end of every 6th row 3 times, then of every 5th row 10 times [14 sts].',
      'Bind off all 14 sts.',
    ]);
  });

  it('one on right-side rows that begins on a right-side row shapes the next one first', () => {
    expect(lines([[taper(36, 8, { every: 2 })]])[1]).toBe('Work 2 rows even.');
    expect(lines([[taper(36, 4, { every: 2 })]]).slice(1, 3)).toEqual([
      'Dec 1 st at each end of the next row, then of every 2nd row once [36 sts].',
      'Work 1 row even.',
    ]);
  });

  it('a single shaping row is the next row, and never every so manyth once', () => {
    expect(lines([[taper(38, 6)]]).slice(1, 3)).toEqual([
      'Work 5 rows even.',
      'Dec 1 st at each end of the next row [38 sts].',
    ]);
  });

  it('every row is every row', () => {
    expect(lines([[taper(34, 3)]])[1]).toBe('Dec 1 st at each end of every row 3 times [34 sts].');
  });

  it('one size of two that has a second interval leaves a dash in the other', () => {
    expect(lines([[taper(14, 68)], [taper(20, 60)]])[1]).toBe(
      'Dec 1 st at each end of every 6th row 3 (10) times, then of every 5th (–) row 10 (–) times [14 (20) sts].',
    );
  });

  it('a size that increases where another decreases has a line of its own', () => {
    expect(lines([[taper(36, 6)], [taper(44, 6)]]).slice(1, 4)).toEqual([
      'Shape the next 6 rows as follows for your size [36 (44) sts].',
      'Size S: dec 1 st at each end of every 3rd row twice.',
      'Size M: inc 1 st at each end of every 3rd row twice.',
    ]);
  });

  it('shaping at one edge is at the edge its label names', () => {
    const neck = [taper(37, 6, { perRow: 1 })];
    expect(lines([neck], { label: 'Front neck' })[1]).toBe(
      'Dec 1 st at the neck edge on every 2nd row 3 times [37 sts].',
    );
    expect(lines([neck])[1]).toBe('Dec 1 st at the shaped edge on every 2nd row 3 times [37 sts].');
  });

  it('spacing across a row is a phrase with a repeat', () => {
    const even: Seen = { kind: 'even', rows: 2 };
    expect(lines([[even, { kind: 'evenly', to: 36, ends: 'whole' }]], { start: [41] })[2]).toBe(
      'Next row (RS): (k5, k2tog) twice, k6, k2tog, (k5, k2tog) twice, k5 [36 sts].',
    );
    expect(
      lines([
        [even, { kind: 'evenly', to: 36 }],
        [even, { kind: 'evenly', to: 39 }],
      ]).slice(2, 5),
    ).toEqual([
      'Next row (RS): dec evenly across as follows for your size [36 (39) sts].',
      'Size S: k4, k2tog, *k8, k2tog; rep from * twice more, k4.',
      'Size M: k19, k2tog, k19.',
    ]);
  });

  it('in crochet an increase works two in one, and in knitting it makes one', () => {
    const across: Seen = { kind: 'evenly', to: 44, ends: 'half' };
    expect(lines([[across]], { worked: 'round' })[1]).toBe(
      'Next round: *k10, m1; rep from * around [44 sts].',
    );
    expect(
      lines([[{ kind: 'even', rows: 1 }, across]], { worked: 'round', settings: { craft: 'crochet' } })[2],
    ).toBe('Next round: *sc 9, 2 sc in next st; rep from * around [44 sts].');
  });

  it('stockinette is purled on the wrong side', () => {
    const across: Seen = { kind: 'evenly', to: 20 };
    expect(lines([[{ kind: 'even', rows: 1 }, across]], { stitch: 'stockinette' })[2]).toBe(
      'Next row (WS): *p2tog; rep from * to end [20 sts].',
    );
  });

  it('a fabric of double crochet begins three chains on, and is a treble in the UK', () => {
    const rows: readonly Seen[] = [{ kind: 'even', rows: 3 }];
    expect(lines([rows], { stitch: 'dc', settings: { craft: 'crochet' } }).slice(0, 3)).toEqual([
      'Ch 42.',
      'Row 1 (RS): dc in the 4th ch from hook (the skipped ch count as 1 dc) and in each ch across [40 sts].',
      'Work 2 more rows even.',
    ]);
    expect(lines([rows], { stitch: 'dc', settings: { craft: 'crochet', terms: 'UK' } })[1]).toBe(
      'Row 1 (RS): tr in the 4th ch from hook (the missed ch count as 1 tr) and in each ch across [40 sts].',
    );
  });

  it('gathering goes round by round', () => {
    expect(
      lines([[{ kind: 'gather', to: 40, rounds: 3 }]], { start: [100], worked: 'round' }).slice(1, 4),
    ).toEqual([
      'Next round: *k3, k2tog; rep from * around [80 sts].',
      'Next round: *k2, k2tog; rep from * around [60 sts].',
      'Next round: *k1, k2tog; rep from * around [40 sts].',
    ]);
  });

  it('stitches are left and added in the words of the craft', () => {
    const ends = (kind: 'leave' | 'add'): Seen[] => [
      { kind, atStart: 8, atEnd: 8 },
      { kind: 'even', rows: 1 },
    ];
    expect(lines([ends('leave')])[1]).toBe(
      'Next row (RS): bind off the first 8 sts, then work even, leaving the last 8 sts on a holder [24 sts].',
    );
    expect(lines([ends('add')])[1]).toBe(
      'Next row (RS): cast on 8 sts, then work even to the end, then cast on 8 sts [56 sts].',
    );
    expect(lines([ends('leave')], { settings: { craft: 'crochet', terms: 'UK' } })).toContain(
      'Next row (RS): ss across the first 8 sts, then work even, leaving the last 8 sts unworked [24 sts].',
    );
  });

  const leaveAtStart: Seen = { kind: 'leave', atStart: 4, atEnd: 0 };
  const even = (rows: number): Seen => ({ kind: 'even', rows });

  it('an armhole is bound off at the start of the next 2 rows, once at each edge', () => {
    const armholes = [even(2), leaveAtStart, even(1), leaveAtStart, even(1), even(6)];
    expect(lines([armholes]).slice(1)).toEqual([
      'Work 2 rows even.',
      'Bind off 4 sts at the start of the next 2 rows [32 sts].',
      'Work 6 rows even.',
      'Bind off all 32 sts.',
    ]);
    expect(lines([armholes], { settings: { craft: 'crochet' } })).toContain(
      'Sl st across 4 sts at the start of each of the next 2 rows, working the others even [32 sts].',
    );
  });

  it('the rows of an edge that is bound off are not counted again in the rows after it', () => {
    expect(lines([[leaveAtStart, even(5)]]).slice(1, 3)).toEqual([
      'Next row (RS): bind off the first 4 sts, then work even to the end [36 sts].',
      'Work 4 more rows even.',
    ]);
  });

  it('a row that is shaped too is told to be the same row', () => {
    expect(lines([[leaveAtStart, { kind: 'evenly', to: 35 }]]).slice(1, 3)).toEqual([
      'On the next row, bind off the first 4 sts, working the other 36 sts as follows, that row included.',
      'Same row (RS): k17, k2tog, k17 [35 sts].',
    ]);
  });

  it('rows told by their counts are shaped one by one, and those without a change together', () => {
    expect(lines([[{ kind: 'rows', counts: [40, 40, 38, 38, 41] }]]).slice(1, 5)).toEqual([
      'Work 2 rows even.',
      'Next row (RS): k9, k2tog, k18, k2tog, k9 [38 sts].',
      'Work 1 row even.',
      'Next row (RS): k7, m1, k12, m1, k13, m1, k6 [41 sts].',
    ]);
  });

  it('a size without such rows has dashes', () => {
    expect(
      lines([
        [
          { kind: 'even', rows: 0 },
          { kind: 'evenly', to: 39 },
        ],
        [
          { kind: 'even', rows: 4 },
          { kind: 'evenly', to: 39 },
        ],
      ])[1],
    ).toBe('Work – (4) rows even.');
  });

  it('rows worked even one after another are told as one, with those that a taper begins on', () => {
    expect(
      lines([
        [
          { kind: 'even', rows: 1 },
          { kind: 'even', rows: 0 },
          taper(36, 6, { before: 2 }),
          { kind: 'even', rows: 3 },
        ],
        [
          { kind: 'even', rows: 1 },
          { kind: 'even', rows: 4 },
          taper(36, 6, { before: 2 }),
          { kind: 'even', rows: 3 },
        ],
      ]).slice(1, 4),
    ).toEqual([
      'Work 3 (7) rows even.',
      'Dec 1 st at each end of every 2nd row twice [36 sts].',
      'Work 3 rows even.',
    ]);
  });

  it('under headings of their own they stay apart, and under one they are told as one', () => {
    const even: Seen = { kind: 'even', rows: 4 };
    expect(lines([[even, even]], { label: 'Rib' })[1]).toBe('Work 8 rows even.');
    expect(lines([[even, even]], { labels: ['Rib', 'Body'] }).slice(1, 3)).toEqual([
      'Work 4 rows even.',
      'Work 4 rows even.',
    ]);
    expect(lines([[even, even, even]], { labels: ['Rib', '', 'Rib'] }).slice(1, 3)).toEqual([
      'Work 12 rows even.',
      'Bind off all 40 sts.',
    ]);
  });
});
