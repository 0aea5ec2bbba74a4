import type { shaping as signature } from './shaping.signature';
import type { DocsOf } from './function-docs';

export const shaping: DocsOf<typeof signature> = {
  SPACING: {
    about:
      'Shaping spread evenly across one row: the plain stitches before each increase or decrease, and after the last.',
    example: 'SPACING(STS(75); STS(83); "flat")',
  },
  SHAPINGS: {
    about: 'How many increases or decreases SPACING spreads across the row.',
    example: 'SHAPINGS(STS(75); STS(83); "flat"; "whole")',
  },
  TAPEREVERY: {
    about: 'How often a taper is shaped: "every 6th row 8 times, every 4th row 5 times".',
    example: 'TAPEREVERY(STS(58); STS(40); ROWS(60); STS(2); 1; ROWS(0); ROWS(2); "longFirst")',
  },
  GATHER: {
    about:
      'Rounds of "so many plain, 2 together" that draw a count in: the plain stitches of each round and its count.',
    example: 'GATHER(STS(100); STS(40); ROWS(3))',
  },
  GATHERED: {
    about: 'The count that the rounds of GATHER end on, which may be off the wanted one.',
    example: 'GATHERED(STS(100); STS(40); ROWS(3))',
  },
  SHAPEREPEATS: {
    about:
      'The count after every repeat of a row has gained so many stitches, or lost them where it is negative.',
    example: 'SHAPEREPEATS(STS(83); 10; STS(-1))',
  },
};
