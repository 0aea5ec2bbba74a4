/** Something that a text says of a piece and that the notebook has otherwise; `line` where it says it. */
export interface Mismatch {
  readonly line?: number;
  readonly problem: string;
}
