import type { Cell } from './document';

/** A cell may be in the open notebook and in what-ifs, a little different in each. */
const statesOfACell = 8;

/**
 * What is worked out of a cell alone, once for each state of it, since a cell is never changed in place. Only its last
 * states are remembered: the history of edits keeps hundreds, and nobody asks about those.
 */
export function memoizePerCell<Value>(make: (cell: Cell) => Value): (cell: Cell) => Value {
  const known = new Map<string, { readonly cell: Cell; readonly value: Value }[]>();
  return (cell) => {
    const states = known.get(cell.id);
    const state = states?.find((one) => one.cell === cell);
    if (state) return state.value;
    const value = make(cell);
    known.set(cell.id, [{ cell, value }, ...(states ?? [])].slice(0, statesOfACell));
    return value;
  };
}
