import {
  isDimension,
  length,
  plain,
  rows,
  sameUnit,
  shownFormula,
  stitches,
  type Unit,
} from '../../formulas';
import type { Change } from '../../notebook';
import {
  type Choosable,
  type Workspace,
  showNumber,
  symbolFor,
  typeable,
  typedNumber,
} from '../../workspace';

/** The unit of a value as far as it is known. */
export function unitOf(workspace: Workspace, { cell, key, part }: Choosable): Unit {
  return workspace.allResults.unit(cell, key) ?? (part.unit === 'any' ? {} : part.unit);
}

function formulaOf({ part }: Choosable): string | undefined {
  if ('formula' in part) return part.formula;
  return 'formula' in part.entry ? part.entry.formula : undefined;
}

/** What stands in a value now, as it is typed: a number, or a formula after its sign. */
export function currentText(workspace: Workspace, choice: Choosable, size: string): string {
  const formula = formulaOf(choice);
  if (formula !== undefined) return `=${shownFormula(formula, workspace.settings.decimal)}`;
  const value = workspace.allResults.number(size, choice.cell, choice.key);
  return value === undefined
    ? ''
    : typeable(value, unitOf(workspace, choice), workspace.settings, choice.part.written);
}

/** The change that a person typed for a value, or why it cannot be made. */
export async function typedChange(
  workspace: Workspace,
  choice: Choosable,
  size: string | null,
  typed: string,
): Promise<{ change: Change } | { problem: string }> {
  const { cell, key, part } = choice;
  const ref = { cell, key };
  const asFormula = async (formula: string): Promise<{ change: Change } | { problem: string }> => {
    const tried = await workspace.formulas.read(formula, ref);
    return 'problem' in tried ? tried : { change: { ...ref, size: null, formula: tried.formula } };
  };
  if (typed.trim().startsWith('=')) return asFormula(typed.trim());
  const unit = unitOf(workspace, choice);
  const read = typedNumber(typed, { ...part, entry: { value: null } }, unit, workspace.settings);
  if ('problem' in read) return read;
  if (read.value === null) return { problem: 'Type the value to look at.' };
  if (choice.line === 'input') return { change: { ...ref, size, value: read.value } };
  const constant = asConstant(read.value, unit, workspace.settings.decimal);
  return constant === undefined
    ? { problem: 'This is worked out: type a formula, beginning with =.' }
    : asFormula(constant);
}

/** A number as a formula that is worth just that. */
function asConstant(value: number, unit: Unit, decimal: '.' | ','): string | undefined {
  if (!isDimension(unit)) return undefined;
  const number = String(value).replace('.', decimal);
  if (sameUnit(unit, length)) return `=CM(${number})`;
  if (sameUnit(unit, stitches)) return `=STS(${number})`;
  if (sameUnit(unit, rows)) return `=ROWS(${number})`;
  return sameUnit(unit, plain) ? `=${number}` : undefined;
}

/** A change in words: "15", "= finished_bust / 2", with its unit. */
export function changeInWords(workspace: Workspace, choice: Choosable, { value, formula }: Change): string {
  if (formula !== undefined) return `= ${shownFormula(formula, workspace.settings.decimal)}`;
  const unit = unitOf(workspace, choice);
  const { settings } = workspace;
  const { written } = choice.part;
  return `${showNumber(value!, unit, settings, written)} ${symbolFor(unit, settings, written)}`.trim();
}

/** What stands in a value now, in words; of sizes that differ, from the least to the most. */
export function nowInWords(workspace: Workspace, choice: Choosable, size: string | null): string {
  const formula = formulaOf(choice);
  if (formula !== undefined) return `= ${shownFormula(formula, workspace.settings.decimal)}`;
  const unit = unitOf(workspace, choice);
  const { settings } = workspace;
  const { written } = choice.part;
  const sizes = size === null ? workspace.sizes.map(({ id }) => id) : [size];
  const values = sizes.flatMap((id) => workspace.allResults.number(id, choice.cell, choice.key) ?? []);
  if (values.length === 0) return 'nothing yet';
  const shown = [Math.min(...values), Math.max(...values)].map((value) =>
    showNumber(value, unit, settings, written),
  );
  return `${[...new Set(shown)].join(' to ')} ${symbolFor(unit, settings, written)}`.trim();
}
