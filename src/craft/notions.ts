import { CraftError } from './craft-error';
import { numberParam } from './message-parts';
import { finite, notNegative, whole, wholeCount } from './numbers';

/**
 * The buttons, beads or tassels that a row of sites takes, and the metres of yarn or trim they use.
 *
 * Every `everyNth` site gets a piece, the first at site `startAt`, counted from 1 (1 unless told): pieces =
 * ⌊(sites − startAt) / everyNth⌋ + 1. metres = pieces × lengthEach × (1 + waste).
 *
 * Cords and ties can strangle a baby or a small child, buttons and beads can choke one: keep them off, or follow the
 * rules for children's clothing where the garment is worn or sold.
 *
 * @param o.sites places along the edge where a piece could go (eyelets, spaces, stitches)
 * @param o.everyNth 1 for every site, 2 for every other one
 * @param o.lengthEach cm of yarn or trim in one piece; 0 for buttons and beads, which are counted
 * @param o.waste what is lost in cutting and knotting, as a fraction: 0 unless told, 1 at most
 * @returns pieces, and metres with the waste
 * @throws CraftError where a count is not whole, a length less than 0, or the first site lies beyond the last
 * @example
 * notionsFor({ sites: 60, everyNth: 4, startAt: 2, lengthEach: 30, waste: 0.05 }) // { pieces: 15, metres: 4.725 }
 * notionsFor({ sites: 7, everyNth: 1, lengthEach: 0 }) // { pieces: 7, metres: 0 }
 *
 * Source: common practice.
 */
export function notionsFor(o: {
  sites: number;
  everyNth: number;
  startAt?: number;
  lengthEach: number;
  waste?: number;
}): { pieces: number; metres: number } {
  const sites = wholeCount(o.sites, 'The number of sites', 1);
  const everyNth = wholeCount(o.everyNth, 'The step from one piece to the next, in sites,', 1);
  const startAt = wholeCount(o.startAt ?? 1, 'The site of the first piece', 1);
  const lengthEach: number = notNegative(o.lengthEach, 'The length of a piece');
  const waste = notNegative(o.waste ?? 0, 'The waste');
  if (startAt > sites) {
    throw new CraftError(
      'beyond-the-end',
      'The first piece would go to site {startAt}, and there are {sites}: start at site {sites} or before.',
      { startAt, sites },
    );
  }
  if (waste > 1) {
    throw new CraftError(
      'too-large',
      'The waste is {waste}, more than the pieces themselves: write it as a fraction, {such} for 5 %.',
      { waste: numberParam(waste), such: 0.05 },
    );
  }
  const pieces = Math.floor((sites - startAt) / everyNth) + 1;
  const metres = (pieces * lengthEach * (1 + waste)) / 100;
  return { pieces, metres: whole(finite(metres, 'The length of all pieces')) };
}
