import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { clipboardOf, csvOf, inert, type TableCell } from '../../src/storage';

const read = (csv: string, delimiter: string): string[][] =>
  Papa.parse<string[]>(csv, { delimiter, skipEmptyLines: false }).data.slice(0, -1);

/** What an inert text was before, by the rule that made it so. */
const before = (text: string): string =>
  text.startsWith("'") && inert(text.slice(1)) === text ? text.slice(1) : text;

const texts = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 12 }),
  fc
    .tuple(
      fc.constantFrom('=', '+', '-', '@', '\t', '\r', '\n', "'", '"', ' ', ';', ',', '＝'),
      fc.string({ maxLength: 8 }),
    )
    .map(([first, rest]) => first + rest),
);

describe('the table of the sizes', () => {
  it('as CSV reads back exactly with a CSV library, hostile labels included', () => {
    fc.assert(
      fc.property(
        fc
          .integer({ min: 1, max: 5 })
          .chain((width) =>
            fc.array(fc.array(texts, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 5 }),
          ),
        fc.constantFrom('.' as const, ',' as const),
        (rows, decimal) => {
          const back = read(csvOf(rows, decimal), decimal === ',' ? ';' : ',');
          expect(back).toEqual(rows.map((row) => row.map(inert)));
          expect(back.map((row) => row.map(before))).toEqual(rows);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('holds nothing that a spreadsheet would run', () => {
    fc.assert(
      fc.property(texts, (text) => {
        expect(inert(text)).toMatch(/^(?![\s]*[=+@\t\r])(?!-(?!\d+([.,]\d+)?$))/);
      }),
      { numRuns: 500 },
    );
    expect(inert('=HYPERLINK("http://x")')).toBe('\'=HYPERLINK("http://x")');
    expect(inert("-2+3+cmd|' /C calc'!A0")).toBe("'-2+3+cmd|' /C calc'!A0");
    expect(inert('@SUM(1)')).toBe("'@SUM(1)");
    expect(inert('  =1')).toBe("'  =1");
  });

  it('keeps numbers numbers, negative ones too, in either decimal', () => {
    const rows: TableCell[][] = [['Ease', { shown: '−4.5' }, { shown: '12' }]];
    expect(csvOf(rows, '.')).toBe('Ease,-4.5,12\r\n');
    expect(csvOf([['Ease', { shown: '−4,5' }, { shown: '12' }]], ',')).toBe('Ease;-4,5;12\r\n');
    expect(inert('-5')).toBe('-5');
  });

  it('goes to the clipboard as a table and as text, in which nothing is markup and no cell breaks out', () => {
    const { text, html } = clipboardOf([
      ['<b>Back</b> & "front"', 'two\nlines\there'],
      ['=1', { shown: '−3' }],
    ]);
    expect(html).toBe(
      "<table><tr><td>&lt;b&gt;Back&lt;/b&gt; &amp; &quot;front&quot;</td><td>two\nlines\there</td></tr><tr><td>'=1</td><td>-3</td></tr></table>",
    );
    expect(text).toBe('<b>Back</b> & "front"\ttwo lines here\n\'=1\t-3');
  });
});
