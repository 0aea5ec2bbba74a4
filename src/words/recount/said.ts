/** What a line says beside counts, of a row (from 1): who knows how the piece is meant can compare it. */
export type Said = { readonly line: number; readonly row: number } & (
  | { readonly kind: 'side'; readonly side: 'RS' | 'WS' }
  /** Whether it speaks of rows or of rounds. */
  | { readonly kind: 'unit'; readonly unit: 'row' | 'round' }
  /** The edge at which it shapes, from this row on. */
  | { readonly kind: 'edge'; readonly edge: string }
  /** Stitches added at the start and the end of the row; left, where they are less than 0. */
  | { readonly kind: 'ends'; readonly start: number; readonly end: number }
  /** The next stretch of an edge that is picked up along, by its label, and its stitches. */
  | { readonly kind: 'stretch'; readonly label: string; readonly stitches: number }
);

/**
 * Which of rows and rounds a sentence speaks of. Row ends are counted along an edge in both, and round an armhole goes
 * the edge itself.
 *
 * @example unitsOf('Work 4 rounds even') // ['round']
 * @example unitsOf('1 in each of the next 8 row ends') // []
 */
export function unitsOf(sentence: string): ('row' | 'round')[] {
  const rows = /\brows?\b(?! ends?\b)/iu.test(sentence);
  const rounds = /\b(?:rounds?|rnds?)\b(?! the armhole)/iu.test(sentence);
  return [...(rows ? (['row'] as const) : []), ...(rounds ? (['round'] as const) : [])];
}

/**
 * The edge that a sentence shapes at, where it names one.
 *
 * @example edgeOf('dec 1 st at the neck edge on every 2nd row 3 times') // 'neck'
 */
export function edgeOf(sentence: string): string | undefined {
  return /\bat (?:the )?(\p{L}+) edge\b/iu.exec(sentence)?.[1]!.toLowerCase();
}
