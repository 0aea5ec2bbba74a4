import { area, length, mass, plain, stitchGauge, stitches } from '../units';
import { given, optional, type FunctionSignature } from './function-entry';

const ball = given('weight of a ball', mass);
const sites = [given('sites', plain), given('every', plain), given('first site', plain)];

/** What a garment takes: yarn, notions, hours. */
export const yarn = [
  {
    name: 'GRAMS',
    arguments: [given('number', plain)],
    gives: mass,
  },
  {
    name: 'YARNGRAMS',
    arguments: [
      given('area', area),
      given('area of the swatch', area),
      given('weight of the swatch', mass),
      optional('reserve, 10% unless told', plain),
    ],
    gives: mass,
  },
  {
    name: 'BALLS',
    arguments: [given('yarn', mass), ball],
    gives: plain,
  },
  {
    name: 'YARNMETRES',
    arguments: [given('yarn', mass), ball, given('length of a ball', length)],
    gives: length,
  },
  {
    name: 'YARNWEIGHT',
    arguments: [given('stitch gauge', stitchGauge), given('"stockinette" or "single crochet"', 'text')],
    gives: 'text',
  },
  {
    name: 'NOTIONS',
    arguments: sites,
    gives: plain,
  },
  {
    name: 'NOTIONLENGTH',
    arguments: [...sites, given('length of each', length), optional('waste, 0% unless told', plain)],
    gives: length,
  },
  {
    name: 'WORKHOURS',
    arguments: [given('stitches', stitches), given('stitches a minute', plain)],
    gives: plain,
  },
] as const satisfies readonly FunctionSignature[];
