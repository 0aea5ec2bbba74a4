/** Functions of the sheet's own. No formula can name them: the tokenizer takes no point in a name. */
export const own = {
  /** A cell that has no result; why is known to the sheet. */
  nothing: 'EW.NOTHING',
  /** A formula whose result has to be whole, or more than something: (formula; whole 0 or 1; above; least); a limit that there is not is a text. */
  checked: 'EW.CHECKED',
  /** Hands over the syntax tree of its argument. */
  tree: 'EW.TREE',
  /** A text by the code points of its characters, for those HyperFormula cannot read between quotes. */
  spelt: 'EW.SPELT',
} as const;
