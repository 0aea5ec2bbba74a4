import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { starters } from '../../../src/starters';
import { patternOf, proofWords, prove } from '../../../src/pattern';
import { blouseSleeve } from '../../notebooks/blouse-sleeve';
import { underarm } from '../../notebooks/underarm';
import { vNeck } from '../../notebooks/v-neck';
import { misprinted } from '../misprints/notebooks';
import { withBlock } from '../misprints/text';
import { randomGarment } from './random-garment';
import { sourceOf } from './source-of';
import { withSchematic } from './with-schematic';

const made = [
  ...starters.map(({ label, make }) => [label, make] as const),
  ['the V-neck', vNeck] as const,
  ['the underarm', underarm] as const,
  ['the blouse sleeve', blouseSleeve] as const,
  ...misprinted,
];

describe('the tables beside a schematic are proven', () => {
  it.each(made)('of %s, all sizes at once and the first alone, in cm and inches', async (_name, make) => {
    const whole = make();
    for (const length of ['cm', 'in'] as const) {
      for (const sizes of [whole.sizes, whole.sizes.slice(0, 1)]) {
        const source = await sourceOf({ ...whole, sizes, settings: { ...whole.settings, length } });
        const document = withSchematic(patternOf(source), source);
        expect(prove(document, source)).toEqual({ proven: true });
      }
    }
  });

  it('of hundreds of pieces, of every kind of stretch', () => {
    let worked = 0;
    fc.assert(
      fc.property(fc.gen(), (g) => {
        const garment = randomGarment(g);
        if (!garment) return;
        worked++;
        const document = withSchematic(patternOf(garment.source), garment.source);
        const tables = document.parts.flatMap(({ blocks }) => blocks.map(({ key }) => key));
        expect(tables).toContain('schematic measurements');
        expect(prove(document, garment.source)).toMatchObject({ proven: true });
      }),
      { numRuns: Number(process.env['RUNS'] ?? 250) },
    );
    expect(worked).toBeGreaterThan(120);
  });

  it('of which one dropped, or its rows, is missing, and a drawing is all that is not proven of it', async () => {
    const source = await sourceOf(vNeck());
    const document = withSchematic(patternOf(source), source);
    expect(proofWords(prove(document, source), document)).toContain(
      'Not proven: the fit, the drawing of the schematic and the designer’s own words.',
    );
    document.parts.forEach((part, p) =>
      part.blocks.forEach((block, b) => {
        if (block.kind !== 'table' || !block.key.startsWith('schematic ')) return;
        expect(block.rows.length).toBeGreaterThan(2);
        expect(prove(withBlock(document, p, b), source).proven).toBe(false);
        const rows = block.rows.slice(1);
        expect(prove(withBlock(document, p, b, { ...block, rows }), source).proven).toBe(false);
      }),
    );
    expect.assertions(7);
  });
});
