import { startOf as startIn, type Start } from '../../notebook';
import type { GatheredPiece } from './gathered';
import type { PatternSource } from '../source';

export type { Start };

/** Where the first stitches of a piece come from: see `notebook/piece-start.ts`. */
export function startOf(source: PatternSource, { cell }: Pick<GatheredPiece, 'cell'>): Start {
  return startIn(source.notebook, cell);
}
