import { describe, expect, it } from 'vitest';
import { singleSleeve } from '../../src/starters/single-sleeve';
import { html, markdown, patternOf, plainText, prove, type PatternDocument } from '../../src/pattern';
import { sourceOf } from './write/source-of';

/** The document with a row more in its first table of measurements. */
function withRow(document: PatternDocument, row: readonly string[]): PatternDocument {
  return {
    ...document,
    parts: document.parts.map((part) => ({
      ...part,
      blocks: part.blocks.map((block) =>
        block.kind === 'table' && block.key === 'measurements table'
          ? { ...block, rows: [...block.rows, row] }
          : block,
      ),
    })),
  };
}

describe('what a proof says nothing of is named beside it', () => {
  it('a row of a table of which the notebook is not known to say anything', async () => {
    const source = await sourceOf(singleSleeve());
    const document = withRow(patternOf(source), ['Depth of the hood', '30.0', '31.0']);
    const proof = prove(document, source);
    expect(proof).toEqual({
      proven: true,
      notProven: [{ part: 'Finished measurements', text: 'Depth of the hood', reworded: false }],
    });
    for (const text of [
      plainText(document, { proof }),
      markdown(document, { proof }),
      html(document, { proof }),
    ]) {
      expect(text).toContain(
        'Not proven: the fit, the schematic, the designer’s own words and “Depth of the hood”.',
      );
    }
  });

  it('a sentence in a person’s words that cannot be read; the rest stays proven', async () => {
    const notebook = singleSleeve();
    const wording = {
      'gauge fabric': {
        template: 'In {fabric} you want {stitches} and {rows} in {over}; it is {worked}.',
        terms: 'US',
      },
    } as const;
    const source = await sourceOf({ ...notebook, wording });
    const document = patternOf(source);
    const proof = prove(document, source);
    expect(proof).toMatchObject({
      proven: true,
      notProven: [{ part: 'Gauge', key: 'gauge fabric', reworded: true }],
    });
    expect(plainText(document, { proof })).toContain('the designer’s own words (in Gauge).');
  });

  it('a sentence in a person’s words that can be read is compared', async () => {
    const notebook = singleSleeve();
    const words = (template: string) => ({ 'piece sleeve taper after': { template, terms: 'US' as const } });
    const textOf = async (template: string) => {
      const source = await sourceOf({ ...notebook, wording: words(template) });
      return prove(patternOf(source), source).proven;
    };
    expect(await textOf('Work {rows} evenly.')).toBe(true);
    expect(await textOf('Work 1 row even. Work {rows} even.')).toBe(false);
  });

  it('a caption or a sentence that nobody knows is named, and what it stands instead of is missing', async () => {
    const source = await sourceOf(singleSleeve());
    const document = patternOf(source);
    const altered = {
      ...document,
      parts: document.parts.map((part) => ({
        ...part,
        blocks: part.blocks.map((block) =>
          block.kind === 'table' && block.key === 'measurements table'
            ? { ...block, caption: 'In ells' }
            : block,
        ),
      })),
    };
    const proof = prove(altered, source);
    expect(proof.proven).toBe(false);
    expect(proof.notProven).toEqual([{ part: 'Finished measurements', text: 'In ells', reworded: false }]);
  });
});
