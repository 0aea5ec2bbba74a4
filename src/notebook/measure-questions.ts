import { bodyMeasures, chartRange, charts, type BodyMeasure, type ChartName } from '../craft';
import type { Cell, Entry, Settings, Size } from './document';
import { writeFineLength } from '../format';

/** Something to ask about a measurement that was typed: it stands, and may be a key or a unit that slipped. */
export interface MeasureQuestion {
  /** "Is the bust 9.4 cm? …" */
  readonly message: string;
  /** The sizes it is asked for; empty where it is asked for every size. */
  readonly sizes: readonly string[];
}

/** What people call what the charts measure. */
const named: readonly (readonly [BodyMeasure, RegExp])[] = [
  ['bust', /^(?:bust|chest|bust or chest|bust\/chest)$/u],
  ['waist', /^waist$/u],
  ['hips', /^hips?$/u],
  ['upperArm', /^upper arms?$/u],
  ['neckToWrist', /^(?:back of )?neck to wrist$/u],
  ['backWaistLength', /^back waist length$/u],
  ['crossBack', /^cross back$/u],
  ['armLengthToUnderarm', /^arm length to underarm$/u],
  ['armholeDepth', /^armhole depth$/u],
];

/** Which measure of the charts a label names: "Bust", "My finished bust", "Chest measurement". */
function measureNamed(label: string): BodyMeasure | undefined {
  const bare = label
    .trim()
    .toLowerCase()
    .replace(/^(?:(?:my|your|the|body|full|finished)\s+)+/u, '')
    .replace(/\s+(?:girth|circumference|measurement|size)$/u, '');
  return named.find(([, words]) => words.test(bare))?.[0];
}

/** A typed length of the body, and the measure of the charts that it is. */
function bodyOf(cell: Cell): { entry: Entry; measure: BodyMeasure } | undefined {
  const entry =
    cell.kind === 'measure' && cell.unit === 'length' && !cell.chosen
      ? cell.entry
      : cell.kind === 'ease'
        ? cell.body
        : undefined;
  if (!entry || 'formula' in entry) return undefined;
  const measure = 'chart' in entry ? entry.chart : measureNamed(cell.label);
  return measure && bodyMeasures.includes(measure) ? { entry, measure } : undefined;
}

/** cm, over the chart that a size follows, and over all of them where it follows none. */
function printedRange(measure: BodyMeasure, chart: ChartName | undefined): { low: number; high: number } {
  const ranges = (chart ? [chart] : (Object.keys(charts) as ChartName[])).flatMap((name) =>
    charts[name].sizes.map((size) => chartRange(name, size, measure)),
  );
  return {
    low: Math.min(...ranges.map(({ low }) => low)),
    high: Math.max(...ranges.map(({ high }) => high)),
  };
}

function typedIn(entry: Entry, size: string): number | null | undefined {
  if ('value' in entry) return entry.value;
  if ('each' in entry) return entry.each[size];
  return 'chart' in entry ? entry.own?.[size] : undefined;
}

const words: Readonly<Record<BodyMeasure, readonly [verb: 'Is' | 'Are', noun: string]>> = {
  bust: ['Is', 'bust'],
  waist: ['Is', 'waist'],
  hips: ['Are', 'hips'],
  upperArm: ['Is', 'upper arm'],
  neckToWrist: ['Is', 'length from neck to wrist'],
  backWaistLength: ['Is', 'back waist length'],
  crossBack: ['Is', 'cross back'],
  armLengthToUnderarm: ['Is', 'arm length to underarm'],
  armholeDepth: ['Is', 'armhole depth'],
};

/**
 * What to ask about the body measurements of a cell that no chart comes near: less than half of the smallest printed
 * value, or more than one and a half times the largest. Our own bounds; a person's own measurement wins, so it is a
 * question and nothing is refused.
 *
 * @example questionsAbout(bustOf9_4, sizes, { length: 'cm', decimal: '.' })
 * // [{ message: 'Is the bust 9.4 cm? Measurements here are in cm, and charts have 40.6 to 157.5 cm.', sizes: [] }]
 *
 * Source of the ranges: the charts in `craft/charts.ts`, typed from memory.
 */
export function questionsAbout(
  cell: Cell,
  sizes: readonly Size[],
  settings: Pick<Settings, 'length' | 'decimal'>,
): MeasureQuestion[] {
  const body = bodyOf(cell);
  if (!body) return [];
  const { entry, measure } = body;
  const write = (cm: number): string =>
    writeFineLength(cm, { unit: settings.length, decimal: settings.decimal });
  const [verb, noun] = words[measure];
  const unit = settings.length;
  const questions = new Map<string, string[]>();
  for (const size of sizes) {
    const cm = typedIn(entry, size.id);
    if (cm === null || cm === undefined) continue;
    const { low, high } = printedRange(measure, size.chart?.name);
    if (cm >= low / 2 && cm <= high * 1.5) continue;
    const message = `${verb} the ${noun} ${write(cm)} ${unit}? Measurements here are in ${unit === 'in' ? 'inches' : unit}, and charts have ${write(low)} to ${write(high)} ${unit}.`;
    questions.set(message, [...(questions.get(message) ?? []), size.label]);
  }
  return [...questions].map(([message, labels]) => ({
    message,
    sizes: labels.length === sizes.length ? [] : labels,
  }));
}
