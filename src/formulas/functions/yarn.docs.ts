import type { yarn as signature } from './yarn.signature';
import type { DocsOf } from './function-docs';

export const yarn: DocsOf<typeof signature> = {
  GRAMS: { about: 'A weight in grams.', example: 'GRAMS(50)' },
  YARNGRAMS: {
    about:
      'An estimate of the yarn an area of fabric takes, by the weight of a swatch of it, with a reserve.',
    example: 'YARNGRAMS(back_area; CM(10) * CM(10); GRAMS(6); 15%)',
  },
  BALLS: {
    about: 'The whole balls that hold a weight of yarn; add up all fabrics in one yarn first.',
    example: 'BALLS(GRAMS(750); GRAMS(50))',
  },
  YARNMETRES: {
    about: 'The length of a weight of yarn.',
    example: 'YARNMETRES(GRAMS(750); GRAMS(50); METRES(100))',
  },
  YARNWEIGHT: {
    about:
      'The published yarn weights in whose range a gauge lies (US terms), or "none": a hint for a substitute.',
    example: 'YARNWEIGHT(body_sts; "single crochet")',
  },
  NOTIONS: {
    about:
      'How many buttons, beads or tassels go to every so many sites; keep them off baby and child sizes.',
    example: 'NOTIONS(60; 4; 2)',
  },
  NOTIONLENGTH: {
    about: 'The length of yarn or trim to buy for the pieces of NOTIONS, with what is lost in cutting.',
    example: 'NOTIONLENGTH(60; 4; 2; CM(30); 5%)',
  },
  WORKHOURS: {
    about: 'The hours of work in a number of stitches, at a pace that was timed.',
    example: 'WORKHOURS(back_stitches; 15)',
  },
};
