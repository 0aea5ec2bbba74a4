import { HyperFormula } from 'hyperformula';
import { engineSettings, type TreeHolder } from '../engine-functions';
import { own } from '../own-functions';
import type { Syntax } from './syntax';

/** HyperFormula keeps every formula it ever read; a fresh reader is cheap. */
const mostKept = 4000;

/** Reads formulas with HyperFormula's own parser, so that units follow exactly the tree that is worked. */
export class TreeReader {
  #holder: TreeHolder = {};
  #hyperFormula: HyperFormula | undefined;
  #read = 0;

  /** The syntax tree of a formula in HyperFormula's terms, without `=`; undefined where it cannot be read. */
  tree(text: string): Syntax | undefined {
    if (!this.#hyperFormula || ++this.#read > mostKept) this.#renew();
    this.#holder.tree = undefined;
    try {
      this.#hyperFormula!.calculateFormula(`=${own.tree}(${text})`, 0);
    } catch {
      return undefined;
    }
    return this.#holder.tree;
  }

  #renew(): void {
    this.#hyperFormula?.destroy();
    this.#hyperFormula = HyperFormula.buildFromArray([], { ...engineSettings, context: this.#holder });
    this.#read = 0;
  }
}
