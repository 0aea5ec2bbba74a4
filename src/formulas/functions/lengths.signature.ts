import { length, mass, massPerArea, plain, stitchGauge, stitches, strain } from '../units';
import { given, type FunctionSignature } from './function-entry';

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
export const lengths = [
  {
    name: 'CM',
    arguments: [given('number', plain)],
    gives: length,
  },
  {
    name: 'MM',
    arguments: [given('number', plain)],
    gives: length,
  },
  {
    name: 'METRES',
    arguments: [given('number', plain)],
    gives: length,
  },
  {
    name: 'IN',
    arguments: [given('number', plain)],
    gives: length,
  },
  {
    name: 'YARDS',
    arguments: [given('number', plain)],
    gives: length,
  },
  {
    name: 'FINISHED',
    arguments: [given('body', length), given('ease', length)],
    gives: length,
  },
  {
    name: 'FINISHEDBY',
    arguments: [given('body', length), given('ease', plain)],
    gives: length,
  },
  {
    name: 'FITNAME',
    arguments: [given('bust', length), given('ease', length)],
    gives: 'text',
  },
  {
    name: 'DROPSLEEVE',
    arguments: [given('neck to wrist', length), given('body width', length)],
    gives: length,
  },
  {
    name: 'ARMHOLEDEPTH',
    arguments: [given('depth in the chart', length), given('upper arm', length), given('ease', length)],
    gives: length,
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
  },
  {
    name: 'NECKWIDTH',
    arguments: [given('neck', length), given('band', length)],
    gives: length,
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
  },
  {
    name: 'SEAMSTAKE',
    arguments: [
      given('seams', plain),
      given('stitches a seam takes from each side', stitches),
      given('stitch gauge', stitchGauge),
    ],
    gives: length,
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
  },
  {
    name: 'HANGINGGROWTH',
    arguments: hanging,
    gives: length,
  },
  {
    name: 'LENGTHTOWORK',
    arguments: hanging,
    gives: length,
  },
  {
    name: 'MEASUREWHILEWORKING',
    arguments: [given('length', length), given('gauge as worked', 'any'), given('gauge blocked', 'any')],
    gives: length,
  },
  {
    name: 'STRETCH',
    arguments: [given('width relaxed', length), given('width stretched', length)],
    gives: plain,
  },
  {
    name: 'OPENING',
    arguments: opening,
    gives: length,
  },
  {
    name: 'PASSES',
    arguments: [...opening, given('body that has to pass', length)],
    gives: 'truth',
  },
  {
    name: 'LEASTTOPASS',
    arguments: [
      given('stitch gauge', stitchGauge),
      given('times its width it stretches to', plain),
      given('body that has to pass', length),
    ],
    gives: stitches,
  },
] as const satisfies readonly FunctionSignature[];
