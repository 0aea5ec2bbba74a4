import { plainMessage } from '../../../src/craft';
import {
  area,
  length,
  mass,
  plain,
  rowGauge,
  rows,
  stitchGauge,
  stitches,
  type Unit,
} from '../../../src/formulas/units';
import { linked, reading } from '../../../src/engine/resolve-names';
import { Names } from '../../../src/engine/names';
import { isProblem } from '../../../src/engine/slot';
import { derive, type Derivation } from '../../../src/engine/units/derive';
import { TreeReader } from '../../../src/engine/units/tree-reader';

/** Names that formulas in these tests may use. */
const known: Record<string, Unit | null> = {
  bust: length,
  finished_bust: length,
  back_sts: stitches,
  front_sts: stitches,
  back_rows: rows,
  body_sts: stitchGauge,
  body_rows: rowGauge,
  yarn: mass,
  times: plain,
  panel: area,
  title: 'text',
  wide: 'truth',
  body: 'fabric',
  rib: 'stretch',
  back: 'piece',
  neck: 'edge',
  unknown: null,
};
const names = new Names();
Object.keys(known).forEach((name, row) => names.add(name, row));
const units = Object.values(known);
const reader = new TreeReader();

export function derived(formula: string): Derivation {
  const read = reading(formula);
  if (isProblem(read)) throw new Error(read.problem);
  const link = linked(read, names);
  if (isProblem(link)) throw new Error(link.problem);
  return derive(reader.tree(link.text)!, (row) => units[row]!);
}

/** The unit of a formula, or the sentence on what is wrong with it. */
export function unitOf(formula: string): Unit | string {
  const found = derived(formula);
  if (found === 'unknown') return 'unknown';
  return isProblem(found) ? plainMessage(found.problem) : found.unit;
}
