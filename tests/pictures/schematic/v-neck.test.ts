import { beforeAll, describe, expect, it } from 'vitest';
import { lengthOf, workPiece } from '../../../src/craft';
import { joinsOf } from '../../../src/notebook/joins';
import {
  joinsInWords,
  missingOf,
  schematicDrawn,
  schematicSvg,
  schematicTable,
  silhouetteDrawn,
  silhouetteTable,
  type SchematicSpec,
} from '../../../src/pictures/schematic';
import { measuresOf } from '../../../src/pictures/schematic/measures';
import { hatCrown } from '../../../src/starters/hat-crown';
import { specOf } from './spec-of';
import { blouseSleeve } from '../../notebooks/blouse-sleeve';
import { motifBorder } from '../../notebooks/motif-border';
import { underarm } from '../../notebooks/underarm';
import { vNeck } from '../../notebooks/v-neck';

let spec: SchematicSpec;
beforeAll(async () => {
  spec = await specOf(vNeck());
});

const pieceOf = (id: string) => spec.pieces.find((piece) => piece.id === id)!;

describe('the measurements of the V-neck', () => {
  it('are said to have letters where letters stand on the lines: for all sizes, and not for one', () => {
    expect(schematicDrawn({ ...spec, size: 'all' }).about).toContain('a capital letter stands for a line');
    expect(schematicDrawn({ ...spec, size: 'm', width: 960 }).about).not.toContain('letter');
    expect(schematicDrawn({ ...spec, size: 'm', width: 240 }).about).toContain('a capital letter');
  });

  it('are in every size those of the worked rows', () => {
    for (const piece of spec.pieces) {
      const measures = measuresOf(piece);
      piece.sizes.forEach((size, at) => {
        const rows = workPiece(size.plan!);
        const called = (label: string) => measures.find((measure) => measure.label.endsWith(label));
        const [start, end] = [rows[0]!.width, rows.at(-1)!.width];
        const first = measures[0]!;
        expect(first.values[at]).toBe(start);
        if (called('at the end')) expect(called('at the end')!.values[at]).toBe(end);
        else expect(end).toBe(start);
        expect(measures.at(-1)!.values[at]).toBeCloseTo(lengthOf(rows), 9);
      });
    }
  });

  it('the parts of a length add up to all of it', () => {
    for (const { id } of spec.pieces) {
      const lengths = measuresOf(pieceOf(id)).filter(({ of }) => of === 'length');
      if (lengths.length < 2) continue;
      spec.sizes.forEach((_size, at) => {
        const parts = lengths.filter(
          ({ at: positions }) => positions[at]?.on === 'side' && positions[at].tier === 0,
        );
        const sum = parts.reduce((total, { values }) => total + values[at]!, 0);
        expect(sum).toBeCloseTo(lengths.at(-1)!.values[at]!, 9);
      });
    }
  });

  it('the depth of the armhole is told from where the underarm is left to the shoulder', async () => {
    const top = await specOf(underarm());
    const back = measuresOf(top.pieces.find(({ id }) => id === 'back')!).map(({ label }) =>
      label.replace(/[\u2068\u2069]/g, ''),
    );
    expect(back).toEqual([
      'Width at the start',
      'Width at the end',
      'Underarms, each edge',
      'Hem to underarm',
      'Underarm to shoulder',
      'Length in all',
    ]);
  });

  it('8 stitches at 14 to 10 cm left at an underarm are 5.7 cm', async () => {
    const line = schematicTable(await specOf(underarm())).rows.find(([, label]) =>
      label!.includes('Underarms'),
    );
    expect(new Set(line!.slice(2))).toEqual(new Set(['5.7']));
  });

  it('a sleeve in the round has both its round and half of it, as it lies flat', async () => {
    const sleeve = await specOf(blouseSleeve());
    const rows = schematicTable({ ...sleeve, size: 'c4' }).rows.filter(([, label]) =>
      /Sleeve.*at the start/.test(label!),
    );
    const { plan } = sleeve.pieces[0]!.sizes.find(({ id }) => id === 'c4')!;
    const round = workPiece(plan!)[0]!.width;
    expect(rows.map((row) => row[2])).toEqual([round.toFixed(1), (round / 2).toFixed(1)]);
  });

  it('its table of rows ends on the last row, its count and the length of the piece', () => {
    const { rows } = silhouetteTable(spec, pieceOf('front'), 'm');
    const worked = workPiece(pieceOf('front').sizes.find(({ id }) => id === 'm')!.plan!);
    expect(rows.at(-1)).toEqual([
      expect.stringMatching(new RegExp(`${worked.length}$`)),
      String(worked.at(-1)!.count),
      worked.at(-1)!.width.toFixed(1),
      lengthOf(worked).toFixed(1),
    ]);
  });
});

describe('the joins', () => {
  const inWords = (of: SchematicSpec) =>
    joinsInWords(of).map(({ letter, label, words }) =>
      `${letter} ${label}: ${words}`.replace(/[\u2068\u2069]/g, ''),
    );

  it('of the V-neck are those its checks and its pick-up tell of', () => {
    expect(inWords(spec)).toEqual([
      'a Band: Front, row ends – Front, row ends of Neck to shoulder – Back, last row – Band, worked, first row',
      'b Side seams: Back, row ends of Hem to underarm – Front, row ends of Hem to underarm',
      'c Shoulders: Back, last row – Front, last row',
    ]);
  });

  it('of a sleeve are the row ends and the stitches it is picked up from', async () => {
    expect(inWords(await specOf(underarm()))[0]).toBe(
      'a Sleeve: Back, row ends of Underarm to shoulder – Front, row ends of Underarm to shoulder – Back, stitches of Underarms – Front, stitches of Underarm – Sleeve, first round',
    );
  });

  it('of a border picked up from motifs are the first rows it goes along', async () => {
    expect(inWords(await specOf(motifBorder()))).toEqual([
      'a Border: Shawl, first row – Border, worked, first row',
    ]);
  });

  it('a check of one edge against a count is no join', () => {
    expect(joinsOf(hatCrown())).toEqual([]);
  });

  it('each is marked on every edge it is of', async () => {
    const marks = (of: SchematicSpec, join: string) => {
      const svg = schematicSvg({ ...of, size: 'm' });
      const letters = [...svg.matchAll(/class="mark-text"[^>]*>([a-z]+)</g)].map(([, letter]) => letter);
      return letters.filter((letter) => letter === join).length;
    };
    // Both row ends of the back, its two underarms, one row end and one underarm of the front, and the sleeve.
    expect(marks(await specOf(underarm()), 'a')).toBe(2 + 2 + 1 + 1 + 1);
    expect(marks(spec, 'c')).toBe(2);
  });
});

describe('the drawings as SVG', () => {
  it('have no style, no script and no address but that of SVG', () => {
    for (const svg of [schematicSvg(spec), silhouetteDrawn(spec).svg]) {
      expect(svg).not.toMatch(/style=|<style|<script|NaN|Infinity|undefined/);
      expect(svg.match(/https?:[^"]*/g)).toEqual(['http://www.w3.org/2000/svg']);
    }
  });

  it('write whatever a person wrote as text', () => {
    const name = `<script>alert("1")</script> & 'more' \u0007 قطعة`;
    const pieces = spec.pieces.map((piece) => ({ ...piece, name }));
    for (const svg of [
      schematicSvg({ ...spec, pieces }),
      silhouetteDrawn({ ...spec, title: name, pieces }).svg,
    ]) {
      expect(svg).not.toContain('<script');
      expect(svg).not.toContain('\u0007');
      expect(svg).toContain('&lt;script&gt;');
    }
  });

  it('with one size missing draw the others and say which is missing and why', () => {
    const broken = {
      ...spec,
      pieces: spec.pieces.map((piece) => ({
        ...piece,
        sizes: piece.sizes.map((size) =>
          size.id === 'xl' && piece.id === 'back'
            ? { ...size, rows: null, plan: undefined, problem: 'The back is too short.' }
            : size,
        ),
      })),
    };
    expect(missingOf(broken)).toEqual([
      { piece: 'back', name: 'Back', sizes: ['XL'], why: 'The back is too short.' },
    ]);
    expect(schematicTable(broken).rows[0]).toContain('–');
    expect(schematicSvg(broken)).toContain('The back is too short.');
    const one = schematicSvg({ ...broken, size: 'xl' });
    expect(one).toContain('Not drawn in XL');
    expect(one.match(/class="outline"/g)).toHaveLength(2);
  });

  it('one size has its numbers on the lines, all of nine sizes their letters', () => {
    const { rows } = schematicTable({ ...spec, size: 'm' });
    const figures = (svg: string) =>
      [...svg.matchAll(/class="figure ink-text"[^>]*>([^<]*)</g)].map(([, text]) => text);
    const one = figures(schematicSvg({ ...spec, size: 'm', key: false }));
    for (const [, label, value] of rows) {
      if (!label!.endsWith('laid flat')) expect(one.some((text) => text!.startsWith(value!))).toBe(true);
    }
    const all = figures(schematicSvg({ ...spec, key: false }));
    expect(new Set(all)).toEqual(new Set(schematicTable(spec).rows.map(([letter]) => letter)));
  });

  it('two sizes are written a (b) on the lines', async () => {
    const notebook = hatCrown();
    const hat = await specOf({ ...notebook, sizes: notebook.sizes.slice(0, 2) });
    expect(schematicSvg({ ...hat, key: false })).toMatch(/>21\.0 \(22\.\d\)</);
  });
});
