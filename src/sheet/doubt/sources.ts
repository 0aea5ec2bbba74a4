import { withinLimits } from '../../craft/within-limits';
import { allCells, type Cell, type Entry, type Notebook, type Settings } from '../../notebook/document';
import type { Input } from '../../notebook/kind';
import { inputsOf, outputsOf } from '../../notebook/kinds';
import { length, mass, sameUnit } from '../../notebook/units';
import type { Place } from '../answers';

/** Something measured, which may be a little other than it was read. Each is independent of all the others. */
export interface Source {
  readonly id: string;
  /** "Body fabric, stitch gauge" */
  readonly label: string;
  readonly kind: 'gauge' | 'tape' | 'scale';
  /** Where its value stands: it is moved there. */
  readonly place: Place;
  /** Its standard uncertainty, where that does not come from the sheet. */
  readonly u?: number;
  /** Of a gauge: the places of its standard uncertainty and degrees of freedom, and of what was read. */
  readonly gauge?: {
    readonly u?: Place;
    readonly dof?: Place;
    readonly readings: readonly { readonly count: Place; readonly over: Place }[];
    readonly counted: 'stitches' | 'rows';
  };
}

/**
 * A tape is read to within half a centimetre either way, and scales to within half a gram: common practice, and our
 * choice where the notebook does not say otherwise. Any value in between is as likely.
 */
export const usualReading = { tapeWithin: 0.5, scaleWithin: 0.5 };

/** The standard uncertainty of one length read from the tape, cm. */
export function tapeUncertainty(settings: Settings): number {
  return withinLimits(settings.tapeWithin ?? usualReading.tapeWithin);
}

/** The standard uncertainty of one weighing, grams. */
function scaleUncertainty(settings: Settings): number {
  return withinLimits(settings.scaleWithin ?? usualReading.scaleWithin);
}

/** What was measured in a notebook: the gauges of its swatches, lengths from the tape and the chart, weights. */
export function sourcesOf(notebook: Notebook): Source[] {
  return allCells(notebook).flatMap((cell) => [
    ...gaugesOf(cell),
    ...measuredIn(cell).flatMap((input) => measured(cell, input, notebook.settings)),
  ]);
}

/** Whether a measure holds a length that is measured, and not one that was chosen. */
function isMeasured(cell: Cell): boolean {
  return cell.kind === 'measure' && !cell.chosen;
}

function gaugesOf(cell: Cell): Source[] {
  if (cell.kind !== 'swatch') return [];
  const outputs = outputsOf(cell);
  return (['sts', 'rows'] as const).flatMap((counted): Source[] => {
    const readings = cell[counted === 'sts' ? 'stitches' : 'rows'];
    const place = (key: string): Place => ({ cell: cell.id, key });
    const label = (key: string): string =>
      `${cell.label}, ${outputs.find((output) => output.key === key)?.label.toLowerCase() ?? key}`;
    const made = (key: string, gauge: Source['gauge']): Source => ({
      id: `${cell.id} ${key}`,
      label: label(key),
      kind: 'gauge',
      place: place(key),
      gauge: gauge!,
    });
    const counts = counted === 'sts' ? 'stitches' : 'rows';
    const read = (key: string) => ({ count: place(`${key}.count`), over: place(`${key}.over`) });
    const own = made(counted, {
      u: place(`${counted}_uncertainty`),
      dof: place(`${counted}_freedom`),
      readings: readings.map((_reading, at) => read(`${counted}.${at}`)),
      counted: counts,
    });
    if (!cell.asWorked) return [own];
    const before = made(`${counted}_as_worked`, { readings: [read(`asWorked.${counted}`)], counted: counts });
    return [own, before];
  });
}

/** The inputs of a cell that a tape or scales were read for. Ease, trim and the like are wished, not measured. */
function measuredIn(cell: Cell): Input[] {
  const inputs = inputsOf(cell);
  switch (cell.kind) {
    case 'measure':
      return isMeasured(cell) ? [...inputs] : [];
    case 'ease':
      return inputs.filter(({ key }) => key === 'body');
    case 'swatch':
      return inputs.filter(({ key }) => /^(weighed|pulled|hung)\./.test(key));
    default:
      return [];
  }
}

function measured(cell: Cell, { key, label, unit, entry }: Input, settings: Settings): Source[] {
  if (unit === 'any' || 'formula' in entry || isEmpty(entry)) return [];
  const kind = sameUnit(unit, length) ? 'tape' : sameUnit(unit, mass) ? 'scale' : undefined;
  if (!kind) return [];
  const u = kind === 'tape' ? tapeUncertainty(settings) : scaleUncertainty(settings);
  const called = cell.kind === 'measure' ? cell.label : `${cell.label}, ${label.toLowerCase()}`;
  return [{ id: `${cell.id} ${key}`, label: called, kind, place: { cell: cell.id, key }, u }];
}

function isEmpty(entry: Entry): boolean {
  if ('value' in entry) return entry.value === null;
  if ('each' in entry) return Object.values(entry.each).every((value) => value === null);
  return false;
}
