/** Functions of the sheet's own. No formula can name them: the tokenizer takes no point in a name. */
export const own = {
  /** A cell that has no result; why is known to the sheet. */
  nothing: 'EW.NOTHING',
  /** Checks a constraint: (formula; whole 0 or 1; above; least); a text is no limit. */
  checked: 'EW.CHECKED',
  /** Hands over the syntax tree of its argument. */
  tree: 'EW.TREE',
  /** A text by the code points of its characters, for those HyperFormula cannot read between quotes. */
  spelt: 'EW.SPELT',
} as const;
