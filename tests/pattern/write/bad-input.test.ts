import { describe, expect, it } from 'vitest';
import { type Notebook, type PieceStretch } from '../../../src/notebook';
import { singleSleeve } from '../../../src/starters';
import { even, f, measure, piece, swatch, value } from '../../../src/notebook/cell-builders';
import { usualSettings } from '../../../src/notebook';
import { patternOf, plainText, prove, sentencesOf } from '../../../src/pattern';
import { sourceOf } from './source-of';
import { edited } from '../../notebook/edited';
import { vNeck } from '../../notebooks/v-neck';

const given = (notebook: Notebook, cell: string, size: string | null, value: number | null): Notebook =>
  edited(notebook, { do: 'give', cell, key: 'value', size, value });

describe('what cannot be worked is not printed wrong', () => {
  it('a size with an error is left out, with a note, and the others stay proven', async () => {
    const source = await sourceOf(given(vNeck(), 'neck-width', 'm', null));
    const document = patternOf(source);
    expect(document.sizes.map(({ label }) => label)).toEqual(['XS', 'S', 'L', 'XL', '2X', '3X', '4X', '5X']);
    expect(document.notes).toHaveLength(1);
    expect(document.notes[0]!.text).toMatch(/^Size M is left out: in Front, /u);
    expect(prove(document, source)).toEqual({ proven: true });
  });

  it('a piece that works in no size is left out, and the other pieces stay', async () => {
    const source = await sourceOf(
      edited(vNeck(), { do: 'give', cell: 'rib', key: 'rows.0.count', size: null, value: null }),
    );
    const document = patternOf(source);
    expect(document.parts.filter(({ kind }) => kind === 'piece').map(({ heading }) => heading)).toEqual([
      'Back',
      'Front',
    ]);
    expect(document.notes[0]!.text).toMatch(/^Band, worked is left out: it works out in no size\./u);
  });

  it('a join that does not match is noted with its message', async () => {
    const source = await sourceOf(vNeck());
    const failing = {
      ...source,
      truth: (size: string, cell: string, key: string) =>
        cell === 'side-seams' && size === 'm' ? false : source.truth(size, cell, key),
    };
    expect(patternOf(failing).notes).toEqual([
      {
        text: 'Side seams: in size M the sides do not match. Back and front have other numbers of rows below the underarm, so the side seam will not lie flat.',
        about: { cell: 'side-seams' },
      },
    ]);
  });

  it('a notebook with nothing in it gives a document with nothing wrong in it', async () => {
    const source = await sourceOf({
      title: '',
      settings: usualSettings,
      sizes: [{ id: 'm', label: '' }],
      sections: [],
    });
    const document = patternOf(source);
    expect(document.parts).toEqual([]);
    expect(prove(document, source)).toEqual({ proven: true });
    expect(() => plainText(document)).not.toThrow();
  });

  it('sizes of the same label are noted, since a maker could not tell them apart', async () => {
    const notebook = vNeck();
    const source = await sourceOf({
      ...notebook,
      sizes: notebook.sizes.map((size) => ({ ...size, label: 'One' })),
    });
    expect(patternOf(source).notes.map(({ text }) => text)).toContain(
      'Several sizes are labelled One: give each a label of its own, or nobody can tell which line is theirs.',
    );
  });
});

describe('a long pattern stays legible', () => {
  const long = (stretches: readonly PieceStretch[], start: number): Notebook => ({
    title: 'Long',
    settings: usualSettings,
    sizes: [
      { id: 's', label: 'S' },
      { id: 'm', label: 'M' },
    ],
    sections: [
      {
        id: 'all',
        label: '',
        cells: [
          swatch('Fabric', { worked: '', stitches: 20, rows: 20 }),
          measure('Start', 'stitches', { each: { s: start, m: start + 7 } }),
          piece('Blanket', 'flat', 'start', stretches),
        ],
      },
    ],
  });

  it('with 40 stretches', async () => {
    const stretches = Array.from({ length: 40 }, (_stretch, at) =>
      even(`Stripe ${at + 1}`, 'fabric', `ROWS(${at + 1})`),
    );
    const source = await sourceOf(long(stretches, 60));
    const document = patternOf(source);
    expect(prove(document, source)).toEqual({ proven: true });
    expect(Math.max(...sentencesOf(document).map(({ text }) => text.length))).toBeLessThan(250);
  });

  it.each([617, 383, 501, 999])('from a thousand stitches to %i in one row', async (to) => {
    const across: PieceStretch = {
      kind: 'evenly',
      name: 'across',
      label: 'Across',
      fabric: 'fabric',
      to: value(to),
      ends: 'half',
    };
    const next = { ...across, name: 'again', to: f('STS(1000)') };
    const source = await sourceOf(
      long(
        to < 504
          ? [even('First', 'fabric', 'ROWS(2)'), next]
          : [even('First', 'fabric', 'ROWS(2)'), across, next],
        1000,
      ),
    );
    const document = patternOf(source);
    expect(prove(document, source)).toEqual({ proven: true });
    expect(Math.max(...sentencesOf(document).map(({ text }) => text.length))).toBeLessThan(250);
  });

  it('the sleeve in both sizes takes fewer than a dozen lines', async () => {
    const document = patternOf(await sourceOf(singleSleeve()));
    const [sleeve] = document.parts.filter(({ kind }) => kind === 'piece');
    expect(sleeve!.blocks.filter(({ kind }) => kind === 'line').length).toBeLessThan(12);
  });
});
