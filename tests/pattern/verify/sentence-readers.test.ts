import { describe, expect, it } from 'vitest';
import { readPart, sentenceReaders, type PrintedKind } from '../../../src/pattern/verify';
import { amountsIn } from '../../../src/pattern/verify/amounts';
import { positionOf, stitchesNamed, waysOfEnds } from '../../../src/pattern/verify/read-side-statements';
import { glossaryOf } from '../../../src/pattern/verify/glossary';

const all = Object.entries(sentenceReaders).flatMap(([kind, readers]) =>
  readers.flatMap(({ name, examples }) => examples.map((example) => [kind, name, example] as const)),
);

describe('the readers of sentences outside the pieces', () => {
  it.each(all)('%s, %s: reads “%s”', (kind, name, text) => {
    const { statements, unread } = readPart({
      kind: kind as PrintedKind,
      heading: '',
      blocks: [{ kind: 'paragraph', text }],
    });
    expect(unread).toEqual([]);
    expect(statements.map((one) => one.name)).toEqual([name]);
  });

  it('read the numbers of every size, and whose they are', () => {
    const { statements } = readPart({
      kind: 'materials',
      heading: 'Materials',
      blocks: [
        { kind: 'paragraph', text: 'Wool: DK: about 41 (47, –) g, 90 (103, 88) m, for Rib.' },
        {
          kind: 'paragraph',
          text: 'That is 1 (2, 1) balls of 50 g, with 12.5 % in reserve; an estimate from weighed swatches.',
        },
      ],
    });
    expect(statements).toMatchObject([
      { of: 'Wool: DK', facts: { grams: [41, 47, null], length: [90, 103, 88], unit: 'm', fabrics: 'Rib' } },
      { name: 'balls', of: 'Wool: DK', facts: { balls: [1, 2, 1], weight: [50], reserve: [12.5] } },
    ]);
  });

  it('leave what they do not know unread, and a table by its caption', () => {
    const { statements, unread } = readPart({
      kind: 'measurements',
      heading: '',
      blocks: [
        { kind: 'paragraph', text: 'Stretch it to its size.' },
        { kind: 'table', caption: 'In leagues', head: ['', 'S'], rows: [['Back', '2']] },
        {
          kind: 'table',
          caption: 'In inches',
          head: ['', 'S'],
          rows: [
            ['Back', '20⅜'],
            ['Front', 'wide'],
          ],
        },
      ],
    });
    expect(unread.map(({ text }) => text)).toEqual(['Stretch it to its size.', 'In leagues', 'Front wide']);
    expect(statements.at(-1)).toMatchObject({ of: 'Back', facts: { values: [20.375], unit: 'in' } });
  });
});

describe('what a line says beside its counts', () => {
  it.each([
    ['26 (28.5, –)', [26, 28.5, null]],
    ['2,5 (3, 3,5)', [2.5, 3, 3.5]],
    ['⅝ (1⅛)', [0.625, 1.125]],
    ['−4', [-4]],
    ['26 (28', undefined],
    ['wide', undefined],
  ])('reads the amounts “%s”', (text, amounts) => expect(amountsIn(text)).toEqual(amounts));

  it.each([
    ['*sc 6, sc2tog; rep from * 3 more times', ['sc']],
    ['htr 3, 2 htr in next st, dc 1', ['htr', 'dc']],
    ['k7, m1, k14', ['k']],
    ['p7, m1p, p2tog', ['p']],
    ['pick up 3, skip 1', []],
    ['ch 3, sl st in next st', []],
  ])('knows the stitches of “%s”', (text, names) => expect(stitchesNamed(text)).toEqual(names));

  it.each([
    ['Dec 1 st at each end of every 4th row twice', 1, 'at each end'],
    ['Dec 2 sts at the beginning of every 4th row twice', 2, 'at the start'],
    ['Inc 1 st at each side of the marker on every round', 1, 'at each side of the marker'],
    ['dec 1 st at the neck edge on row 3', 1, 'at the neck edge'],
    ['dec 8 sts evenly around on every round', 8, 'evenly'],
  ])('knows where “%s” shapes', (text, many, where) =>
    expect(positionOf(text)).toEqual({ each: many, where }),
  );

  it.each([
    ['bind off the first 8 sts and leave the last 8 sts on a holder', { start: 'bound off', end: 'held' }],
    [
      'sl st across the first 8 sts, then work even, leaving the last 8 sts unworked',
      { start: 'slipped', end: 'unworked' },
    ],
    ['cast on 8 sts, then work even to the end', { start: 'cast on' }],
    ['work even to the end, then add a foundation of 8 sts', { end: 'foundation' }],
    [
      'add a foundation of 3 sts at the start and 4 sts at the end',
      { start: 'foundation', end: 'foundation' },
    ],
  ])('knows what “%s” does with the ends', (text, ways) => expect(waysOfEnds(text)).toEqual(ways));

  it('knows what the abbreviations of a text stand for, in its terms', () => {
    const texts = ['Row 1 (RS): dc in each ch across', 'dc 6, dc2tog'];
    expect([...glossaryOf(texts, 'crochet', 'UK')]).toEqual([
      ['RS', 'right side'],
      ['ch', 'chain'],
      ['dc', 'double crochet'],
      ['dc2tog', 'double crochet 2 stitches together'],
    ]);
    expect([...glossaryOf(['k to end, m1'], 'knitting', 'US').keys()]).toEqual(['k', 'm1']);
  });
});
