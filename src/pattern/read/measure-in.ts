import type { LogicalLine } from './lines';
import { sizeListsIn, type LengthUnit, type PrintedList } from './size-list-at';
import type { ImportDiagnostic, MeasureOf, StatedMeasure } from './types';

const kinds: readonly (readonly [MeasureOf, RegExp])[] = [
  [
    'sleeve length',
    /sleeve.{0,12}length|length.{0,12}sleeve|underarm to (?:cuff|wrist)|wrist to underarm|sleeve seam/iu,
  ],
  ['armhole', /armhole|armscye/iu],
  ['upper arm', /upper ?arm|bicep|biceps|sleeve (?:width|circumference|top)/iu],
  ['wrist', /wrist|cuff/iu],
  [
    'length to underarm',
    /(?:hem|length|cast.?on).{0,12}(?:to|at) (?:the )?(?:underarm|armhole)|side seam|body length to underarm/iu,
  ],
  ['length', /\blength\b/iu],
  ['neck', /neck/iu],
  ['bust', /bust|chest/iu],
];

/** What a label says a measurement is of. */
export function measureOf(label: string): MeasureOf {
  return kinds.find(([, words]) => words.test(label))?.[0] ?? 'other';
}

export interface MeasureContext {
  readonly sizes: number;
  readonly decimal: '.' | ',';
  /** What the heading above says. */
  readonly on: 'body' | 'garment' | undefined;
  readonly unit: LengthUnit | undefined;
  readonly expected: boolean;
}

/** Longer than any measurement of a garment, in cm. */
const longest = 1000;

const cmOf = (value: number, unit: LengthUnit): number => (unit === 'in' ? value * 2.54 : value);

/** The measurement a line states by size; undefined where it states none, diagnostics alone where it cannot be read. */
export function measureIn(
  line: LogicalLine,
  context: MeasureContext,
): { measure?: StatedMeasure; diagnostics: ImportDiagnostic[] } | undefined {
  const { text } = line;
  const lists = sizeListsIn(text, context.decimal, true).filter(
    ({ from }) => !/\bsize\s*$/iu.test(text.slice(0, from)),
  );
  const list = lists.find(({ values }) => values.length > 1) ?? lists[0];
  if (!list) return undefined;
  const label = text
    .slice(0, list.from)
    .replace(/\((?:in\s+)?(?:cm|in|inches|centimet(?:re|er)s)\)|\b(?:in\s+)?(?:cm|inches)\b/giu, '')
    .replace(/[\s:=–—-]+$/u, '')
    .trim();
  const of = measureOf(label);
  const words = label.split(/\s+/u).length;
  if (label === '' || words > 8 || (of === 'other' && !context.expected)) return undefined;
  // A count of stitches or rows is no length.
  if (
    /^\s*(?:sts?|stitch(?:es)?|rows?|rounds?|rnds?|row ends?|times|balls?|skeins?|repeats?)\b/iu.test(
      text.slice(list.to),
    )
  )
    return undefined;
  const range = line.range(list.from, list.to);
  const unread = (message: string) => ({ diagnostics: [{ range, message, kind: 'unread' as const }] });
  const wrong = wrongNumber(list, context.sizes);
  if (wrong) return unread(wrong);
  if (list.units.length > 1) {
    return unread('This list mixes cm and inches: give all its numbers in one of them, or make two lists.');
  }
  const named = /\(?\b(?:in\s+)?(cm|centimet(?:re|er)s|inches|in)\)?(?=[\s:=)–—-]*$)/iu.exec(
    text.slice(0, list.from),
  )?.[1];
  const after = /^\s*(cm\b|centimet(?:re|er)s?\b|inch(?:es)?\b|in\b|["″”])/iu.exec(text.slice(list.to))?.[1];
  const unitWord = named ?? after;
  const unit = list.units[0] ?? (unitWord ? (/^c/iu.test(unitWord) ? 'cm' : 'in') : context.unit);
  if (!unit) {
    return context.expected || of !== 'other'
      ? unread(`"${label}" has no unit: write cm or in after its numbers.`)
      : undefined;
  }
  const on = /\bto fit\b|\bbody\b(?! length)|\bwearer|\bactual (?:bust|chest|body)/iu.test(label)
    ? 'body'
    : /finished|garment|completed/iu.test(label)
      ? 'garment'
      : context.on;
  if (!on) {
    return unread(
      `Is "${label}" a measurement of the body or of the finished garment? Write "to fit" or "finished" before it.`,
    );
  }
  const toAll = (values: readonly (number | null)[]): (number | null)[] =>
    values.length === 1 ? Array.from({ length: context.sizes }, () => values[0]!) : [...values];
  const values = toAll(list.values).map((value) => (value === null ? null : cmOf(value, unit)));
  if (values.some((value) => value !== null && !(value > 0 && value <= longest))) {
    return unread(
      `A measurement is more than 0 and at most ${longest} cm: correct the numbers of this line.`,
    );
  }
  const diagnostics = otherUnit(line, lists, list, unit);
  return {
    measure: { of, label, on, values, step: cmOf(list.step, unit), range },
    diagnostics,
  };
}

/** "5 numbers for 9 sizes", as a sentence; undefined where a list is right. */
export function wrongNumber(list: PrintedList, sizes: number): string | undefined {
  const many = list.values.length;
  if (many === sizes || many === 1) return undefined;
  return `This list has ${many} numbers, and the pattern has ${sizes} ${sizes === 1 ? 'size' : 'sizes'}: ${
    many < sizes
      ? `${sizes - many} ${sizes - many === 1 ? 'is' : 'are'} missing`
      : `${many - sizes} ${many - sizes === 1 ? 'is' : 'are'} too many`
  }. Correct it, or write a dash for a size that has none.`;
}

/** The same measurement in the other unit, printed beside it, has to agree as far as both are rounded. */
function otherUnit(
  line: LogicalLine,
  lists: readonly PrintedList[],
  list: PrintedList,
  unit: LengthUnit,
): ImportDiagnostic[] {
  const other = lists.find(
    (one) =>
      one !== list && one.values.length === list.values.length && one.units[0] && one.units[0] !== unit,
  );
  if (!other) return [];
  // One number beside one number may be of something else, if it is not in brackets or after a stroke.
  const between = line.text.slice(list.to, other.from);
  if (list.values.length === 1 && !/^[\s(/[]*$/u.test(between)) return [];
  const apart = list.values.flatMap((value, at) => {
    const second = other.values[at];
    if (value === null || second === null || second === undefined) return [];
    const off = Math.abs(cmOf(value, unit) - cmOf(second, other.units[0]!));
    const allowed = (cmOf(list.step, unit) + cmOf(other.step, other.units[0]!)) / 2 + 1e-6;
    return off > allowed ? [`${value} ${unit} and ${second} ${other.units[0]!}`] : [];
  });
  if (apart.length === 0) return [];
  return [
    {
      range: line.range(other.from, other.to),
      kind: 'contradiction',
      message: `The two units do not agree: ${apart.slice(0, 3).join('; ')}. The first is read; correct the one that is wrong.`,
    },
  ];
}
