import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { starters } from '../../src/starters';
import { linesOf, patternOf, prove } from '../../src/words';
import { randomGarment } from './random-garment';
import { sourceOf } from './source-of';

describe('the text of a pattern recounts to its rows', () => {
  it.each(starters.map((starter) => [starter.label, starter.make()] as const))(
    'in every size of %s',
    async (_label, notebook) => {
      for (const terms of ['US', 'UK'] as const) {
        const source = await sourceOf({ ...notebook, settings: { ...notebook.settings, terms } });
        expect(prove(patternOf(source), source)).toEqual({ proven: true });
      }
    },
  );

  it('in every size of thousands of pieces, of every kind of stretch, in both crafts and both terms', () => {
    let worked = 0;
    fc.assert(
      fc.property(fc.gen(), (g) => {
        const garment = randomGarment(g);
        if (!garment) return;
        worked++;
        const document = patternOf(garment.source);
        expect(document.sizes).toHaveLength(garment.plans.length);
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
      { numRuns: 2500 },
    );
    expect(worked).toBeGreaterThan(1500);
  }, 120_000);
});
