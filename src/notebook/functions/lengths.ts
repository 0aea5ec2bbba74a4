import { length, mass, massPerArea, plain, stitchGauge, stitches, strain } from '../units';
import { given, type Listed } from './function-entry';

const opening = [
  given('stitches of the opening', stitches),
  given('stitch gauge', stitchGauge),
  given('times its width it stretches to', plain),
];
const hanging = [
  given('length', length),
  given('strain', strain),
  given('weight of the fabric per area', massPerArea),
];

/** Lengths, and what a body and a fabric make of them. */
export const lengths: Listed[] = [
  {
    name: 'CM',
    arguments: [given('number', plain)],
    gives: length,
    about: 'A length in centimetres.',
    example: 'CM(10)',
  },
  {
    name: 'MM',
    arguments: [given('number', plain)],
    gives: length,
    about: 'A length in millimetres, as hooks and needles are sized.',
    example: 'MM(6.5)',
  },
  {
    name: 'METRES',
    arguments: [given('number', plain)],
    gives: length,
    about: 'A length in metres, as the yarn of a ball is measured.',
    example: 'METRES(100)',
  },
  {
    name: 'IN',
    arguments: [given('number', plain)],
    gives: length,
    about: 'A length in inches; one inch is 2.54 cm exactly.',
    example: 'IN(4)',
  },
  {
    name: 'YARDS',
    arguments: [given('number', plain)],
    gives: length,
    about: 'A length in yards of 36 inches; one yard is 91.44 cm exactly.',
    example: 'YARDS(110)',
  },
  {
    name: 'FINISHED',
    arguments: [given('body', length), given('ease', length)],
    gives: length,
    about: 'A finished measurement: the body and the ease added to it, which may be negative.',
    example: 'FINISHED(bust; CM(10))',
  },
  {
    name: 'FINISHEDBY',
    arguments: [given('body', length), given('ease', plain)],
    gives: length,
    about: 'A finished measurement with ease as a share of the body: 10% is a tenth more.',
    example: 'FINISHEDBY(bust; 10%)',
  },
  {
    name: 'FITNAME',
    arguments: [given('bust', length), given('ease', length)],
    gives: 'text',
    about:
      'The conventional name of a fit from its ease at the bust; between two names, "nearest to" the nearer.',
    example: 'FITNAME(bust; CM(20))',
  },
  {
    name: 'DROPSLEEVE',
    arguments: [given('neck to wrist', length), given('body width', length)],
    gives: length,
    about:
      'The length of a sleeve that begins where a dropped shoulder ends: half the body width is already on the way.',
    example: 'DROPSLEEVE(neck_to_wrist; back_width)',
  },
  {
    name: 'ARMHOLEDEPTH',
    arguments: [given('depth in the chart', length), given('upper arm', length), given('ease', length)],
    gives: length,
    about:
      'How deep an armhole has to be: as in the chart, or half the upper arm and its ease where that is more.',
    example: 'ARMHOLEDEPTH(armhole_depth; upper_arm; CM(10))',
  },
  {
    name: 'FRONTWIDTH',
    arguments: [
      given('finished bust', length),
      given('back', length),
      given('band', length),
      given('"edge to edge" or "overlapping"', 'text'),
    ],
    gives: length,
    about: 'The width of each front without its band, from what the whole has to measure closed.',
    example: 'FRONTWIDTH(finished_bust; back_width; CM(3); "overlapping")',
  },
  {
    name: 'NECKWIDTH',
    arguments: [given('neck', length), given('band', length)],
    gives: length,
    about: 'What a neck band leaves of the width of a neck: it narrows it on both sides.',
    example: 'NECKWIDTH(CM(24); CM(2.5))',
  },
  {
    name: 'SEAMEDWIDTH',
    arguments: [
      given('stitches of all pieces', stitches),
      given('seams', plain),
      given('stitches a seam takes from each side', stitches),
      given('stitch gauge', stitchGauge),
    ],
    gives: length,
    about: 'The width once the pieces are sewn up, less what the seams take.',
    example: 'SEAMEDWIDTH(2 * back_sts; 2; STS(1); body_sts)',
  },
  {
    name: 'SEAMSTAKE',
    arguments: [
      given('seams', plain),
      given('stitches a seam takes from each side', stitches),
      given('stitch gauge', stitchGauge),
    ],
    gives: length,
    about: 'The width that seams cost.',
    example: 'SEAMSTAKE(2; STS(1); body_sts)',
  },
  {
    name: 'STRAIN',
    arguments: [
      given('length of the swatch', length),
      given('its length with a weight on', length),
      given('its width', length),
      given('the weight', mass),
    ],
    gives: strain,
    about:
      'How much a fabric gives under a weight: the part by which it grows, per gram, for each cm of width.',
    example: 'STRAIN(CM(10); CM(11); CM(10); GRAMS(50))',
  },
  {
    name: 'HANGINGGROWTH',
    arguments: hanging,
    gives: length,
    about: 'How much a garment of that length grows under its own weight when it is worn.',
    example:
      'HANGINGGROWTH(body_length; STRAIN(CM(10); CM(11); CM(10); GRAMS(50)); GRAMS(5) / (CM(10) * CM(10)))',
  },
  {
    name: 'LENGTHTOWORK',
    arguments: hanging,
    gives: length,
    about: 'The length to work so that the garment hangs at the length wanted.',
    example:
      'LENGTHTOWORK(body_length; STRAIN(CM(10); CM(11); CM(10); GRAMS(50)); GRAMS(5) / (CM(10) * CM(10)))',
  },
  {
    name: 'MEASUREWHILEWORKING',
    arguments: [given('length', length), given('gauge as worked', 'any'), given('gauge blocked', 'any')],
    gives: length,
    about: 'What a length measures on the hook or needles so that it is right once blocked.',
    example: 'MEASUREWHILEWORKING(body_length; GAUGE(ROWS(12.5); CM(10)); body_rows)',
  },
  {
    name: 'STRETCH',
    arguments: [given('width relaxed', length), given('width stretched', length)],
    gives: plain,
    about: 'How many times its width a swatch stretches to.',
    example: 'STRETCH(CM(10); CM(14))',
  },
  {
    name: 'OPENING',
    arguments: opening,
    gives: length,
    about: 'How far round an opening stretches.',
    example: 'OPENING(STS(60); body_sts; 1.4)',
  },
  {
    name: 'PASSES',
    arguments: [...opening, given('body that has to pass', length)],
    gives: 'truth',
    about: 'Whether an opening, stretched, passes a head, a hand or a hip.',
    example: 'PASSES(STS(60); body_sts; 1.4; CM(57))',
  },
  {
    name: 'LEASTTOPASS',
    arguments: [
      given('stitch gauge', stitchGauge),
      given('times its width it stretches to', plain),
      given('body that has to pass', length),
    ],
    gives: stitches,
    about: 'The fewest stitches of an opening that, stretched, passes a head, a hand or a hip.',
    example: 'LEASTTOPASS(body_sts; 1.4; CM(57))',
  },
];
