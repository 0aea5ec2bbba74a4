import { CraftError } from './craft-error';
import { notNegative, oneOf, same, whole, wholeCount } from './numbers';

/** So many motifs, with `gap` plain stitches between two, and the stitches it comes to. */
export interface MotifFit {
  motifs: number;
  gap: number;
  count: number;
  off: number;
}

/** The most gaps, or numbers of motifs, that are tried before the question is handed back. */
const mostTried = 1_000_000;
const offered = 5;

/**
 * Motifs set in plain fabric: how many, and how far apart, to come near a count.
 *
 * Flat, k motifs have k − 1 gaps between them and `edge` stitches at each end: k·motif + (k − 1)·gap + 2·edge. Round,
 * every motif has its gap and there are no edges: k·(motif + gap).
 *
 * @param o.target the exact stitches (width × gauge)
 * @param o.motif stitches of a motif
 * @param o.gap the fewest and the most plain stitches between two
 * @param o.edge stitches at each end, flat
 * @returns the five fits nearest the target, the nearest first; of those as near, the wider gap, then the more
 *   stitches. One motif alone, flat, has no gap: it comes up once, with the widest.
 * @throws CraftError where a count is not whole, or the gap's least is more than its most
 * @example
 * fitMotifs({ target: 80, motif: 10, gap: { least: 2, most: 4 }, edge: 1, worked: 'flat' })[0]
 * // { motifs: 6, gap: 4, count: 82, off: 2 }
 *
 * Source: common practice.
 */
export function fitMotifs(o: {
  target: number;
  motif: number;
  gap: { least: number; most: number };
  edge: number;
  worked: 'flat' | 'round';
}): MotifFit[] {
  const target = whole(notNegative(o.target, 'The count to come near'));
  const motif = wholeCount(o.motif, 'The stitches of a motif', 1);
  const least = wholeCount(o.gap?.least, 'The least gap between motifs');
  const most = wholeCount(o.gap?.most, 'The widest gap between motifs');
  const flat = oneOf(o.worked, ['flat', 'round'], 'How motifs are worked') === 'flat';
  const edge = wholeCount(o.edge, 'The stitches at each edge');
  if (least > most) {
    throw new CraftError('no-gap', 'No gap is at least {least} and at most {most}: exchange the two.', {
      least,
      most,
    });
  }

  // Flat, one motif more than there are gaps; round, as many. Either way the count grows by (motif + gap) each time.
  const alone = flat ? motif + 2 * edge : 0;
  const countOf = (gaps: number, gap: number) => alone + gaps * (motif + gap);
  const fewest = flat ? 0 : 1;
  const best: MotifFit[] = [];
  const consider = (gaps: number, gap: number) => {
    if (gaps < fewest || gap < least || gap > most || (gaps === 0 && gap !== most)) return;
    const count = countOf(gaps, gap);
    keepNearest(best, { motifs: gaps + (flat ? 1 : 0), gap, count, off: count - target });
  };

  const room = Math.max(0, target - alone);
  const [low, high] = [Math.floor(room / (motif + most)), Math.ceil(room / (motif + least))];
  const firstGaps = Math.max(fewest, low - offered);
  const lastGaps = Math.max(fewest, high) + offered;
  if (most - least <= lastGaps - firstGaps) {
    limit(most - least);
    for (let gap = least; gap <= most; gap++) {
      const near = Math.max(fewest, Math.floor(room / (motif + gap)));
      for (let gaps = near - offered; gaps <= near + offered; gaps++) consider(gaps, gap);
    }
  } else {
    limit(lastGaps - firstGaps);
    for (let gaps = firstGaps; gaps <= lastGaps; gaps++) {
      const exact = gaps === 0 ? most : Math.floor(room / gaps - motif);
      const near = Math.min(most, Math.max(least, exact));
      for (let gap = near - offered; gap <= near + offered; gap++) consider(gaps, gap);
    }
  }
  return best;
}

function limit(tried: number) {
  if (tried <= mostTried) return;
  throw new CraftError('too-many', 'There are more than a million ways to set these motifs: narrow the gap.');
}

/** Puts a fit in its place among the best, and drops what is no longer among them. */
function keepNearest(best: MotifFit[], fit: MotifFit) {
  const last = best[offered - 1];
  if (last !== undefined && !isNearer(fit, last)) return;
  const at = best.findIndex((other) => isNearer(fit, other));
  best.splice(at === -1 ? best.length : at, 0, fit);
  if (best.length > offered) best.pop();
}

function isNearer(a: MotifFit, b: MotifFit): boolean {
  const [nearA, nearB] = [Math.abs(a.off), Math.abs(b.off)];
  if (!same(nearA, nearB)) return nearA < nearB;
  return a.gap !== b.gap ? a.gap > b.gap : a.count > b.count;
}
