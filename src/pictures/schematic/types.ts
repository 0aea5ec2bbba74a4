import type { Piece } from '../../craft';
import type { NotebookJoin } from '../../notebook';
import type { Shown, WorkedSize } from '../charts';

/** One size of a piece, with the plan it was worked from: the plan says at which edge stitches were left or added. */
export interface PlannedSize extends WorkedSize {
  readonly plan?: Piece | undefined;
}

/** A piece to draw, in all the notebook's sizes, in its order. */
export interface SchematicPiece {
  readonly id: string;
  readonly name: string;
  readonly worked: 'flat' | 'round';
  readonly sizes: readonly PlannedSize[];
  /** Where it lies: a body in the middle, a sleeve beside it, a strip (a band, a border) along the foot. */
  readonly lies?: 'middle' | 'beside' | 'along' | undefined;
  /** A piece that grows from another hangs from it: its first row is drawn at the top. */
  readonly hangs?: boolean | undefined;
}

/** What a schematic or the silhouettes are drawn from. */
export interface SchematicSpec extends Shown {
  readonly title: string;
  readonly pieces: readonly SchematicPiece[];
  readonly joins: readonly NotebookJoin[];
  /** The id of the one size that is drawn, or all of them. */
  readonly size: string | 'all';
  readonly sizes: readonly { readonly id: string; readonly label: string }[];
  readonly theme: 'light' | 'dark';
  /** Whether it is drawn on white, for paper, rather than on the paper of the page. */
  readonly onWhite?: boolean | undefined;
  /** Width of the drawing in px; 960 unless told. Its height follows. */
  readonly width?: number | undefined;
  /** Whether the list of measurements and joins is part of the drawing: yes unless told, since a drawing travels alone. */
  readonly key?: boolean | undefined;
  /** Begins every id in the drawing, so that two can stand in one document. */
  readonly prefix?: string | undefined;
}
