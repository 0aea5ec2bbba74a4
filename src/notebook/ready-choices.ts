import { allCells, type Cell, type Notebook, type Settings } from './document';
import { inputsOf, outputsOf } from './kinds';
import { namesOf } from './names';
import { length, mass, rows, sameUnit, stitches, type Unit } from '../formulas';

/** What a person may choose: its words, and what stands for it in a formula. */
export interface ReadyChoice {
  readonly label: string;
  readonly formula: string;
  /** The cell it is of, and the label of that cell's section, where it is from the notebook. */
  readonly cell?: string;
  readonly section?: string;
}

/** What a ready-made check has to be told: something of the notebook, or one of a few offers. */
export interface ReadyNeed {
  readonly key: string;
  readonly label: string;
  readonly from?:
    'counts' | 'stitches' | 'lengths' | 'measured' | 'swatches' | 'pulled swatches' | 'notions' | 'as made';
  /** The key of another need, whose choice this one has to have the unit of. */
  readonly unitOf?: string;
  /** Words of the label or the name that make a choice likely, the most telling first. */
  readonly likely?: readonly RegExp[];
  offers?(settings: Settings): readonly ReadyChoice[];
  /** Where there is nothing to choose: what the notebook lacks. */
  readonly lacking?: string;
}

/** The unit of a place that its kind leaves to the formula, as far as it has been worked. */
export type UnitAt = (cell: string, key: string) => Unit | undefined;

/** All that can be chosen for a need, in the order of the notebook, and then what is offered beside it. */
export function choicesFor(
  notebook: Notebook,
  need: ReadyNeed,
  unitAt: UnitAt,
  chosen: Readonly<Record<string, string>> = {},
): ReadyChoice[] {
  const wanted = need.unitOf === undefined ? undefined : unitNamed(notebook, chosen[need.unitOf], unitAt);
  const fits = (unit: Unit): boolean => wanted === undefined || sameUnit(unit, wanted);
  const found = notebook.sections.flatMap((section) =>
    section.cells.flatMap((cell) =>
      choicesOf(cell, need.from, unitAt)
        .filter(({ unit }) => unit === undefined || fits(unit))
        .map(({ label, formula }) => ({ label, formula, cell: cell.id, section: section.label })),
    ),
  );
  return [...found, ...(need.offers?.(notebook.settings) ?? [])];
}

/** The choice to begin with: one that its words make likely, else one of the cell at hand, an offer, or the first. */
export function likelyChoice(
  choices: readonly ReadyChoice[],
  need: ReadyNeed,
  cell?: string,
): ReadyChoice | undefined {
  const suits = (words: RegExp) =>
    choices.find(({ label, formula }) => words.test(label) || words.test(formula));
  return (
    need.likely?.map(suits).find((choice) => choice !== undefined) ??
    (cell === undefined ? undefined : choices.find((choice) => choice.cell === cell)) ??
    choices.find((choice) => choice.cell === undefined) ??
    choices[0]
  );
}

interface Found {
  readonly label: string;
  readonly formula: string;
  readonly unit?: Unit;
}

const sought = {
  counts: [stitches, rows],
  stitches: [stitches],
  lengths: [length],
  measured: [stitches, rows, length, mass],
} satisfies Record<string, readonly Unit[]>;

function choicesOf(cell: Cell, from: ReadyNeed['from'], unitAt: UnitAt): Found[] {
  switch (from) {
    case undefined:
      return [];
    case 'swatches':
      return cell.kind === 'swatch' ? [{ label: cell.label, formula: cell.name }] : [];
    case 'pulled swatches':
      return cell.kind === 'swatch' && cell.pulled ? [{ label: cell.label, formula: cell.name }] : [];
    case 'as made':
      return cell.kind === 'as made' ? [{ label: cell.label, formula: cell.name }] : [];
    case 'notions':
      return cell.kind === 'notions' ? [{ label: cell.label, formula: cell.name }] : [];
    default:
      // What was counted on a swatch is no count of the garment, and a check is no measure.
      if (cell.kind === 'swatch' || cell.kind === 'check') return [];
      return unitsOf(cell, unitAt).filter(({ unit }) => sought[from].some((one) => sameUnit(one, unit)));
  }
}

function unitsOf(cell: Cell, unitAt: UnitAt): (Found & { readonly unit: Unit })[] {
  const units = new Map([...inputsOf(cell), ...outputsOf(cell)].map(({ key, unit }) => [key, unit]));
  const found = namesOf(cell).flatMap(({ key, name, label }) => {
    const declared = units.get(key);
    const unit = declared === 'any' ? unitAt(cell.id, key) : declared;
    return unit === undefined ? [] : [{ label, formula: name, unit }];
  });
  // The cell's own result before its parts.
  return [...found].sort((a, b) => Number(b.formula === cell.name) - Number(a.formula === cell.name));
}

function unitNamed(notebook: Notebook, name: string | undefined, unitAt: UnitAt): Unit | undefined {
  if (name === undefined) return undefined;
  for (const cell of allCells(notebook)) {
    const found = unitsOf(cell, unitAt).find(({ formula }) => formula === name);
    if (found) return found.unit;
  }
  return undefined;
}
