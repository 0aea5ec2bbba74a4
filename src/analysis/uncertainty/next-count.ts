import { type Repeat, type Rule, foundationChain, neighbourChance } from '../../craft';
import type { Cell } from '../../notebook';
import type { CellRef } from '../../engine';
import { wholeCall } from './decisions';
import type { Instead } from './works';

/** The number at a place, where there is one. */
type NumberAt = (ref: CellRef) => number | undefined;

/** The place of the exact count a fitted one was chosen for; undefined where a cell fits none, or by another formula. */
export function targetOf(cell: Cell, key: string): CellRef | undefined {
  if (cell.taken?.[key] !== undefined) return undefined;
  if (cell.kind === 'fit' && key === 'count') return { cell: cell.id, key: 'target' };
  if (cell.kind === 'pickUp' && key === 'total') return { cell: cell.id, key: 'unfitted' };
  return undefined;
}

/**
 * The chance that the true gauge, or the true length, would have chosen another count than the one that was fitted.
 *
 * @param uncertainty the exact count that was wanted, and its doubt
 * @param at numbers of the cell in the same size
 */
export function nextCountChance(
  cell: Cell,
  uncertainty: { readonly value: number; readonly u: number; readonly dof: number },
  at: NumberAt,
): { lower: number; higher: number; chance: number } | undefined {
  if (cell.kind !== 'fit' && cell.kind !== 'pickUp') return undefined;
  const repeats = repeatsOf(cell, at);
  if (!repeats) return undefined;
  const parity = cell.kind === 'fit' ? cell.parity : undefined;
  try {
    return neighbourChance({
      target: uncertainty.value,
      u: uncertainty.u,
      dof: uncertainty.dof,
      repeats,
      rule: cell.rule as Rule,
      ...(parity ? { parity } : {}),
    });
  } catch {
    // No other count is allowed, or none below: the cell itself says so.
    return undefined;
  }
}

/** What a count was before it was rounded, and how it was. */
export interface Rounded {
  readonly instead: Instead;
  readonly rule: Rule;
  readonly parity?: 'odd' | 'even';
}

const roundings: Record<string, Omit<Rounded, 'instead'>> = {
  '"nearest"': { rule: 'nearest' },
  '"up"': { rule: 'up' },
  '"down"': { rule: 'down' },
  '"even"': { rule: 'nearest', parity: 'even' },
  '"odd"': { rule: 'nearest', parity: 'odd' },
};

/** How the count of a formula is rounded, where rounding a count is all it does at last; undefined elsewhere. */
export function roundedIn(cell: Cell): Rounded | undefined {
  if (cell.kind !== 'formula') return undefined;
  const call = wholeCall(cell.formula);
  if (call?.called !== 'ROUNDCOUNT') return undefined;
  const [formula, rule = '"nearest"'] = call.arguments;
  const found = roundings[rule];
  if (formula === undefined || !found) return undefined;
  return { ...found, instead: { ref: { cell: cell.id, key: 'value' }, formula } };
}

/** The chance that the true gauge would have rounded to another count. */
export function nextRoundedChance(
  { rule, parity }: Rounded,
  uncertainty: { readonly value: number; readonly u: number; readonly dof: number },
): { lower: number; higher: number; chance: number } | undefined {
  try {
    return neighbourChance({
      target: uncertainty.value,
      u: uncertainty.u,
      dof: uncertainty.dof,
      repeats: [],
      rule,
      ...(parity ? { parity } : {}),
    });
  } catch {
    return undefined;
  }
}

function repeatsOf(cell: Extract<Cell, { kind: 'fit' | 'pickUp' }>, at: NumberAt): Repeat[] | undefined {
  const number = (key: string): number | undefined => at({ cell: cell.id, key });
  const more = cell.kind === 'fit' ? (cell.more ?? []) : [];
  const keys = ['', ...more.map((_repeat, index) => `more.${index}.`)];
  const longer = chainLonger(cell, number);
  const repeats = keys.map((key) => ({
    multiple: Math.round(number(`${key}multiple`) ?? NaN),
    plus: Math.round((number(`${key}plus`) ?? NaN) - longer),
  }));
  return repeats.every(({ multiple, plus }) => multiple >= 1 && Number.isFinite(plus)) ? repeats : undefined;
}

/** By how much the foundation chain is longer than its row, where the multiple is of the chain. */
function chainLonger(
  cell: Extract<Cell, { kind: 'fit' | 'pickUp' }>,
  number: (key: string) => number | undefined,
): number {
  if (cell.kind !== 'fit' || !cell.chain) return 0;
  const turning = number('chain.turning');
  if (turning === undefined) return NaN;
  return foundationChain({ stitches: 1, turning: Math.round(turning), counts: cell.chain.counts }) - 1;
}
