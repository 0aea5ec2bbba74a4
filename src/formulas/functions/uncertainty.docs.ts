import type { uncertainty as signature } from './uncertainty.signature';
import type { DocsOf } from './function-docs';

export const uncertainty: DocsOf<typeof signature> = {
  GAUGEUNCERTAINTY: {
    about: 'The standard uncertainty of a gauge, from the same readings as GAUGE.',
    example: 'GAUGEUNCERTAINTY(STS(14); CM(10); STS(15); CM(10))',
  },
  GAUGEFREEDOM: {
    about:
      'The degrees of freedom of GAUGEUNCERTAINTY: one fewer than the readings, or 1000000000 for endlessly many where the reading itself sets it.',
    example: 'GAUGEFREEDOM(STS(14); CM(10); STS(15); CM(10))',
  },
  WIDTHGIVEORTAKE: {
    about:
      'The give or take of the width that a count gives: 19 times in 20 the true width is no further off.',
    example:
      'WIDTHGIVEORTAKE(back_sts; body_sts; GAUGEUNCERTAINTY(STS(14); CM(10)); GAUGEFREEDOM(STS(14); CM(10)))',
  },
  COUNTGIVEORTAKE: {
    about:
      'The give or take of the exact count that a width asks for: 19 times in 20 the true one is no further off.',
    example:
      'COUNTGIVEORTAKE(finished_bust / 2; CM(0); body_sts; GAUGEUNCERTAINTY(STS(14); CM(10)); 1000000000)',
  },
  GIVEORTAKE: {
    about:
      'The give or take of a result from the parts that independent sources have in its standard uncertainty, each with its degrees of freedom.',
    example: 'GIVEORTAKE(CM(0.5); 4; CM(0.2); 1000000000)',
  },
  NEXTCOUNTCHANCE: {
    about:
      'The chance that the true gauge would have chosen another allowed count than the one that was fitted.',
    example: 'NEXTCOUNTCHANCE(finished_bust / 2 * body_sts; STS(1.5); 1000000000; 8; 3; "nearest")',
  },
};
