import { beforeAll, describe, expect, it } from 'vitest';
import type { Settings } from '../../src/notebook';
import { cardigan } from '../../src/starters';
import { patternOf, plainText } from '../../src/pattern';
import { sourceOf } from '../pattern/write/source-of';

/*
 * The printed cardigan read by someone with a pencil, in size S and in 3X: every number worked again from the swatches,
 * the chart's inches and the ease, with its working beside it, and nothing of the notebook's own arithmetic.
 *
 * Swatches to 10 cm: body 14 sts and 12 rows, rib 15 and 14, band 16 and 18. Chart, from memory after the Craft Yarn
 * Council's women's sizes, the middle of each range, in inches:
 *      bust  neck to wrist  back waist  upper arm  armhole
 *   S   33       28.25          17        10.25      6.75
 *  3X   53       32.75          18        17         9.25
 */
type Own = 'S' | '3X';
const labels = ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X'];

/** A text as a reader marks it who makes one size: her number of every list, her line of those for some sizes. */
function marked(text: string, own: Own): string {
  const number = String.raw`(?:\d+(?:\.\d+)?(?:st|nd|rd|th)?|–)`;
  const list = new RegExp(String.raw`(${number}) \((${number}(?:, ${number})*)\)`, 'gu');
  const mark = (line: string, sizes: readonly string[]): string =>
    line.replace(list, (all, first: string, others: string) => {
      const numbers = [first, ...others.split(', ')];
      return numbers.length === sizes.length ? numbers[sizes.indexOf(own)]! : all;
    });
  return text
    .split('\n')
    .flatMap((line) => {
      const [, first, others, work] = /^Sizes? (\S+?)(?: \(([^)]+)\))?: (.*)$/u.exec(line) ?? [];
      if (first === undefined || work === undefined || line.startsWith('Sizes: '))
        return [mark(line, labels)];
      const sizes = [first, ...(others ?? '').split(', ').filter(Boolean)];
      return sizes.includes(own) ? [mark(work, sizes)] : [];
    })
    .join('\n');
}

/** What stands under a heading. */
function under(text: string, heading: string): string {
  const parts = text.split(/\n(?=[^\n]+\n-{3,}\n)/u);
  const [part] = parts.filter((one) => one.trimStart().startsWith(`${heading}\n-`));
  if (part === undefined) throw new Error(`Nothing stands under ${heading}.`);
  return part;
}

/** The numbers that a form finds under a heading. */
function numbers(text: string, heading: string, form: RegExp): number[] {
  const found = form.exec(under(text, heading));
  if (!found) throw new Error(`${heading}: nothing reads like ${String(form)}.`);
  return found.slice(1).map(Number);
}

const printed = async (settings: Partial<Settings> = {}): Promise<string> => {
  const notebook = cardigan();
  return plainText(
    patternOf(await sourceOf({ ...notebook, settings: { ...notebook.settings, ...settings } })),
  );
};

let text: string;
const read = {} as Record<Own, string>;
beforeAll(async () => {
  text = await printed();
  for (const own of ['S', '3X'] as const) read[own] = marked(text, own);
});

/** The cells of a row of the tables of measurements. */
const measure = (own: Own, row: string): number => {
  const line = text.split('\n').find((one) => one.startsWith(`${row}  `))!;
  return Number(
    line
      .trim()
      .split(/ +/u)
      .at(labels.indexOf(own) - labels.length),
  );
};

type Line = readonly [heading: string, form: RegExp, s: readonly number[], three: readonly number[]];

const lines: readonly Line[] = [
  // Bust 33 in = 83.82 and 16 of ease is 99.82 cm, 139.75 sts at 1.4; one band of 5 rows at 1.8 is 2.78 cm or 3.89 sts.
  // Left over are 135.86 for an odd back and two fronts: 135, or 96.43 cm; 69 + 2 · 33 come nearest to halves (69 and 69.9).
  // 53 in: 134.62 + 16 = 150.62 cm, 210.87 sts less 3.89 = 206.98: 207; 105 + 2 · 51 (105 and 105.9).
  // The hem's rows run along it: 69 / 1.4 · 1.4 = 69. Its stitches: 6 · 1.5 = 9, and 2 ch to turn.
  [
    'Back hem',
    /Ch (\d+)\.\nRow 1 .* 3rd ch .*\[(\d+) sts\]\.\n\nRib\nWork (\d+) more/u,
    [11, 9, 68],
    [11, 9, 104],
  ],
  [
    'Front hem',
    /Ch (\d+)\.\nRow 1 .* 3rd ch .*\[(\d+) sts\]\.\n\nRib\nWork (\d+) more/u,
    [11, 9, 32],
    [11, 9, 50],
  ],
  ['Back', /Row 1 .*\[(\d+) sts\]\.\nHem: (\d+) sts over (\d+) row ends/u, [69, 69, 69], [105, 105, 105]],
  ['Right front', /Row 1 .*\[(\d+) sts\]\.\nHem: (\d+) sts over (\d+) row ends/u, [33, 33, 33], [51, 51, 51]],
  ['Left front', /Row 1 .*\[(\d+) sts\]\.\nHem: (\d+) sts over (\d+) row ends/u, [33, 33, 33], [51, 51, 51]],
  // Body length 17 in + 16 = 59.18 cm; the armhole is 6.75 in + 2.5 = 19.645, more than half of 10.25 in + 12 (19.02).
  // 59.18 − 6 − 19.645 = 33.535 cm or 40.2 rows: 40, the pick-up among them. 18 in + 16 = 61.72; half of 17 in + 12 is
  // 27.59, more than 9.25 in + 2.5 (26.0); 61.72 − 6 − 27.59 = 28.13 or 33.8: 34.
  ['Back', /Hem to underarm\nWork (\d+) more rows even/u, [39], [33]],
  ['Right front', /Hem to underarm\nWork (\d+) more rows even/u, [39], [33]],
  ['Left front', /Hem to underarm\nWork (\d+) more rows even/u, [39], [33]],
  // 4.5 cm left at each side is 6.3 sts, 7 cm is 9.8: 6 and 10. 69 − 12 = 57, 105 − 20 = 85; 33 − 6 = 27, 51 − 10 = 41.
  [
    'Back',
    /sl st across the first (\d+) sts, .* the last (\d+) sts unworked \[(\d+) sts\]/u,
    [6, 6, 57],
    [10, 10, 85],
  ],
  [
    'Right front',
    /Underarm\nNext row \(RS\): work even, leaving the last (\d+) .*\[(\d+) sts\]/u,
    [6, 27],
    [10, 41],
  ],
  [
    'Left front',
    /Underarm\nNext row \(RS\): sl st across the first (\d+) .*\[(\d+) sts\]/u,
    [6, 27],
    [10, 41],
  ],
  // The armhole is 23.6 rows, so 24, and 33.1: 33; the back ends 2 rows below the top, its underarm row among the rest.
  ['Back', /Underarm to shoulder\nWork (\d+) more rows even\.\nFasten off/u, [21], [30]],
  // The neck is 7 and 8 cm deep: 12.645 · 1.2 = 15.2, to the even 16; 19.59 · 1.2 = 23.5: 24. One is the underarm row.
  ['Right front', /Underarm to neck\nWork (\d+) more/u, [15], [23]],
  ['Left front', /Underarm to neck\nWork (\d+) more/u, [15], [23]],
  // Back neck 20 · 1.4 = 28, odd 29; 22.5 · 1.4 = 31.5, odd 31. Shoulders (57 − 29) / 2 = 14 and (85 − 31) / 2 = 27.
  // For the neck of a front 27 − 14 = 13 and 41 − 27 = 14: a third of it, 4.3 and 4.7, up to 5 and 5; a quarter, 3.25
  // and 3.5, is 3 and 4; 5 and 5 are left. Rows: 24 + 2 − 16 = 10 and 33 + 2 − 24 = 11, of which 2 have left stitches and
  // 2 end it even: 5 decreases in 6 rows, 4 · 1 + 1 · 2; in 7, 3 · 1 + 2 · 2.
  [
    'Right front',
    /\(RS\): sl st across the first (\d+) sts, then work even to the end \[(\d+) sts/u,
    [5, 22],
    [5, 36],
  ],
  ['Right front', /\(WS\): work even, leaving the last (\d+) sts unworked \[(\d+) sts/u, [3, 19], [4, 32]],
  [
    'Left front',
    /neck.*\nWork .*\n\n.*\nNext row \(RS\): work even, leaving the last (\d+) sts unworked \[(\d+) sts/u,
    [5, 22],
    [5, 36],
  ],
  [
    'Left front',
    /\(WS\): sl st across the first (\d+) sts, then work even to the end \[(\d+) sts/u,
    [3, 19],
    [4, 32],
  ],
  ...(['Right front', 'Left front'] as const).map((front): Line => [
    front,
    /Dec 1 st at the neck edge on every row (\d+) times, then on every 2nd row (\d+) times \[(\d+) sts\]\.\nWork (\d+) rows even/u,
    [4, 1, 14, 2],
    [3, 2, 27, 2],
  ]),
  // A cuff of 18.5 cm is 25.9 rows, to the even 26; 24.5 is 34.3: 34. Six stitches in five: 31.2 and 40.8, odd 31 and 41.
  ['Cuff', /Ch (\d+)\.\nRow 1 .*\[(\d+) sts\]\.\n\nRib\nWork (\d+) more/u, [11, 9, 25], [11, 9, 33]],
  ['Sleeve', /Row 1 .*\[(\d+) sts\]\.\nCuff: (\d+) sts over (\d+) row ends/u, [31, 31, 26], [41, 41, 34]],
  // Top: twice 24 rows is 40 cm or 56 sts, odd 57; twice 33 is 55 cm, 77. Length: 28.25 in less half of 57 / 1.4 is
  // 71.755 − 20.357 = 51.398, less the cuff of 6 cm: 45.398 or 54.5 rows, 54. 83.185 − 30.357 − 6 = 46.828: 56.2, 56.
  // Sewn to the underarm: 6 / 1.4 · 1.2 = 5.1 and 10 / 1.4 · 1.2 = 8.6, so 5 and 9. The taper has 49 rows and 47, the first
  // even: 13 increases in 48 are 9 · 4 + 4 · 3, and 18 in 46 are 10 · 3 + 8 · 2.
  [
    'Sleeve',
    /of every (\d)\w\w row (\d+) times, then of every (\d)\w\w row (\d+) times \[(\d+) sts\]\.\n\n.*\nWork (\d+) rows even/u,
    [4, 9, 3, 4, 57, 5],
    [3, 10, 2, 8, 77, 9],
  ],
  // Along the neck of a front: 5 / 1.4 + 1 / 1.2 + 3 / 1.4 + 1 / 1.2, then 4 slopes of √(0.714² + 0.833²) = 1.098, one of
  // √(0.714² + 1.667²) = 1.813, and 2 / 1.2 up: 15.25 cm, at 1.6 24.4 sts. 3X: 9 / 1.4 + 2 / 1.2 + 3 · 1.098 + 2 · 1.813
  // + 2 / 1.2 = 16.68 cm, 26.7. Together with the back neck: 24 + 29 + 24 and 27 + 31 + 27.
  ['Neckband', /\[(\d+) sts\]\.\nRight .*: (\d+) sts, .* along ([\d.]+) cm/u, [77, 24, 15.3], [85, 27, 16.7]],
  [
    'Neckband',
    /Back neck: (\d+) sts, .*\nLeft .*: (\d+) sts, .* along ([\d.]+) cm/u,
    [29, 24, 15.3],
    [31, 27, 16.7],
  ],
  // 2.2 · 1.8 = 3.96 rows: 4. Of the bands 3 · 1.8 = 5.4: 5.
  ['Neckband', /Band\nWork (\d+) more/u, [3], [3]],
  ['Button band', /Band\nWork (\d+) more/u, [4], [4]],
  // 40 + 16 and 34 + 24 row ends at 1.6 / 1.2, four in three: 74.67 and 77.33; 4 of the neckband at about 1.6 / 1.8: 3.5;
  // the hem 9: 87.17 and 89.83. Seven holes of 2 with 3 before and after and six even gaps: 20 + 6 · 11 = 86, 20 + 6 · 12
  // = 92. Shared out: 86 / 87.17 of each is 73.7, 3.5 and 8.9: 74, 3 and 9; 92 / 89.83 is 79.2, 3.6 and 9.2: 79, 4, 9.
  ...(['Button band', 'Buttonhole band'] as const).flatMap((band): Line[] => [
    [band, /Row 1 .*\[(\d+) sts\]/u, [86], [92]],
    [band, /Hem: (\d+) sts, one in each st/u, [9], [9]],
    [band, /Front: (\d+) sts over (\d+) row ends, about (\d) in every (\d)/u, [74, 56, 4, 3], [79, 58, 4, 3]],
    [band, /Neckband: (\d+) sts over (\d+) row ends/u, [3, 4], [4, 4]],
  ]),
  ['Buttonhole band', /Before the buttonholes\nWork (\d+) more row even/u, [1], [1]],
  [
    'Buttonhole band',
    /sc (\d+), ch (\d), skip (\d) sts, \*sc (\d+), ch (\d), skip (\d) sts; rep from \* (\d) more times, sc (\d+) \[(\d+)/u,
    [3, 2, 2, 11, 2, 2, 5, 3, 86],
    [3, 2, 2, 12, 2, 2, 5, 3, 92],
  ],
  [
    'Buttonhole band',
    /the first of those below, work (\d) sc in each chain space\.\nWork (\d+) rows even/u,
    [2, 2],
    [2, 2],
  ],
  ['Making up', /Side seams: join row to row, (\d+) rows/u, [40], [34]],
  ['Making up', /Hems at the sides: join stitch to stitch, (\d+) sts/u, [9], [9]],
  ['Making up', /Shoulders: join stitch to stitch, (\d+) sts/u, [14], [27]],
  ['Materials', /Buttons: (\d+)\./u, [7], [7]],
];

describe.each(['S', '3X'] as const)('the cardigan by hand, in size %s', (own) => {
  it('has in every line the numbers that the swatches and the chart come to', () => {
    const got = lines.map(([heading, form]) => [heading, form.source, numbers(read[own], heading, form)]);
    expect(got).toEqual(
      lines.map(([heading, form, s, three]) => [heading, form.source, own === 'S' ? s : three]),
    );
  });

  it('measures what its stitches and rows come to', () => {
    const rows = own === 'S' ? { back: 62, front: 66, sleeve: 54 } : { back: 65, front: 69, sleeve: 56 };
    const wanted: Record<string, number> = {
      'To fit: bust': own === 'S' ? 33 * 2.54 : 53 * 2.54,
      // 69 + 66, and 105 + 102, with one band of 5 rows over the other.
      'Finished bust': (own === 'S' ? 135 : 207) / 1.4 + 5 / 1.8,
      // The hem, and from it to two rows above the back: 40 + 24 and 34 + 33 rows.
      'Finished length': 9 / 1.5 + (own === 'S' ? 64 : 67) / 1.2,
      'Finished sleeve': 9 / 1.5 + rows.sleeve / 1.2,
      'Back hem, length': (own === 'S' ? 69 : 105) / 1.4,
      'Back, width at the start': (own === 'S' ? 69 : 105) / 1.4,
      'Back, width at the end': (own === 'S' ? 57 : 85) / 1.4,
      'Back, length': rows.back / 1.2,
      'Front hem, length': (own === 'S' ? 33 : 51) / 1.4,
      'Right front, width at the start': (own === 'S' ? 33 : 51) / 1.4,
      'Right front, width at the end': (own === 'S' ? 14 : 27) / 1.4,
      'Right front, length': rows.front / 1.2,
      'Left front, width at the start': (own === 'S' ? 33 : 51) / 1.4,
      'Left front, width at the end': (own === 'S' ? 14 : 27) / 1.4,
      'Left front, length': rows.front / 1.2,
      'Cuff, width': 6,
      'Cuff, length': (own === 'S' ? 26 : 34) / 1.4,
      'Sleeve, width at the start': (own === 'S' ? 31 : 41) / 1.4,
      'Sleeve, width at the end': (own === 'S' ? 57 : 77) / 1.4,
      'Sleeve, length': rows.sleeve / 1.2,
      'Neckband, width': (own === 'S' ? 77 : 85) / 1.6,
      'Neckband, length': 4 / 1.8,
      'Button band, width': (own === 'S' ? 86 : 92) / 1.6,
      'Button band, length': 5 / 1.8,
      'Buttonhole band, width': (own === 'S' ? 86 : 92) / 1.6,
      'Buttonhole band, length': 5 / 1.8,
    };
    for (const [row, cm] of Object.entries(wanted))
      expect(measure(own, row), row).toBe(Number(cm.toFixed(1)));
  });

  it('picks up along every edge as many as are said, from one end of it to the other', () => {
    const spread: [string, RegExp, rowEnds: number, sts: number][] = [
      ['Sleeve', /To come out even.*:(?:\n| )(.*)/u, own === 'S' ? 26 : 34, own === 'S' ? 31 : 41],
      [
        'Button band',
        /Front: .*\nTo come out even.*:(?:\n| )(.*)/u,
        own === 'S' ? 56 : 58,
        own === 'S' ? 74 : 79,
      ],
      [
        'Buttonhole band',
        /Front: .*\nTo come out even.*:(?:\n| )(.*)/u,
        own === 'S' ? 56 : 58,
        own === 'S' ? 74 : 79,
      ],
    ];
    for (const [heading, form, rowEnds, sts] of spread) {
      const words = form.exec(under(read[own], heading))![1]!;
      // Each repeat, and what stands outside of one, as the stitches of one row end after the other.
      const ends = [...words.matchAll(/\(([^)]+)\) (\d+) times|([^(),]+(?:, [^(),]+)*)/gu)].flatMap(
        ([, inside, times, alone]) => {
          const one = [
            ...(inside ?? alone ?? '').matchAll(/(\d) in (?:each of )?the next(?: (\d+))? row ends?/gu),
          ];
          const run = one.flatMap(([, some, many]) =>
            new Array<number>(Number(many ?? 1)).fill(Number(some)),
          );
          return new Array<number[]>(Number(times ?? 1)).fill(run).flat();
        },
      );
      expect(ends, words).toHaveLength(rowEnds);
      let sum = 0;
      const off = ends.map((some, at) => Math.abs((sum += some) - ((at + 1) * sts) / rowEnds));
      expect(sum, words).toBe(sts);
      // Nowhere more than two stitches before or behind an even spread: more would show.
      expect(Math.max(...off), words).toBeLessThan(2);
    }
  });

  it('is sewn and edged along lengths that meet', () => {
    const mine = read[own];
    const one = (heading: string, form: RegExp): number => numbers(mine, heading, form)[0]!;
    // Round an armhole go the rows from the underarm up, of the back and of a front, and their underarm row.
    const back = 1 + one('Back', /Underarm to shoulder\nWork (\d+) more/u);
    const [each, every2nd, , even] = numbers(
      mine,
      'Left front',
      /on every row (\d+) times, .* 2nd row (\d+) times \[(\d+) sts\]\.\nWork (\d+)/u,
    );
    const toNeck = 1 + one('Left front', /Underarm to neck\nWork (\d+) more/u);
    const front = toNeck + 2 + each! + 2 * every2nd! + even!;
    expect(Math.abs(measure(own, 'Sleeve, width at the end') - (back + front) / 1.2)).toBeLessThan(1);
    // The shoulder seam is two rows behind the top: the sleeve's middle is halfway, and not at the seam.
    expect(front - back).toBe(4);
    expect(under(mine, 'Sleeve')).toMatch(
      /its middle halfway round them, .* in front of the shoulder seam;/u,
    );
    expect(under(mine, 'Sleeve')).toContain('Then join the edges of the sleeve, and the ends of its cuff.');
    const left = one('Back', /sl st across the first (\d+)/u);
    const sewn = one('Sleeve', /Sewn to the underarm\nWork (\d+)/u);
    expect(Math.abs(left / 1.4 - sewn / 1.2)).toBeLessThan(0.5);
    // Both fronts and the back have as many rows below the underarm.
    const below = ['Back', 'Right front', 'Left front'].map((of) => one(of, /to underarm\nWork (\d+)/u));
    expect(new Set(below).size).toBe(1);
    // Both bands have as many rows: 1 + 4, and 1 + 1 with the holes on the third and two after it.
    const after = one('Button band', /Band\nWork (\d+) more/u);
    const before = one('Buttonhole band', /Before the buttonholes\nWork (\d+) more/u);
    const last = one('Buttonhole band', /chain space\.\nWork (\d+) rows even/u);
    expect(1 + before + 1 + last).toBe(1 + after);
    // A band is as long as the hem, the front's rows and the neckband together, within a twentieth.
    const neckbandRows = 1 + one('Neckband', /Band\nWork (\d+) more/u);
    const edge = 6 + (1 + below[0]! + toNeck) / 1.2 + neckbandRows / 1.8;
    expect(Math.abs(measure(own, 'Button band, width') / edge - 1)).toBeLessThan(0.05);
    expect(one('Button band', /Front: \d+ sts over (\d+) row ends/u)).toBe(1 + below[0]! + toNeck);
    expect(one('Button band', /Neckband: \d+ sts over (\d+) row ends/u)).toBe(neckbandRows);
    // Along the neck a band may draw in, and not flare: it has 3 to 10 % less than the edge.
    const [neck] = numbers(mine, 'Neckband', /Back neck: (\d+)/u);
    const [frontNeck] = numbers(mine, 'Neckband', /Left front neck: .* along ([\d.]+) cm/u);
    const drawn = 1 - measure(own, 'Neckband, width') / (2 * frontNeck! + neck! / 1.4);
    expect(drawn).toBeGreaterThan(0.03);
    expect(drawn).toBeLessThan(0.1);
    // The back neck is what lies between the shoulders.
    expect(neck).toBe(
      one('Back', /unworked \[(\d+) sts\]/u) - 2 * one('Making up', /Shoulders: .*, (\d+) sts/u),
    );
    // Buttons are 6 to 10 cm apart, and all gaps are one number.
    const [width, gap] = numbers(mine, 'Buttonhole band', /skip (\d) sts, \*sc (\d+)/u);
    expect((width! + gap!) / 1.6).toBeGreaterThan(6);
    expect((width! + gap!) / 1.6).toBeLessThan(10);
    // The cuff, pulled as its swatch was, 13.5 for 10, goes over a hand of 20.2 cm.
    expect(measure(own, 'Cuff, length') * 1.35).toBeGreaterThan(20.2);
  });

  it('takes the yarn of its stitches, row by row, and of its printed shapes within a fiftieth', () => {
    const s = own === 'S';
    const row = (form: string): number => measure(own, form);
    // Stitches of the back: 40 rows of 69 and 22 of 57; 34 of 105 and 31 of 85.
    const back = s ? 40 * 69 + 22 * 57 : 34 * 105 + 31 * 85;
    // Of a front: 40 · 33, 16 · 27, 22, 19, then 18, 17, 16, 15, 15, 14, 14, 14; 34 · 51, 24 · 41, 36, 32, then 31, 30, 29, 29,
    // 28, 28, 27, 27, 27.
    const front = s
      ? 40 * 33 + 16 * 27 + 22 + 19 + 18 + 17 + 16 + 15 + 15 + 14 + 14 + 14
      : 34 * 51 + 24 * 41 + 36 + 32 + 31 + 30 + 29 + 29 + 28 + 28 + 27 + 27 + 27;
    // Of a sleeve: 31 once; nine times three rows and a wider one, four times two and a wider one; 57 five times.
    let [sleeve, sts] = s ? [31, 31] : [41, 41];
    for (const [every, times] of s
      ? [[4, 9] as const, [3, 4] as const]
      : [[3, 10] as const, [2, 8] as const]) {
      for (let done = 0; done < times; done++) {
        sleeve += (every - 1) * sts + sts + 2;
        sts += 2;
      }
    }
    sleeve += s ? 5 * 57 : 9 * 77;
    const body = (back + 2 * front + 2 * sleeve) / (1.4 * 1.2);
    const rib = (9 * (s ? 69 + 2 * 33 + 2 * 26 : 105 + 2 * 51 + 2 * 34)) / (1.5 * 1.4);
    const band = (s ? 4 * 77 + 10 * 86 : 4 * 85 + 10 * 92) / (1.6 * 1.8);
    // 400 cm² of the body weigh 25 g, 225 of the rib 16, 144 of the band 10.5; a tenth in reserve; 100 m in 50 g.
    const weigh = (b: number, r: number, e: number): number =>
      1.1 * ((b / 400) * 25 + (r / 225) * 16 + (e / 144) * 10.5);
    const grams = weigh(body, rib, band);
    const [, g, m, balls] = /about (\d+) g, (\d+) m, .*\n.*is (\d+) balls of 50 g, with 10 %/u
      .exec(under(read[own], 'Materials'))!
      .map(Number);
    expect(g).toBe(Math.round(grams));
    expect(Math.abs(m! - 2 * grams)).toBeLessThanOrEqual(1);
    expect(balls).toBe(Math.ceil(grams / 50));

    // Another way: each piece as rectangles and trapezoids of the printed table.
    const [wide, narrow] = [row('Back, width at the start'), row('Back, width at the end')];
    const below = (s ? 40 : 34) / 1.2;
    const upTo = (s ? 16 : 24) / 1.2;
    const broad = row('Right front, width at the start');
    const chest = broad - (wide - narrow) / 2;
    const shapes =
      wide * below +
      narrow * (row('Back, length') - below) +
      2 *
        (broad * below +
          chest * upTo +
          ((chest + row('Right front, width at the end')) / 2) *
            (row('Right front, length') - below - upTo)) +
      (row('Sleeve, width at the start') + row('Sleeve, width at the end')) * row('Sleeve, length');
    const ribs = 6 * (row('Back hem, length') + 2 * row('Front hem, length') + 2 * row('Cuff, length'));
    const bands =
      row('Neckband, width') * row('Neckband, length') +
      2 * row('Button band, width') * row('Button band, length');
    expect(Math.abs(weigh(shapes, ribs, bands) / grams - 1)).toBeLessThan(0.02);
  });
});

describe('in other terms, another unit and another craft', () => {
  it('the same cardigan has the same numbers', async () => {
    const digits = (one: string): (string | undefined)[] =>
      one.split('\n').map((line) => line.replace(/[^\d]+/gu, ' ').trim());
    expect(
      digits(await printed({ terms: 'UK' }))
        .join('\n')
        .replace(/\n+/gu, '\n'),
    ).toContain(digits(under(text, 'Right front')).join('\n').replace(/\n+/gu, '\n').trim());
    // 99.21 and 150.63 cm are 39.06 and 59.30 in: 39 and 59¼ to the nearest eighth; 59.33 and 61.83 are 23.36 and 24.34.
    const inches = await printed({ length: 'in', gaugeOver: '4 in' });
    const cells = (row: string): string[] =>
      inches
        .split('\n')
        .find((line) => line.startsWith(`${row}  `))!
        .trim()
        .split(/ +/u)
        .slice(-labels.length);
    expect(['S', '3X'].map((own) => cells('Finished bust')[labels.indexOf(own)])).toEqual(['39', '59¼']);
    expect(['S', '3X'].map((own) => cells('Finished length')[labels.indexOf(own)])).toEqual(['23⅜', '24⅜']);
  });

  it('knitted, the right front has its armhole where its right-side rows end, and the neck is as long', async () => {
    const knitted = await printed({ craft: 'knitting' });
    for (const [own, neckband] of [
      ['S', [77, 24, 15.3]],
      ['3X', [85, 27, 16.7]],
    ] as const) {
      const mine = marked(knitted, own);
      expect(under(mine, 'Right front')).toMatch(/Underarm\nNext row \(RS\): work even, leaving the last/u);
      expect(under(mine, 'Left front')).toMatch(/Underarm\nNext row \(RS\): bind off the first/u);
      expect(
        numbers(mine, 'Neckband', /pick up (\d+) sts .*\nRight .*: (\d+) sts, .* along ([\d.]+) cm/u),
      ).toEqual(neckband);
    }
  });
});
