import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Notebook } from '../../src/notebook';
import { hatCrown, starters } from '../../src/starters';
import { linesOf, patternOf, prove, proverOf, sentencesOf, type PatternDocument } from '../../src/pattern';
import { randomGarment } from './write/random-garment';
import { badGrammar } from './write/grammar';
import { sourceOf } from './write/source-of';
import { blouseSleeve } from '../notebooks/blouse-sleeve';
import { motifBorder } from '../notebooks/motif-border';
import { narrowing } from '../notebooks/narrowing';
import { underarm } from '../notebooks/underarm';
import { vNeck } from '../notebooks/v-neck';

/** What no starter has: each a notebook of its own. */
const capable = [vNeck, underarm, narrowing, motifBorder, blouseSleeve];

/** The unit a piece is worked in: no row ends, and no way round an armhole. */
const unit = /\b(row|round)(?=s?\b)(?!s? (?:ends?|the armhole)\b)/giu;

describe('the text of a pattern recounts to its rows', () => {
  describe.each(['crochet', 'knitting'] as const)('altered in %s', (craft) => {
    it('no piece of a starter is proven with a line left out, told twice, on the other side, of rows for rounds, or at another ratio', async () => {
      for (const make of [...starters.map((one) => one.make), ...capable]) {
        const whole = make();
        // Every alteration is counted again in every size: three of a garment's nine are enough here.
        const notebook = whole.adapts ? whole : { ...whole, sizes: whole.sizes.slice(0, 3) };
        const source = await sourceOf({ ...notebook, settings: { ...notebook.settings, craft } });
        const document = patternOf(source);
        const proof = proverOf(source);
        const survives = (text: string, lines: readonly string[]): void => {
          if (proof(withLines(document, text, lines)).proven) throw new Error(`not found: ${text}`);
        };
        for (const { text } of document.parts.filter(({ kind }) => kind === 'piece').flatMap(linesOf)) {
          survives(text, [text, text]);
          survives(text, []);
          if (/\((?:RS|WS)\)/u.test(text)) {
            survives(text, [text.replace(/\((RS|WS)\)/u, (_, side) => `(${side === 'RS' ? 'WS' : 'RS'})`)]);
          }
          const other = text.replace(unit, (_, word) => (/row/iu.test(word) ? 'round' : 'row'));
          if (other !== text) survives(text, [other]);
          const ratio = text.replace(/(?<=, about )\d+/u, (pick) => String(Number(pick) * 2));
          if (ratio !== text) survives(text, [ratio]);
        }
      }
    }, 120_000);
  });

  describe('the counts are right and the garment is not', () => {
    const found = async (make: () => Notebook, was: string, is: string): Promise<string[]> => {
      const source = await sourceOf(make());
      const document = patternOf(source);
      expect(document.parts.flatMap(linesOf).filter(({ text }) => text.includes(was))).not.toEqual([]);
      const altered: PatternDocument = {
        ...document,
        parts: document.parts.map((part) => ({
          ...part,
          blocks: part.blocks.map((block) =>
            block.kind === 'line' ? { ...block, text: block.text.replace(was, is) } : block,
          ),
        })),
      };
      const proof = prove(altered, source);
      return proof.proven ? [] : [...new Set(proof.where.map(({ problem }) => problem))];
    };

    it('a neck shaped at the armhole', async () => {
      expect(await found(vNeck, 'at the neck edge', 'at the armhole edge')).toEqual([
        'It shapes at the armhole edge, and “Neck to shoulder” is shaped at the neck edge.',
      ]);
    });

    it('an underarm left at the other end of the row', async () => {
      expect(
        await found(
          underarm,
          'sl st across the first 8 sts, then work even to the end',
          'work even, leaving the last 8 sts unworked',
        ),
      ).toContain(
        'On row 37 it has none at its start and 8 left at its end, and the notebook 8 left at its start and none at its end.',
      );
    });

    it('the stretches of an edge in another order, or under the name of another', async () => {
      const source = await sourceOf(vNeck());
      const document = patternOf(source);
      const lines = document.parts.flatMap(linesOf).map(({ text }) => text);
      const [right, back] = ['Right neck: ', 'Back neck: '].map((edge) =>
        lines.find((line) => line.startsWith(edge))!,
      ) as [string, string];
      const swapped = withLines(withLines(document, back, []), right, [back, right]);
      expect(prove(swapped, source)).toMatchObject({
        proven: false,
        where: document.sizes.map(() => ({ line: back })),
      });
      expect(await found(vNeck, 'Left neck: ', 'Left front: ')).toContain(
        'The edge goes on along Left neck, with 27 stitches, and that is not what it says there.',
      );
    });

    it('the first of several rounds left untold', async () => {
      const source = await sourceOf(hatCrown());
      const document = patternOf(source);
      const first = document.parts
        .flatMap(linesOf)
        .find(({ text }) => text.startsWith('The first of these'))!;
      expect(prove(withLines(document, first.text, []), source)).toMatchObject({
        proven: false,
        where: document.sizes.map(() => ({
          problem: 'It does not say how the first of these rounds is worked.',
        })),
      });
    });

    it('the second side of an armhole before the first', async () => {
      const source = await sourceOf(blouseSleeve());
      const document = patternOf(source);
      const lines = document.parts.flatMap(linesOf).map(({ text }) => text);
      const down = lines.find((line) => line.startsWith('Down the other side'))!;
      const up = lines.find((line) => line.startsWith('Up one side'))!;
      expect(prove(withLines(withLines(document, down, []), up, [down, up]), source).proven).toBe(false);
    });
  });

  it.each([...starters.map(({ make }) => make), ...capable].map((make) => [make().title, make()] as const))(
    'in every size of %s',
    async (_label, notebook) => {
      for (const terms of ['US', 'UK'] as const) {
        const source = await sourceOf({ ...notebook, settings: { ...notebook.settings, terms } });
        expect(prove(patternOf(source), source)).toEqual({ proven: true });
      }
    },
  );

  it('in every size of more than 700 pieces, of every kind of stretch, in both crafts and both terms', () => {
    let worked = 0;
    fc.assert(
      fc.property(fc.gen(), (g) => {
        const garment = randomGarment(g);
        if (!garment) return;
        worked++;
        const document = patternOf(garment.source);
        expect(document.sizes).toHaveLength(garment.plans.length);
        for (const { text } of sentencesOf(document)) expect(badGrammar(text)).toBeUndefined();
        const proof = prove(document, garment.source);
        if (!proof.proven)
          throw new Error(
            JSON.stringify(
              [proof.where[0], ...document.parts.flatMap((p) => linesOf(p).map((l) => l.text))],
              null,
              1,
            ),
          );
      }),
      { numRuns: Number(process.env['RUNS'] ?? 1200) },
    );
    expect(worked).toBeGreaterThan(700);
  });

  it('a misprint in any count of any row is found, in the size it stands in', () => {
    let tried = 0;
    fc.assert(
      fc.property(fc.gen(), fc.nat(), (g, which) => {
        const garment = randomGarment(g);
        if (!garment) return;
        const document = patternOf(garment.source);
        const misprinted = withMisprint(document, which);
        if (!misprinted) return;
        tried++;
        const proof = prove(misprinted.document, garment.source);
        if (proof.proven) throw new Error(`not found: ${misprinted.line}`);
      }),
      { numRuns: Number(process.env['RUNS'] ?? 400) },
    );
    expect(tried).toBeGreaterThan(130);
  });
});

/** The document with other lines instead of the first that reads so. */
function withLines(document: PatternDocument, text: string, lines: readonly string[]): PatternDocument {
  let done = false;
  return {
    ...document,
    parts: document.parts.map((part) => ({
      ...part,
      blocks: part.blocks.flatMap((block) => {
        if (done || block.kind !== 'line' || block.text !== text) return [block];
        done = true;
        return lines.map((line) => ({ ...block, text: line }));
      }),
    })),
  };
}

/** The document with one of its bracketed counts, in one of its sizes, off by one. */
function withMisprint(
  document: PatternDocument,
  which: number,
): { document: PatternDocument; line: string } | undefined {
  const lines = document.parts.flatMap(linesOf).filter(({ text }) => /\[.*\d.*\]/u.test(text));
  const line = lines[which % Math.max(lines.length, 1)];
  if (!line) return undefined;
  const start = line.text.lastIndexOf('[');
  const found = [...line.text.slice(start).matchAll(/\d+/gu)];
  const number = found[which % found.length];
  if (!number) return undefined;
  const at = start + number.index;
  const text =
    line.text.slice(0, at) + String(Number(number[0]) + 1) + line.text.slice(at + number[0].length);
  return {
    line: text,
    document: {
      ...document,
      parts: document.parts.map((part) => ({
        ...part,
        blocks: part.blocks.map((block) => (block === line ? { ...block, text } : block)),
      })),
    },
  };
}
