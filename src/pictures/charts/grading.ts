import { capital, uncapital, joinWithAnd } from '../../format';
import { figure, inUnit, lengthFigure, lengthInWords, unitWord } from './in-words';
import type { PlotTable, Shown } from './types';

/** A measurement by size, in cm. */
export interface Graded {
  readonly id: string;
  readonly label: string;
  /** Of a body, or of what is made for it. */
  readonly of: 'body' | 'finished';
  /** One for each size of the spec, null where the size has none. */
  readonly values: readonly (number | null)[];
  /** Why a size has none, in the same places. */
  readonly problems?: readonly (string | undefined)[] | undefined;
  /** The id of the body measurement that a finished one is made to fit. */
  readonly over?: string | undefined;
}

/** Measurements to be seen against the sizes. */
export interface GradingSpec extends Shown {
  readonly sizes: readonly { readonly id: string; readonly label: string }[];
  readonly measures: readonly Graded[];
  readonly theme: 'light' | 'dark';
}

/** What a finished measurement is more than its body, by size, in cm. */
export interface EaseBetween {
  readonly body: Graded;
  readonly finished: Graded;
  readonly values: readonly (number | null)[];
}

/** Less than this, in cm, is no growth: a millimetre is not seen in any fabric. (Our own default.) */
const noGrowth = 0.1;

/** Sizes whose eases lie further apart than this, in cm, are fitted differently. (Our own default: 2 in.) */
const runsAway = 5.08;

/**
 * The eases between the measurements of a spec: each finished one over the body it is made to fit; where it is said of
 * none, over the only body measurement there is.
 *
 * @example
 * easesIn(spec)[0].values // [20, 20, 20]
 */
export function easesIn({ measures }: Pick<GradingSpec, 'measures'>): EaseBetween[] {
  const bodies = measures.filter((measure) => measure.of === 'body');
  return measures.flatMap((finished): EaseBetween[] => {
    if (finished.of === 'body') return [];
    const wornOver = bodies.find(({ id }) => id === finished.over);
    const body = wornOver ?? (finished.over === undefined && bodies.length === 1 ? bodies[0] : undefined);
    if (!body) return [];
    const values = finished.values.map((value, i) => {
      const under = body.values[i] ?? null;
      return value === null || under === null ? null : value - under;
    });
    return [{ body, finished, values }];
  });
}

/** A letter for each measurement, so that its line is known without its dashes. */
export function letterFor(sizeIndex: number): string {
  return String.fromCharCode(65 + (sizeIndex % 26));
}

/** What the picture shows: "Bust and finished bust by size, in cm". */
export function gradingTitle(spec: GradingSpec): string {
  const labels = spec.measures.map(({ label }, i) => (i === 0 ? label : uncapital(label)));
  if (labels.length === 0) return 'No measurement is chosen';
  return `${joinWithAnd(labels)} by size, in ${unitWord(spec.unit)}`;
}

/**
 * What is to be seen in a grading, in sentences: eases first, and whether they run away; then where a measurement does
 * not grow, or shrinks; then what is missing and why.
 *
 * @example
 * gradingInWords(spec) // ['The ease of finished bust over bust is 20.0 cm in every size.', 'Armhole does not grow from L to XL.']
 */
export function gradingInWords(spec: GradingSpec): string[] {
  return [
    ...easesIn(spec).flatMap((ease) => easeInWords(ease, spec) ?? []),
    ...spec.measures.flatMap((measure) => growthInWords(measure, spec)),
    ...spec.measures.flatMap((measure) => missingInWords(measure, spec)),
  ];
}

interface Valued {
  readonly label: string;
  readonly value: number;
}

function valued(values: readonly (number | null)[], { sizes }: GradingSpec): Valued[] {
  return values.flatMap((value, i) => (value === null ? [] : [{ label: sizes[i]!.label, value }]));
}

function easeInWords({ body, finished, values }: EaseBetween, spec: GradingSpec): string | null {
  const found = valued(values, spec);
  if (found.length === 0) return null;
  const least = found.reduce((a, b) => (b.value < a.value ? b : a));
  const most = found.reduce((a, b) => (b.value > a.value ? b : a));
  const what = `The ease of ${uncapital(finished.label)} over ${uncapital(body.label)}`;
  const message = ({ value, label }: Valued) => `${lengthInWords(value, spec)} in ${label}`;
  if (most.value - least.value < noGrowth) {
    const every = `in every size${found.length < spec.sizes.length ? ' that has it' : ''}`;
    return `${what} is ${lengthInWords(least.value, spec)} ${found.length === 1 ? `in ${least.label}` : every}.`;
  }
  const apart = lengthInWords(most.value - least.value, spec);
  const away = most.value - least.value > runsAway ? `, and runs away: ${apart} lie between them` : '';
  return `${what} goes from ${message(least)} to ${message(most)}${away}.`;
}

function growthInWords({ label, values }: Graded, spec: GradingSpec): string[] {
  const found = valued(values, spec);
  if (found.length < 2) return [];
  const flat: [string, string][] = [];
  const falls: string[] = [];
  for (let i = 1; i < found.length; i++) {
    const [before, here] = [found[i - 1]!, found[i]!];
    const step = here.value - before.value;
    if (step <= -noGrowth)
      falls.push(`by ${lengthInWords(-step, spec)} from ${before.label} to ${here.label}`);
    else if (step < noGrowth) {
      if (flat.at(-1)?.[1] === before.label) flat.at(-1)![1] = here.label;
      else flat.push([before.label, here.label]);
    }
  }
  if (flat.length === 1 && flat[0]![0] === found[0]!.label && flat[0]![1] === found.at(-1)!.label)
    return [
      `${capital(label)} is ${lengthInWords(found[0]!.value, spec)} in every size${found.length < spec.sizes.length ? ' that has it' : ''}.`,
    ];
  const message: string[] = [];
  const from = flat.map(([a, b]) => `from ${a} to ${b}`).join(', ');
  if (flat.length > 0) message.push(`${capital(label)} does not grow ${from}.`);
  if (falls.length > 0) message.push(`${capital(label)} shrinks ${falls.join(', ')}.`);
  return message;
}

function missingInWords({ label, values, problems: errors }: Graded, spec: GradingSpec): string[] {
  const byReason = new Map<string, string[]>();
  values.forEach((value, i) => {
    if (value !== null) return;
    const reason = errors?.[i] ?? 'it has no value yet.';
    byReason.set(reason, [...(byReason.get(reason) ?? []), spec.sizes[i]!.label]);
  });
  return [...byReason].map(
    ([reason, sizes]) => `${capital(label)} is missing in ${sizes.join(', ')}: ${reason}`,
  );
}

/** The numbers of a grading: a row for each size, with the step from the size before it, and the eases. */
export function gradingTable(spec: GradingSpec): PlotTable {
  const eases = easesIn(spec);
  const none = '–';
  const cell = (value: number | null) => (value === null ? none : lengthFigure(value, spec));
  const step = ({ values }: Graded, i: number) => {
    const [before, here] = [values[i - 1] ?? null, values[i] ?? null];
    if (before === null || here === null) return none;
    const by = figure(inUnit(here - before, spec.unit), 1, spec.decimal);
    return here > before && !by.startsWith('−') ? `+${by}` : by;
  };
  return {
    caption: gradingTitle(spec),
    headings: [
      'Size',
      ...spec.measures.flatMap(({ label }) => [label, 'Step']),
      ...eases.map(({ body, finished }) => `Ease, ${finished.label} over ${body.label}`),
    ],
    rows: spec.sizes.map(({ label }, i) => [
      label,
      ...spec.measures.flatMap((measure) => [cell(measure.values[i] ?? null), step(measure, i)]),
      ...eases.map(({ values }) => cell(values[i] ?? null)),
    ]),
    note: null,
  };
}
