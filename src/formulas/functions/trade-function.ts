/** What stands in a sheet, other than an error. */
export type Value = number | string | boolean;

/**
 * A function of formulas, on values whose kinds have been seen to. What it throws becomes the trouble of the cell.
 */
export type TradeFunction = (...values: never[]) => Value;
