import { length, plain } from '../units';
import { given, optional, type FunctionSignature } from './function-entry';

const readings = [given('count', 'any'), given('over', length)];
const freedom = given('degrees of freedom', plain);

/** How sure a result is. */
export const uncertainty = [
  {
    name: 'GAUGEUNCERTAINTY',
    arguments: readings,
    repeats: true,
    gives: 'any',
  },
  {
    name: 'GAUGEFREEDOM',
    arguments: readings,
    repeats: true,
    gives: plain,
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
  },
  {
    name: 'GIVEORTAKE',
    arguments: [given('uncertainty', 'any'), freedom],
    repeats: true,
    gives: 'any',
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
  },
] as const satisfies readonly FunctionSignature[];
