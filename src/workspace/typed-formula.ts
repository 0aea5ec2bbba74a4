import { readCheckedFormula, storedFormula } from '../formulas';
import type { CellRef, Checked } from '../engine';
import type { Edit } from '../notebook';
import type { Calculation } from './calculation.svelte';
import type { OpenDocument } from './document.svelte';
import type { StartState } from './start-state';

/** What a typed formula is read in. */
export interface FormulaContext {
  readonly document: OpenDocument;
  readonly calculation: Pick<Calculation, 'check'>;
}

/** What a formula, as typed, would give in a cell, without keeping it. */
export async function evaluate(
  { document, calculation }: FormulaContext,
  typed: string,
  at: CellRef,
): Promise<Checked<string>> {
  const read = readCheckedFormula(typed, document.settings.decimal);
  if ('problem' in read) return read;
  try {
    return await calculation.check(storedFormula(read.tokens), at);
  } catch (error) {
    return { problem: error instanceof Error ? error.message : String(error) };
  }
}

/** A typed formula as it is stored, once it has been read whole and its unit found right. */
export async function read(
  context: FormulaContext,
  typed: string,
  at: CellRef,
): Promise<{ formula: string } | { problem: string }> {
  const parsed = readCheckedFormula(typed, context.document.settings.decimal);
  if ('problem' in parsed) return parsed;
  const checked = await evaluate(context, typed, at);
  return 'problem' in checked ? checked : { formula: storedFormula(parsed.tokens) };
}

/** Makes the edit of a typed formula; returns why not. */
export async function enter(
  context: FormulaContext,
  start: StartState,
  typed: string,
  at: CellRef,
  editOf: (formula: string) => Edit,
): Promise<string | undefined> {
  const { document } = context;
  for (;;) {
    const checkedIn = document.notebook;
    const found = await read(context, typed, at);
    if (!document.isStillOpen(start)) return document.refuseFor(start, typed);
    // Names and units are right for the notebook they were looked up in.
    if (document.notebook !== checkedIn) continue;
    return 'problem' in found ? found.problem : document.do(editOf(found.formula), start);
  }
}
