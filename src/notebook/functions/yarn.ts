import { area, length, mass, plain, stitchGauge, stitches } from '../units';
import { given, optional, type Listed } from './function-entry';

const ball = given('weight of a ball', mass);
const sites = [given('sites', plain), given('every', plain), given('first site', plain)];

/** What a garment takes: yarn, notions, hours. */
export const yarn: Listed[] = [
  {
    name: 'GRAMS',
    arguments: [given('number', plain)],
    gives: mass,
    about: 'A weight in grams.',
    example: 'GRAMS(50)',
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
    about:
      'An estimate of the yarn an area of fabric takes, by the weight of a swatch of it, with a reserve.',
    example: 'YARNGRAMS(back_area; CM(10) * CM(10); GRAMS(6); 15%)',
  },
  {
    name: 'BALLS',
    arguments: [given('yarn', mass), ball],
    gives: plain,
    about: 'The whole balls that hold a weight of yarn; add up all fabrics in one yarn first.',
    example: 'BALLS(GRAMS(750); GRAMS(50))',
  },
  {
    name: 'YARNMETRES',
    arguments: [given('yarn', mass), ball, given('length of a ball', length)],
    gives: length,
    about: 'The length of a weight of yarn.',
    example: 'YARNMETRES(GRAMS(750); GRAMS(50); METRES(100))',
  },
  {
    name: 'YARNWEIGHT',
    arguments: [given('stitch gauge', stitchGauge), given('"stockinette" or "single crochet"', 'text')],
    gives: 'text',
    about:
      'The published yarn weights in whose range a gauge lies (US terms), or "none": a hint for a substitute.',
    example: 'YARNWEIGHT(body_sts; "single crochet")',
  },
  {
    name: 'NOTIONS',
    arguments: sites,
    gives: plain,
    about:
      'How many pieces of ribbon, cord or fringe go to every so many sites; keep them off baby and child sizes.',
    example: 'NOTIONS(60; 4; 2)',
  },
  {
    name: 'NOTIONLENGTH',
    arguments: [...sites, given('length of each', length), optional('waste, 0% unless told', plain)],
    gives: length,
    about:
      'The length of ribbon, cord or fringe to buy for the pieces of NOTIONS, with what is lost in cutting.',
    example: 'NOTIONLENGTH(60; 4; 2; CM(30); 5%)',
  },
  {
    name: 'WORKHOURS',
    arguments: [given('stitches', stitches), given('stitches a minute', plain)],
    gives: plain,
    about: 'The hours of work in a number of stitches, at a pace that was timed.',
    example: 'WORKHOURS(back_stitches; 15)',
  },
];
