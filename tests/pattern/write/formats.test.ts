// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { html, markdown, patternOf, plainText, prove, type PatternSource } from '../../../src/pattern';
import { escaped } from '../../../src/pattern/write/markdown';
import { usualSettings, type Notebook } from '../../../src/notebook';
import { value } from '../../../src/notebook/cell-builders';

const fabric = { stitches: 1.4, rows: 1.2 };

/** A square in two sizes under labels of somebody's own. */
function labelled(label: string, sizes: readonly string[] = ['S', 'M']): PatternSource {
  const notebook: Notebook = {
    title: label,
    settings: usualSettings,
    sizes: sizes.map((size, at) => ({ id: `s${at}`, label: size })),
    sections: [
      {
        id: 'all',
        label,
        cells: [
          { kind: 'swatch', id: 'fabric', name: 'fabric', label, worked: label, stitches: [], rows: [] },
          {
            kind: 'piece',
            id: 'square',
            name: 'square',
            label,
            note: label,
            worked: 'flat',
            start: value(20),
            stretches: [{ kind: 'even', name: 'all', label, fabric: 'fabric', rows: value(9) }],
            ends: 'bound off',
          },
        ],
      },
    ],
  };
  return {
    notebook,
    number: () => undefined,
    truth: () => undefined,
    errorAt: () => undefined,
    plan: () => ({
      name: '',
      worked: 'flat',
      start: 20,
      stretches: [{ kind: 'even', fabric, rows: 9 }],
      ends: 'bound off',
    }),
  };
}

/** The same with a second piece like its first. */
function withSecond(source: PatternSource, label: string, plan: PatternSource['plan']): PatternSource {
  const { notebook } = source;
  const sections = notebook.sections.map((section) => {
    const second = section.cells
      .filter(({ kind }) => kind === 'piece')
      .map((cell) => ({ ...cell, id: 'second', name: 'second', label }));
    return { ...section, cells: [...section.cells, ...second] };
  });
  return { ...source, notebook: { ...notebook, sections }, plan };
}

describe('a pattern leaves as text', () => {
  const source = labelled('Square');
  const document = patternOf(source);
  const proof = prove(document, source);

  it('with its proof stated under it', () => {
    for (const text of [
      plainText(document, { proof }),
      markdown(document, { proof }),
      html(document, { proof }),
    ]) {
      expect(text).toContain(
        'Recounted from this text, row by row, in all sizes; its names, fabrics, materials, gauge, measurements, terms and seams match the notebook. Not proven: the fit, the schematic and the designer’s own words.',
      );
    }
    const broken = {
      proven: false as const,
      where: [{ cell: 'square', piece: 'Square', size: 'S', problem: '' }],
    };
    expect(plainText(document, { proof: broken })).toContain(
      'Recount failed: this text does not match the notebook in Square.',
    );
  });

  it('with the pieces named that are not in it, and nothing claimed of them', () => {
    const without = withSecond(source, 'Sleeve', (size, cell) =>
      cell === 'second' ? { problem: 'It has no stitches.' } : source.plan(size, cell),
    );
    const document = patternOf(without);
    const proof = prove(document, without);
    expect(document.leftOut).toEqual({ pieces: ['Sleeve'], sizes: [] });
    for (const text of [
      plainText(document, { proof }),
      markdown(document, { proof }),
      html(document, { proof }),
    ]) {
      expect(text).toContain(
        'Recounted from this text, row by row, in all sizes; its names, fabrics, materials, gauge, measurements, terms and seams match the notebook. Not proven: the fit, the schematic and the designer’s own words. This is not the whole garment: Sleeve could not be calculated and is neither written nor counted.',
      );
    }
  });

  it('without a claim where there is no piece to count', () => {
    const source = { ...labelled('Square'), plan: () => ({ problem: 'It has no stitches.' }) };
    const document = patternOf(source);
    expect(plainText(document, { proof: prove(document, source) })).toContain(
      'No piece is written here, so nothing was counted: Square could not be calculated.',
    );
  });

  it('without a claim where no size has every piece', () => {
    const two = withSecond(source, 'Other', (size, cell) =>
      (size === 's0') === (cell === 'square') ? { problem: 'No.' } : source.plan(size, cell),
    );
    const document = patternOf(two);
    expect(document.leftOut.sizes).toEqual(['S', 'M']);
    expect(plainText(document, { proof: prove(document, two) })).toContain(
      'nothing was counted: no size has all its pieces.',
    );
  });

  it('with the pictures inside, where there are any', () => {
    const svg = '<svg xmlns="http://www.w3.org/2000/svg"></svg>';
    expect(html(document, { pictures: { schematic: svg } })).toContain(svg);
    expect(html(document)).not.toContain('<figure>');
  });

  it('words stand at the start of their columns, numbers at the end', () => {
    const joins = {
      kind: 'table' as const,
      key: 'joins',
      caption: 'Joins',
      head: ['Join', 'What meets'],
      rows: [['a', 'Back and front']],
      words: true as const,
    };
    const part = { key: 'made', kind: 'making up' as const, heading: 'Made', blocks: [joins] };
    const read = { ...document, parts: [part] };
    expect(markdown(read)).toContain('| :-- | :-- |');
    expect(html(read)).toContain('<table class="words">');
    expect(plainText(read)).toContain('\nJoin  What meets\na     Back and front');
    const { words: _words, ...counted } = joins;
    expect(markdown({ ...read, parts: [{ ...part, blocks: [counted] }] })).toContain('| :-- | --: |');
  });

  it('sizes stand over their columns', () => {
    const lines = plainText(document).split('\n');
    const head = lines.find((line) => /^\s+S\s+M$/.test(line))!;
    const row = lines.find((line) => line.startsWith('Square, length'))!;
    expect(head.length).toBe(row.length);
  });
});

describe('whatever a label holds comes out as text', () => {
  const hostile = [
    '<img src=x onerror=alert(1)>',
    '"quoted" & \'single\' <b>',
    '[a link](javascript:alert(1)) ![x](y)',
    '# Heading | column | **bold** _em_ `code`',
    '[x]: https://example.org',
    'https://example.org www.example.org me@example.org',
    'line\nbreak\r\n- list\t\u2028again',
    '{rows} {__proto__}',
    '-->]]></style></title></svg>',
  ];

  it.each(hostile)('%s', (label) => {
    const source = labelled(label, [label, 'M']);
    const document = patternOf(source);
    expect(prove(document, source)).toEqual({ proven: true });
    const page = html(document);
    const bodyless = page.replace(/<style>[\s\S]*?<\/style>/u, '');
    const tags = new Set(
      [...bodyless.matchAll(/<\/?([a-z][a-z0-9]*)/giu)].map((found) => found[1]!.toLowerCase()),
    );
    const ours =
      'html head meta title style body h1 h2 h3 p strong section ul li div table caption thead tr th td tbody'.split(
        ' ',
      );
    expect([...tags].filter((tag) => !ours.includes(tag))).toEqual([]);
    expect(bodyless).not.toMatch(/<[^>]*\son\w+=/iu);
    const read = new DOMParser().parseFromString(page, 'text/html');
    expect(read.querySelector('h1')!.textContent).toBe(document.title);
    expect(plainText(document).split('\n')[0]).toBe(document.title);
  });

  it.each([
    ['*sc 6, sc2tog; rep from * around', '\\*sc 6, sc2tog; rep from \\* around'],
    ['[64 (68) sts]', '\\[64 (68) sts]'],
    ['# not a heading', '\\# not a heading'],
    ['1. not a list', '1\\. not a list'],
    ['- not a list', '\\- not a list'],
    ['a | b', 'a \\| b'],
    ['<b>', '\\<b\\>'],
    ['[a](b)', '\\[a\\](b)'],
    ['see [a](b)', 'see [a\\](b)'],
    ['&amp;', '&amp;amp;'],
    ['http://x', 'http\\://x'],
  ])('Markdown of %s is %s', (text, written) => {
    expect(escaped(text)).toBe(written);
  });

  it('a label that runs from right to left keeps what stands beside it in its place', () => {
    const document = patternOf(labelled('שרוול (2)'));
    const [part] = document.parts.filter(({ kind }) => kind === 'piece');
    expect(part!.heading).toBe('\u2068שרוול (2)\u2069');
    expect(prove(patternOf(labelled('x', ['שרוול', 'M'])), labelled('x', ['שרוול', 'M']))).toEqual({
      proven: true,
    });
  });

  it('marks that turn the writing round are taken out of a label', () => {
    const document = patternOf(labelled('Sleeve \u202Ereversed\u2066'));
    expect(document.title).toBe('Sleeve reversed');
  });

  it('a label of 200 characters stays whole', () => {
    const long = 'Wide '.repeat(40).trim();
    expect(plainText(patternOf(labelled(long)))).toContain(long);
  });
});
