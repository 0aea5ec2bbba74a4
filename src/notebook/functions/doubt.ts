import { length, plain } from '../units';
import { given, optional, type Listed } from './function-entry';

const readings = [given('count', 'any'), given('over', length)];
const freedom = given('degrees of freedom', plain);

/** How sure a result is. */
export const doubt: Listed[] = [
  {
    name: 'GAUGEUNCERTAINTY',
    arguments: readings,
    repeats: true,
    gives: 'any',
    about: 'The standard uncertainty of a gauge, from the same readings as GAUGE.',
    example: 'GAUGEUNCERTAINTY(STS(14); CM(10); STS(15); CM(10))',
  },
  {
    name: 'GAUGEFREEDOM',
    arguments: readings,
    repeats: true,
    gives: plain,
    about:
      'The degrees of freedom of GAUGEUNCERTAINTY: one fewer than the readings, or 1000000000 for endlessly many where the reading itself sets it.',
    example: 'GAUGEFREEDOM(STS(14); CM(10); STS(15); CM(10))',
  },
  {
    name: 'WIDTHGIVEORTAKE',
    arguments: [
      given('count', 'any'),
      given('gauge', 'any'),
      given('its uncertainty', 'any'),
      freedom,
      optional('uncertainty of the tape', length),
    ],
    gives: length,
    about:
      'The give or take of the width that a count gives: 19 times in 20 the true width is no further off.',
    example:
      'WIDTHGIVEORTAKE(back_sts; body_sts; GAUGEUNCERTAINTY(STS(14); CM(10)); GAUGEFREEDOM(STS(14); CM(10)))',
  },
  {
    name: 'COUNTGIVEORTAKE',
    arguments: [
      given('width', length),
      given('its uncertainty', length),
      given('gauge', 'any'),
      given('its uncertainty', 'any'),
      freedom,
    ],
    gives: 'any',
    about:
      'The give or take of the exact count that a width asks for: 19 times in 20 the true one is no further off.',
    example:
      'COUNTGIVEORTAKE(finished_bust / 2; CM(0); body_sts; GAUGEUNCERTAINTY(STS(14); CM(10)); 1000000000)',
  },
  {
    name: 'GIVEORTAKE',
    arguments: [given('uncertainty', 'any'), freedom],
    repeats: true,
    gives: 'any',
    about:
      'The give or take of a result from the parts that independent sources have in its standard uncertainty, each with its degrees of freedom.',
    example: 'GIVEORTAKE(CM(0.5); 4; CM(0.2); 1000000000)',
  },
  {
    name: 'NEXTCOUNTCHANCE',
    arguments: [
      given('wanted', 'any'),
      given('its uncertainty', 'any'),
      freedom,
      given('multiple', plain),
      given('plus', plain),
      given('"nearest", "up" or "down"', 'text'),
    ],
    gives: plain,
    about:
      'The chance that the true gauge would have chosen another allowed count than the one that was fitted.',
    example: 'NEXTCOUNTCHANCE(finished_bust / 2 * body_sts; STS(1.5); 1000000000; 8; 3; "nearest")',
  },
];
