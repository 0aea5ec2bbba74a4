import { allCells, type Cell, type Notebook, inputsOf, outputsOf } from '../../notebook';
import { readFormula, storedFormula, type Token } from '../../formulas';
import type { CellRef } from '../../engine';

/** Functions that settle on one of several values: a count that is allowed, a ratio, a rounded number, whole balls. */
const deciding = new Set([
  'FITTOGETHER',
  ...['FITREPEAT', 'FITREPEATS', 'FITCHAIN', 'FITMOTIFS', 'MOTIFS', 'MOTIFGAP', 'NARROWMOTIFS', 'ROUNDCOUNT'],
  ...[
    'PICKUPSTITCHES',
    'PICKUPROWS',
    'PICKUPEDGE',
    'PICKUPSHARE',
    'SIDEWAYSRIB',
    'JOINARMHOLE',
    'LEASTTOPASS',
  ],
  ...['GATHERED', 'SHAPEREPEATS', 'SHAPINGS', 'BALLS', 'NOTIONS'],
  ...['ROUND', 'ROUNDUP', 'ROUNDDOWN', 'INT'],
]);

/** A call that is the whole of a formula: the function, and its arguments as formulas. */
export interface Call {
  readonly called: string;
  readonly arguments: readonly string[];
}

/**
 * The call that is the whole of a formula; undefined where it is something else.
 *
 * @example wholeCall('ROUNDCOUNT(cuff * rib_sts; "even")')
 * // { called: 'ROUNDCOUNT', arguments: ['cuff * rib_sts', '"even"'] }
 */
export function wholeCall(formula: string): Call | undefined {
  const read = readFormula(formula);
  if ('problem' in read) return undefined;
  const begin = read.tokens.findIndex(({ kind }) => kind !== 'space');
  const tokens = read.tokens.slice(begin);
  const [first] = tokens;
  if (first?.kind !== 'function') return undefined;
  const open = tokens.findIndex(({ kind }) => kind === 'open');
  const close = closing(tokens, open);
  if (tokens.slice(close + 1).some(({ kind }) => kind !== 'space')) return undefined;
  return { called: first.text, arguments: separated(tokens.slice(open + 1, close)) };
}

/** The function whose brackets hold the whole of a formula; undefined where there is none. */
export function outermost(formula: string): string | undefined {
  return wholeCall(formula)?.called;
}

function separated(tokens: readonly Token[]): string[] {
  const parts: Token[][] = [[]];
  let depth = 0;
  for (const token of tokens) {
    if (token.kind === 'open') depth++;
    else if (token.kind === 'close') depth--;
    if (token.kind === 'separator' && depth === 0) parts.push([]);
    else parts.at(-1)!.push(token);
  }
  return parts.map(storedFormula);
}

function closing(tokens: readonly Token[], open: number): number {
  let depth = 0;
  for (let at = open; at < tokens.length; at++) {
    if (tokens[at]!.kind === 'open') depth++;
    else if (tokens[at]!.kind === 'close' && --depth === 0) return at;
  }
  return -1;
}

function isDecided(formula: string): boolean {
  const called = outermost(formula);
  return called !== undefined && deciding.has(called);
}

/**
 * The places of a cell whose results are decisions: a count that a repeat allows, a pick-up's total and its shares, a
 * count that was rounded, the ratio of a pick-up, whole balls; and every formula in an input that has to be a whole
 * number, such as the rows of a stretch. Whoever works the piece works these counts, whatever the gauge truly is.
 *
 * A rounding within a longer formula is none of these. It stays a step, and `slopes` keeps off its edge.
 */
export function decisionsOf(cell: Cell): CellRef[] {
  return [
    ...inputsOf(cell).flatMap(({ key, entry, constraint }) =>
      'formula' in entry && (constraint?.whole || isDecided(entry.formula)) ? [{ cell: cell.id, key }] : [],
    ),
    ...outputsOf(cell).flatMap(({ key, formula }) => (isDecided(formula) ? [{ cell: cell.id, key }] : [])),
  ];
}

/** All places of a notebook whose results are decisions. */
export function allDecisions(notebook: Notebook): CellRef[] {
  return allCells(notebook).flatMap(decisionsOf);
}
