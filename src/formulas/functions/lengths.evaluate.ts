import {
  armholeDepthFor,
  dropSleeveLength,
  finished,
  fitName,
  frontWidth,
  hangingGrowth,
  lengthToWork,
  measureWhileWorking,
  neckWidth,
  passes,
  seamedWidth,
  seamAllowance,
  strainOf,
  stretchOf,
  cmPerInch,
  whole,
} from '../../craft';
import type { TradeFunction } from './trade-function';

/** Lengths, and what a body and a fabric make of them: all in cm. */
export const lengths = {
  CM: (number: number) => number,
  MM: (number: number) => number / 10,
  METRES: (number: number) => number * 100,
  IN: (number: number) => number * cmPerInch,
  YARDS: (number: number) => number * 36 * cmPerInch,
  FINISHED: (body: number, ease: number) => finished(body, { length: ease }),
  FINISHEDBY: (body: number, share: number) => finished(body, { percent: share * 100 }),
  FITNAME: (bust: number, ease: number) => {
    const { name, between } = fitName(bust, { length: ease });
    return between ? `nearest to ${name}` : name;
  },
  DROPSLEEVE: (neckToWrist: number, bodyWidth: number) => dropSleeveLength({ neckToWrist, bodyWidth }),
  ARMHOLEDEPTH: (chartDepth: number, upperArm: number, ease: number) =>
    armholeDepthFor({ chartDepth, upperArm, ease }),
  FRONTWIDTH: (bust: number, back: number, band: number, closes: string) =>
    frontWidth({ bust, back, band, closes: closes as 'edge to edge' | 'overlapping' }),
  NECKWIDTH: (neck: number, band: number) => neckWidth({ neck, band }),
  SEAMEDWIDTH: (stitches: number, seams: number, taken: number, stitchesPerCm: number) =>
    seamedWidth({
      stitches: [whole(stitches)],
      seams: whole(seams),
      taken: whole(taken),
      stitchesPerCm,
    }),
  SEAMSTAKE: (seams: number, taken: number, stitchesPerCm: number) =>
    seamAllowance({ seams: whole(seams), taken: whole(taken), stitchesPerCm }),
  STRAIN: (length: number, stretched: number, width: number, grams: number) =>
    strainOf({ length, stretched, width, grams }),
  HANGINGGROWTH: (length: number, strain: number, mass: number) => hangingGrowth({ length, strain, mass }),
  LENGTHTOWORK: (length: number, strain: number, mass: number) => lengthToWork({ length, strain, mass }),
  MEASUREWHILEWORKING: (length: number, asWorked: number, blocked: number) =>
    measureWhileWorking({ length, asWorked, blocked }),
  STRETCH: (relaxed: number, stretched: number) => stretchOf({ relaxed, stretched }),
  // What has to pass makes no difference to how far an opening stretches.
  OPENING: (count: number, stitchesPerCm: number, stretch: number) =>
    passes({ count: whole(count), stitchesPerCm, stretch, body: 1 }).opening,
  PASSES: (count: number, stitchesPerCm: number, stretch: number, body: number) =>
    passes({ count: whole(count), stitchesPerCm, stretch, body }).holds,
  // Nor do the stitches there are to the fewest that pass.
  LEASTTOPASS: (stitchesPerCm: number, stretch: number, body: number) =>
    passes({ count: 1, stitchesPerCm, stretch, body }).least,
} satisfies Record<string, TradeFunction>;
