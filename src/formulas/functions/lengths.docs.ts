import type { lengths as signature } from './lengths.signature';
import type { DocsOf } from './function-docs';

export const lengths: DocsOf<typeof signature> = {
  CM: { about: 'A length in centimetres.', example: 'CM(10)' },
  MM: { about: 'A length in millimetres, as hooks and needles are sized.', example: 'MM(6.5)' },
  METRES: { about: 'A length in metres, as the yarn of a ball is measured.', example: 'METRES(100)' },
  IN: { about: 'A length in inches; one inch is 2.54 cm exactly.', example: 'IN(4)' },
  YARDS: { about: 'A length in yards of 36 inches; one yard is 91.44 cm exactly.', example: 'YARDS(110)' },
  FINISHED: {
    about: 'A finished measurement: the body and the ease added to it, which may be negative.',
    example: 'FINISHED(bust; CM(10))',
  },
  FINISHEDBY: {
    about: 'A finished measurement with ease as a share of the body: 10% is a tenth more.',
    example: 'FINISHEDBY(bust; 10%)',
  },
  FITNAME: {
    about:
      'The conventional name of a fit from its ease at the bust; between two names, "nearest to" the nearer.',
    example: 'FITNAME(bust; CM(20))',
  },
  DROPSLEEVE: {
    about:
      'The length of a sleeve that begins where a dropped shoulder ends: half the body width is already on the way.',
    example: 'DROPSLEEVE(neck_to_wrist; back_width)',
  },
  ARMHOLEDEPTH: {
    about:
      'How deep an armhole has to be: as in the chart, or half the upper arm and its ease where that is more.',
    example: 'ARMHOLEDEPTH(armhole_depth; upper_arm; CM(10))',
  },
  FRONTWIDTH: {
    about: 'The width of each front without its band, from what the whole has to measure closed.',
    example: 'FRONTWIDTH(finished_bust; back_width; CM(3); "overlapping")',
  },
  NECKWIDTH: {
    about: 'What a neck band leaves of the width of a neck: it narrows it on both sides.',
    example: 'NECKWIDTH(CM(24); CM(2.5))',
  },
  SEAMEDWIDTH: {
    about: 'The width once the pieces are sewn up, less what the seams take.',
    example: 'SEAMEDWIDTH(2 * back_sts; 2; STS(1); body_sts)',
  },
  SEAMSTAKE: { about: 'The width that seams cost.', example: 'SEAMSTAKE(2; STS(1); body_sts)' },
  STRAIN: {
    about:
      'How much a fabric gives under a weight: the part by which it grows, per gram, for each cm of width.',
    example: 'STRAIN(CM(10); CM(11); CM(10); GRAMS(50))',
  },
  HANGINGGROWTH: {
    about: 'How much a garment of that length grows under its own weight when it is worn.',
    example:
      'HANGINGGROWTH(body_length; STRAIN(CM(10); CM(11); CM(10); GRAMS(50)); GRAMS(5) / (CM(10) * CM(10)))',
  },
  LENGTHTOWORK: {
    about: 'The length to work so that the garment hangs at the length wanted.',
    example:
      'LENGTHTOWORK(body_length; STRAIN(CM(10); CM(11); CM(10); GRAMS(50)); GRAMS(5) / (CM(10) * CM(10)))',
  },
  MEASUREWHILEWORKING: {
    about: 'What a length measures on the hook or needles so that it is right once blocked.',
    example: 'MEASUREWHILEWORKING(body_length; GAUGE(ROWS(12.5); CM(10)); body_rows)',
  },
  STRETCH: { about: 'How many times its width a swatch stretches to.', example: 'STRETCH(CM(10); CM(14))' },
  OPENING: { about: 'How far round an opening stretches.', example: 'OPENING(STS(60); body_sts; 1.4)' },
  PASSES: {
    about: 'Whether an opening, stretched, passes a head, a hand or a hip.',
    example: 'PASSES(STS(60); body_sts; 1.4; CM(57))',
  },
  LEASTTOPASS: {
    about: 'The fewest stitches of an opening that, stretched, passes a head, a hand or a hip.',
    example: 'LEASTTOPASS(body_sts; 1.4; CM(57))',
  },
};
