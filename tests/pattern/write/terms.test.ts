import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inTerms, inUk } from '../../../src/pattern';

describe('UK terms', () => {
  // After the Craft Yarn Council's published list of differences; typed from memory.
  const differences = [
    ['sl st', 'ss'],
    ['sc', 'dc'],
    ['hdc', 'htr'],
    ['dc', 'tr'],
    ['tr', 'dtr'],
    ['single crochet', 'double crochet'],
    ['half double crochet', 'half treble'],
    ['double crochet', 'treble'],
    ['treble', 'double treble'],
    ['skip', 'miss'],
    ['gauge', 'tension'],
    ['bind off', 'cast off'],
    ['stockinette', 'stocking stitch'],
    ['sc2tog', 'dc2tog'],
    ['FPdc', 'RtrF'],
  ] as const;

  it.each(differences)('%s is %s', (us, uk) => {
    expect(inUk(us)).toBe(uk);
    expect(inTerms(uk, 'UK', 'US')).toBe(us);
  });

  it('sc becomes dc and dc becomes tr at once: no term is changed twice', () => {
    expect(inUk('sc, dc, tr, sc2tog, dc2tog')).toBe('dc, tr, dtr, dc2tog, tr2tog');
    expect(inUk('half double crochet, double crochet, single crochet')).toBe(
      'half treble, treble, double crochet',
    );
  });

  it('any row of terms changes term by term, and comes back as it was', () => {
    const word = fc.constantFrom(...differences);
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 12 }), (words) => {
        const us = words.map(([one]) => one).join(', ');
        const uk = words.map(([, other]) => other).join(', ');
        expect(inUk(us)).toBe(uk);
        expect(inTerms(uk, 'UK', 'US')).toBe(us);
      }),
    );
  });

  it('a term is a whole word: "disc" and "scarf" stay', () => {
    expect(inUk('a disc on a scarf')).toBe('a disc on a scarf');
    expect(inUk('Skip 2; Gauge')).toBe('Miss 2; Tension');
  });
});
