import { CraftError } from '../craft';
import {
  called,
  cellById,
  inputsOf,
  nameTable,
  outputsOf,
  type Cell,
  type Input,
  type Named,
  type Output,
  asWorked,
  stretchLabel,
} from '../notebook';
import { formatMessage } from '../format';
import { isDimension, namesIn, plain, sameName, shownFormula, type Unit } from '../formulas';
import { worthOf, type Amount } from './amount';
import { workFormula } from './expression';
import type { CellRef, WorkingSource } from './source';
import { syntaxOf } from './syntax';
import { Work } from './work';
import type { Result } from './result';
import type { Step } from './step';
import type { Working, WorkingLine } from './working';
import { writeResult } from './write-amount';

export type WorkingRead = Working | { readonly problem: string };

/**
 * The working of a result in a size: the formulas of its own cell that lead to it, each with its numbers put in, step by
 * step. `back` takes in the cells before it, so many generations of them. A part of a cell that only takes a result over
 * has no line: its number is that result's. What two parts of a cell work alike, as the two fronts of a band, is told
 * once.
 *
 * @returns a sentence where the result, or something on the way to it, has none
 * @example workingOf(source, { cell: 'back-sts', key: 'count' }, 'm')
 * // 114 cm ÷ 2 × 14 sts / 10 cm = 79.8 sts; nearest multiple of 8 + 3 = 83 sts
 */
export function workingOf(source: WorkingSource, ref: CellRef, size: string, back = 0): WorkingRead {
  const problem = source.errorAt(size, ref.cell, ref.key);
  if (problem) return { problem };
  const names = nameTable(source.notebook);
  const lines = new Map<string, WorkingLine>();
  const seen = new Set<string>();
  const firstWorked = new Map<string, CellRef>();
  const sameAs = new Map<string, CellRef>();
  let further = false;

  const add = (at: CellRef, left: number): void => {
    const id = `${at.cell} ${at.key}`;
    if (lines.has(id)) return;
    const part = partAt(source, at);
    const formula = part && formulaOf(part);
    if (!part || formula === undefined) return;
    for (const name of namesIn(formula)) {
      const named = takenOver(source, names, at, names.get(name));
      const feeding = named && partAt(source, named);
      if (!named || !feeding || formulaOf(feeding) === undefined) continue;
      // A fabric or a piece stands whole in what is measured on it.
      if (!isNumber(source, named, feeding)) continue;
      const here = named.cell === at.cell;
      // A gauge is where the numbers of a garment begin.
      if (!here && cellById(source.notebook, named.cell)?.kind === 'swatch') continue;
      if (here || left > 0) add(named, here ? left : left - 1);
      else further = true;
    }
    const alike = `${at.cell} ${formula}`;
    const first = firstWorked.get(alike);
    if (first && at !== ref) {
      sameAs.set(id, first);
      return;
    }
    firstWorked.set(alike, at);
    const worked = line(source, at, part, formula, size, names, (named) => {
      const from = takenOver(source, names, at, named) ?? named;
      return sameAs.get(`${from.cell} ${from.key}`) ?? from;
    });
    lines.set(id, { ...worked, steps: notYetShown(worked.steps, seen) });
  };

  try {
    add(ref, back);
  } catch (error) {
    if (!(error instanceof CraftError)) return { problem: 'The working of this cannot be shown.' };
    const { notebook } = source;
    const labelOf = (stretch: number) => stretchLabel(cellById(notebook, ref.cell), stretch);
    return { problem: formatMessage(error, notebook.settings, labelOf) };
  }
  if (lines.size === 0) return { problem: 'This is given and not worked: there is no working to show.' };
  return { lines: [...lines.values()], further };
}

/** What two functions work in the same way is told once; what a line ends on is always told. */
function notYetShown(steps: readonly Step[], seen: Set<string>): Step[] {
  return steps.filter((step, at) => {
    const text = JSON.stringify(step);
    const known = seen.has(text);
    seen.add(text);
    return !known || at === steps.length - 1;
  });
}

type FormulaPart = Input | Output;

function partAt({ notebook }: WorkingSource, { cell, key }: CellRef): FormulaPart | undefined {
  const there: Cell | undefined = cellById(notebook, cell);
  const found = there && asWorked(notebook, there);
  return found && [...inputsOf(found), ...outputsOf(found)].find((part) => part.key === key);
}

function formulaOf(part: FormulaPart): string | undefined {
  if (!('entry' in part)) return part.formula;
  return 'formula' in part.entry ? part.entry.formula : undefined;
}

/**
 * The result whose number a name in a cell stands for: where it is a part of the same cell that only takes another result
 * over, that one.
 */
function takenOver(
  source: WorkingSource,
  names: ReadonlyMap<string, Named>,
  at: CellRef,
  named: Named | undefined,
): Named | undefined {
  if (named?.cell !== at.cell) return named;
  const part = partAt(source, named);
  const formula = part && formulaOf(part);
  const over = formula === undefined ? undefined : names.get(sameName(formula.trim()));
  return over ? takenOver(source, names, at, over) : named;
}

function unitAt(source: WorkingSource, ref: CellRef, part: FormulaPart): Unit {
  return part.unit === 'any' ? (source.unit(ref.cell, ref.key) ?? plain) : part.unit;
}

function isNumber(source: WorkingSource, ref: CellRef, part: FormulaPart): boolean {
  const unit = unitAt(source, ref, part);
  return isDimension(unit) || unit === 'truth' || unit === 'text';
}

function line(
  source: WorkingSource,
  ref: CellRef,
  part: FormulaPart,
  formula: string,
  size: string,
  names: ReadonlyMap<string, Named>,
  whose: (named: Named) => CellRef,
): WorkingLine {
  const read = syntaxOf(formula);
  if ('problem' in read) throw new CraftError('not-read', '{problem}', { problem: read.problem });
  const { settings } = source.notebook;
  const work = new Work(settings, (piece) => {
    const cell = cellById(source.notebook, piece?.of?.cell ?? ref.cell);
    return cell?.kind === 'piece' ? cell.stretches.map(({ label }) => label) : [];
  });
  const worked = workFormula(read.tree, work, (name) => {
    const named = names.get(sameName(name));
    const used = named && partAt(source, named);
    if (!named || !used) throw new CraftError('unknown', 'There is no {name} in this notebook.', { name });
    const of = whose(named);
    return {
      amount: amountAt(source, named, used, size),
      of: resultAt(source, of, partAt(source, of)!, names),
    };
  });
  const result: Amount = { ...worked, ...(part.written ? { written: part.written } : {}) };
  const steps = work.steps.map((step, at) =>
    // What the line ends on is told as the grid tells it.
    at === work.steps.length - 1 && isDimension(result.unit)
      ? { ...step, answer: writeResult(result, settings), worth: worthOf(result) }
      : step,
  );
  return {
    of: resultAt(source, ref, part, names),
    formula: shownFormula(formula, settings.decimal),
    steps,
    result,
  };
}

function resultAt(
  source: WorkingSource,
  { cell, key }: CellRef,
  part: FormulaPart,
  names: ReadonlyMap<string, Named>,
): Result {
  const over = overOf(source, part, names);
  return {
    cell,
    key,
    label: called(cellById(source.notebook, cell)!, part),
    ...(over.length > 0 ? { over } : {}),
  };
}

/** The results whose number a result has without working anything on it, the nearest first. */
function overOf(source: WorkingSource, part: FormulaPart, names: ReadonlyMap<string, Named>): CellRef[] {
  const over: CellRef[] = [];
  for (let at: FormulaPart | undefined = part; at;) {
    const formula = formulaOf(at);
    const named: Named | undefined = formula === undefined ? undefined : names.get(sameName(formula.trim()));
    if (!named || over.some(({ cell, key }) => cell === named.cell && key === named.key)) break;
    over.push({ cell: named.cell, key: named.key });
    at = partAt(source, named);
  }
  return over;
}

function amountAt(source: WorkingSource, ref: CellRef, part: FormulaPart, size: string): Amount {
  const { cell, key } = ref;
  const value =
    source.number(size, cell, key) ?? source.truth(size, cell, key) ?? source.text(size, cell, key);
  if (value === undefined) {
    const problem = source.errorAt(size, cell, key);
    throw new CraftError('not-worked', '{why}', { why: problem ?? `${part.label} is not worked yet.` });
  }
  return { value, unit: unitAt(source, ref, part), ...(part.written ? { written: part.written } : {}) };
}
