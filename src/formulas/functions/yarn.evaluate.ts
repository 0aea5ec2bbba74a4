import { notionsFor, poolYarn, timeFor, yarnFor, yarnWeightsFor, whole } from '../../craft';
import { chosen } from './choice.evaluate';
import type { TradeFunction } from './trade-function';

/** The trade buys yarn and trim by the metre; a length in the sheet is cm. */
const cmPerMetre = 100;

function pooled(grams: number, ball: { grams: number; metres: number }) {
  return poolYarn([{ yarn: '', grams, ball }])[0]!;
}

function notions(sites: number, every: number, startAt: number, lengthEach: number, waste: number = 0) {
  return notionsFor({
    sites: whole(sites),
    everyNth: whole(every),
    startAt: whole(startAt),
    lengthEach,
    waste,
  });
}

/** What a garment takes: yarn, notions, hours. */
export const yarn = {
  GRAMS: (number: number) => number,
  YARNGRAMS: (area: number, swatchArea: number, swatchGrams: number, reserve?: number) =>
    yarnFor({
      area,
      swatch: { area: swatchArea, grams: swatchGrams },
      ...(reserve === undefined ? {} : { reserve }),
    }).grams,
  // How long the yarn of a ball is makes no difference to how many balls there are.
  BALLS: (grams: number, ballGrams: number) => pooled(grams, { grams: ballGrams, metres: 1 }).balls,
  YARNMETRES: (grams: number, ballGrams: number, ballLength: number) =>
    whole(pooled(grams, { grams: ballGrams, metres: ballLength / cmPerMetre }).metres * cmPerMetre),
  YARNWEIGHT: (stitchesPerCm: number, fabric: string) => {
    const key = chosen('YARNWEIGHT', fabric, {
      stockinette: 'stockinette',
      'single crochet': 'singleCrochet',
    } as const);
    const weights = yarnWeightsFor({ stitchesPerCm, fabric: key });
    return weights.map(({ number, name }) => `${number} ${name}`).join(' or ') || 'none';
  },
  // Nor does the length of each change how many pieces there are.
  NOTIONS: (sites: number, every: number, startAt: number) => notions(sites, every, startAt, 1).pieces,
  NOTIONLENGTH: (...given: Parameters<typeof notions>) => whole(notions(...given).metres * cmPerMetre),
  WORKHOURS: (stitches: number, perMinute: number) => timeFor({ stitches: whole(stitches), perMinute }).hours,
} satisfies Record<string, TradeFunction>;
