/** A conventional fit: its name and the ease at the bust that it covers. */
export interface FitBand {
  name: string;
  /** Inches; a band without an upper end has Infinity. */
  ease: readonly [low: number, high: number];
}

/**
 * Ease at the bust, in inches, after the Craft Yarn Council's fit guide; typed from memory.
 * The published bands leave gaps, between -2 and 0 and between 0 and 2, and they are left here too.
 */
export const fitBands: readonly FitBand[] = [
  { name: 'very close-fitting', ease: [-4, -2] },
  { name: 'close-fitting', ease: [0, 0] },
  { name: 'classic', ease: [2, 4] },
  { name: 'loose-fitting', ease: [4, 6] },
  { name: 'oversized', ease: [6, Infinity] },
];
