/** What a line says beside counts, of a row (from 1): who knows how the piece is meant can compare it. */
export type SideStatement = { readonly line: number; readonly row: number } & (
  | { readonly kind: 'side'; readonly side: 'RS' | 'WS' }
  /** Whether it speaks of rows or of rounds. */
  | { readonly kind: 'unit'; readonly unit: 'row' | 'round' }
  /** The edge at which it shapes, from this row on. */
  | { readonly kind: 'edge'; readonly edge: string }
  /** Stitches added at the start and the end of the row; left, where they are less than 0. */
  | { readonly kind: 'ends'; readonly start: number; readonly end: number }
  /** The next stretch of an edge that is picked up along, by its label, its stitches, and what they are picked up from. */
  | { readonly kind: 'stretch'; readonly label: string; readonly stitches: number; readonly along: Along }
  /** How the stretch before it comes out even. */
  | { readonly kind: 'groups' }
  /** What is done with the stitches that are left or added at an end of the row. */
  | { readonly kind: 'way of ends'; readonly at: 'start' | 'end'; readonly by: WayOfEnds }
  /** Where on its rows a taper shapes, and how many stitches in each place. */
  | { readonly kind: 'position'; readonly each: number; readonly where: string }
  /** A taper told in one line for all sizes, and how its first round is worked; the row is the first that is shaped. */
  | { readonly kind: 'taper' }
  | { readonly kind: 'first round' }
  /** So many stitches more in each repeat of the row; fewer, where they are less than 0. */
  | { readonly kind: 'repeats'; readonly repeats: number; readonly by: number }
  /** Holes that are chained over the stitches they skip: the chains of each. */
  | { readonly kind: 'holes'; readonly chains: readonly number[] }
  /** So many stitches are worked into each hole of the row before; null where there are none in the size. */
  | { readonly kind: 'spaces'; readonly each: number | null; readonly stitch: string }
  /** The stitches by which the row is told: "sc", "k". */
  | { readonly kind: 'stitches'; readonly names: readonly string[] }
  | Begun
  | { readonly kind: 'end'; readonly how: string }
  /** The heading above this row. */
  | { readonly kind: 'heading'; readonly text: string }
  /** The fabric that is worked from this row on; `whole` is its sentence. */
  | { readonly kind: 'fabric'; readonly text: string; readonly whole: string }
  /** It is joined to a round, or a marker is placed. */
  | { readonly kind: 'round'; readonly how: 'joined' | 'marked' }
  /** Other words to read. */
  | { readonly kind: 'words'; readonly text: string }
);

/** How the first stitches of a piece come about. */
export interface Begun {
  readonly kind: 'begun';
  readonly how: 'cast on' | 'chain' | 'taken up' | 'last row' | 'armhole' | 'edge';
  /** The piece that they are taken from. */
  readonly from?: string;
  /** Where only a part of its stitches are: how many there are, and what becomes of the others. */
  readonly of?: number;
  readonly others?: string;
  /** Where they are one of two sides: the stitches between the two, and those of the other side. */
  readonly side?: { readonly middle: number | null; readonly last: number | null };
  /** The side that faces where they are picked up. */
  readonly facing?: string;
  readonly atUnderarm?: boolean;
}

/** What a stretch of an edge is said to be made of. */
export type Along =
  | { readonly by: 'rows'; readonly count: number }
  /** Where they are not taken one for one, how many stitches there are. */
  | { readonly by: 'stitches'; readonly count?: number }
  | { readonly by: 'motifs'; readonly count: number }
  | { readonly by: 'curve'; readonly length: number; readonly unit: string };

export type WayOfEnds = 'bound off' | 'slipped' | 'held' | 'unworked' | 'cast on' | 'foundation';

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
