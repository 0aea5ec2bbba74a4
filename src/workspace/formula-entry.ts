import type { Edit } from '../notebook';
import { storedFormula, type FormulaRead } from '../formulas';
import { loadCheckedFormula } from '../formulas/lazy';
import type { CellRef, Checked } from '../engine';
import type { Calculation } from './calculation.svelte';
import type { OpenDocument } from './document.svelte';
import { fetched } from './fetching';

/** Formulas as a person types them: reads them, tries them, and puts them in the notebook. */
export class FormulaEntry {
  readonly #document: OpenDocument;
  readonly #calculation: Pick<Calculation, 'check'>;

  constructor(document: OpenDocument, calculation: Pick<Calculation, 'check'>) {
    this.#document = document;
    this.#calculation = calculation;
  }

  /** Puts a formula, as typed, in an input; returns why not. */
  enter(cell: string, key: string, typed: string): Promise<string | undefined> {
    return this.#doTyped(typed, { cell, key }, (formula) => ({ do: 'enter', cell, key, entry: { formula } }));
  }

  /** Puts a formula, as typed, instead of an output's own; nothing typed restores its own. Returns why not. */
  async takeOver(cell: string, key: string, typed: string): Promise<string | undefined> {
    if (/^\s*=?\s*$/.test(typed)) return this.#document.do({ do: 'take over', cell, key, formula: null });
    return this.#doTyped(typed, { cell, key }, (formula) => ({ do: 'take over', cell, key, formula }));
  }

  /** What a formula, as typed, would give in a cell, without keeping it. */
  async evaluate(typed: string, at: CellRef): Promise<Checked<string>> {
    const read = await this.#parse(typed);
    if ('problem' in read) return read;
    try {
      return await this.#calculation.check(storedFormula(read.tokens), at);
    } catch (error) {
      return { problem: error instanceof Error ? error.message : String(error) };
    }
  }

  /** A typed formula as it is stored, once it has been read whole and its unit found right. */
  async read(typed: string, at: CellRef): Promise<{ formula: string } | { problem: string }> {
    const read = await this.#parse(typed);
    if ('problem' in read) return read;
    const checked = await this.evaluate(typed, at);
    return 'problem' in checked ? checked : { formula: storedFormula(read.tokens) };
  }

  async #doTyped(typed: string, at: CellRef, editOf: (formula: string) => Edit): Promise<string | undefined> {
    const start = this.#document.startState;
    for (;;) {
      const checkedIn = this.#document.notebook;
      const read = await this.read(typed, at);
      if (!this.#document.isStillOpen(start)) return this.#document.refuseFor(start, typed);
      // Names and units are right for the notebook they were looked up in.
      if (this.#document.notebook !== checkedIn) continue;
      return 'problem' in read ? read.problem : this.#document.do(editOf(read.formula), start);
    }
  }

  /** The functions that formulas may use are fetched with the first formula that is typed. */
  async #parse(typed: string): Promise<FormulaRead> {
    try {
      const { readCheckedFormula } = await fetched(loadCheckedFormula);
      return readCheckedFormula(typed, this.#document.settings.decimal);
    } catch {
      const problem =
        'The part of the page that checks formulas did not load. Enter it again; if that does not help, reload the page: your notebook stays.';
      return { problem, start: 0, end: typed.length };
    }
  }
}
