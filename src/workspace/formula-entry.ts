import type { CellRef, Checked } from '../engine';
import type { Edit } from '../notebook';
import { fetched } from './fetching';
import type { FormulaContext } from './typed-formula';

const notFetched = {
  problem: 'The part of the page that checks formulas did not load. Is there a network? Enter it again.',
};

/** Formulas as a person types them: reads them, tries them, and puts them in the notebook. */
export class FormulaEntry {
  readonly #context: FormulaContext;

  constructor(context: FormulaContext) {
    this.#context = context;
  }

  /** Puts a formula, as typed, in an input; returns why not. */
  enter(cell: string, key: string, typed: string): Promise<string | undefined> {
    return this.#enter(typed, { cell, key }, (formula) => ({ do: 'enter', cell, key, entry: { formula } }));
  }

  /** Puts a formula, as typed, instead of an output's own; nothing typed restores its own. Returns why not. */
  async takeOver(cell: string, key: string, typed: string): Promise<string | undefined> {
    const edit = (formula: string | null): Edit => ({ do: 'take over', cell, key, formula });
    if (/^\s*=?\s*$/.test(typed)) return this.#context.document.do(edit(null));
    return this.#enter(typed, { cell, key }, edit);
  }

  /** What a formula, as typed, would give in a cell, without keeping it. */
  async evaluate(typed: string, at: CellRef): Promise<Checked<string>> {
    const part = await fetchedPart();
    return part ? part.evaluate(this.#context, typed, at) : notFetched;
  }

  /** A typed formula as it is stored, once it has been read whole and its unit found right. */
  async read(typed: string, at: CellRef): Promise<{ formula: string } | { problem: string }> {
    const part = await fetchedPart();
    return part ? part.read(this.#context, typed, at) : notFetched;
  }

  async #enter(typed: string, at: CellRef, editOf: (formula: string) => Edit): Promise<string | undefined> {
    const { document } = this.#context;
    const start = document.startState;
    const part = await fetchedPart();
    if (part) return part.enter(this.#context, start, typed, at, editOf);
    return document.isStillOpen(start) ? notFetched.problem : document.refuseFor(start, typed);
  }
}

/** What reads formulas is fetched with the first one that is typed; undefined where it does not come. */
const fetchedPart = () => fetched(() => import('./typed-formula')).catch(() => undefined);
