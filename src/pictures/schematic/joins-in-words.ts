import { isolated } from './markup';
import { nameOf } from './measures';
import type { JoinEdge } from '../../notebook';
import type { SchematicPiece, SchematicSpec } from './types';

/** A join with the small letter that marks it on both edges, and a sentence of what meets. */
export interface JoinInWords {
  readonly id: string;
  readonly letter: string;
  readonly label: string;
  readonly words: string;
}

/**
 * The joins of the pieces that are drawn, each with its letter: a to z, then aa, ab …
 *
 * @example
 * joinsInWords(spec)[0] // { letter: 'a', label: 'Side seams', words: 'Back, row ends of Hem to underarm – Front, …' }
 */
export function joinsInWords(spec: Pick<SchematicSpec, 'joins' | 'pieces'>): JoinInWords[] {
  const pieces = new Map(spec.pieces.map((piece) => [piece.id, piece]));
  return shownJoins(spec).map(({ id, label, edges }, at) => ({
    id,
    letter: letterAt(at),
    label,
    // Stretches under one name are one edge to whoever reads of them.
    words: [...new Set(edges.map((edge) => edgeInWords(edge, pieces.get(edge.piece)!)))].join(' – '),
  }));
}

/** The joins with the edges that are drawn; those of which no edge is are left out. */
export function shownJoins(spec: Pick<SchematicSpec, 'joins' | 'pieces'>): SchematicSpec['joins'] {
  const there = new Set(spec.pieces.map(({ id }) => id));
  return spec.joins
    .map((join) => ({ ...join, edges: join.edges.filter(({ piece }) => there.has(piece)) }))
    .filter(({ edges }) => edges.length > 0);
}

export function letterAt(at: number): string {
  const letter = String.fromCharCode(97 + (at % 26));
  return at < 26 ? letter : letterAt(Math.floor(at / 26) - 1) + letter;
}

function edgeInWords({ edge, stretch }: JoinEdge, piece: SchematicPiece): string {
  const round = piece.worked === 'round';
  const name = isolated(piece.name);
  const of = stretch === undefined ? '' : nameOf(piece, stretch);
  switch (edge) {
    case 'start':
      return `${name}, first ${round ? 'round' : 'row'}`;
    case 'end':
      return `${name}, last ${round ? 'round' : 'row'}`;
    case 'row':
      return `${name}, end of ${of}`;
    case 'side':
      return of ? `${name}, row ends of ${of}` : `${name}, row ends`;
    case 'left':
      return `${name}, stitches of ${of}`;
  }
}
