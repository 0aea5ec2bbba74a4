import type { Cell, PieceCell } from '../../notebook';
import type { Adapting } from './adapting';
import type { Fabrics } from './fabrics';
import type { RowChain } from './numbers';
import type { GarmentPart, Parts, RowZone } from './parts';
import type { Scales } from './scales';

/** A number or a stretch as the pattern prints it, and fitted again. */
export interface BothWays<T> {
  readonly printed: T;
  readonly mine: T;
}

/** A piece of the pattern made twice: as printed, and fitted again. */
export interface MadePart extends BothWays<PieceCell> {
  readonly part: GarmentPart;
  /** The stretches of the piece fitted again that stand for each shape. */
  readonly stretches: readonly { readonly name: string; readonly zone: RowZone; readonly rows: boolean }[];
  /** Where its last row is parted: the side, and the middle, mine. */
  readonly parting?: { readonly side: Cell; readonly middle: Cell };
  readonly start: Cell;
}

/** What the pieces are made with: the pattern and its parts, the fabrics and scales, and the pieces made so far. */
export interface Making {
  readonly adapting: Adapting;
  readonly parts: Parts;
  readonly fabrics: Fabrics;
  readonly scales: Scales;
  readonly made: MadePart[];
  /** The rows of the pieces made so far, from the first row of each. */
  readonly chains: Map<GarmentPart, RowChain>;
}
