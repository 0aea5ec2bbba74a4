import type { BasicStitch } from '../../notebook';
import { sizeList, type BySize } from './size-list';

/** How the stitches of a fabric are called in instructions; US terms. */
export interface FabricWords {
  readonly craft: 'crochet' | 'knitting';
  /** "sc"; "k" or, on the wrong side of stockinette, "p". */
  readonly basic: string;
  readonly decrease: string;
  /** What makes one stitch more. In crochet it uses up a stitch of the row before. */
  readonly increase: string;
  readonly increaseUses: 0 | 1;
  /** "sc 6 (7, 7)" and "k6 (7, 7)". */
  plain(counts: BySize<number>): string;
}

/**
 * The words for a fabric. Without a stitch of its own a fabric is single crochet, or plain knit.
 *
 * @example wordsFor('crochet', 'sc').plain([6, 7])                 // 'sc 6 (7)'
 * @example wordsFor('knitting', 'stockinette', 'WS').plain([6])    // 'p6'
 */
export function wordsFor(
  craft: 'crochet' | 'knitting',
  stitch: BasicStitch | undefined,
  side?: 'RS' | 'WS' | 'round',
): FabricWords {
  if (craft === 'knitting') {
    const basic = stitch === 'stockinette' && side === 'WS' ? 'p' : 'k';
    return {
      craft,
      basic,
      decrease: `${basic}2tog`,
      increase: basic === 'p' ? 'm1p' : 'm1',
      increaseUses: 0,
      plain: (counts) => `${basic}${sizeList(counts)}`,
    };
  }
  const basic = stitch && stitch in chains ? stitch : 'sc';
  return {
    craft,
    basic,
    decrease: `${basic}2tog`,
    increase: `2 ${basic} in next st`,
    increaseUses: 1,
    plain: (counts) => `${basic} ${sizeList(counts)}`,
  };
}

/**
 * The turning chain of each crochet stitch, and whether it counts as a stitch: common practice (US terms).
 */
export const chains: Readonly<Record<string, { readonly turning: number; readonly counts: boolean }>> = {
  sc: { turning: 1, counts: false },
  hdc: { turning: 2, counts: false },
  dc: { turning: 3, counts: true },
  tr: { turning: 4, counts: true },
};
