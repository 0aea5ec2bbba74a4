import { CraftError } from '../../src/craft';

/** An example published elsewhere: what it gives and what it comes to, in fields named by its kind. */
export interface Example {
  id: string;
  topic: string;
  kind: string;
  source?: string;
  given: Record<string, unknown>;
  /** Fields with their values, or one list alone. */
  expect: unknown;
}

type Worked = number | readonly Worked[];

/**
 * A way from what examples of one form give to what they ask, by the functions of `src/craft`.
 *
 * An example belongs to it by its fields: it gives all of `given` and `lists` and no others, and asks for all of
 * `asks`. Where fields alone do not say what is worked ("from 268"), its topic has to say it too. A field among
 * `lists` is a list in itself; any other may be a list with one entry for each size.
 */
export interface Computation {
  topic: RegExp;
  given: readonly string[];
  lists: readonly string[];
  asks: readonly string[];
  /**
   * Works one size.
   *
   * @param wanted how long the list is that the example asks for, where it asks for a list alone
   * @param topic what `topic` found
   */
  work(given: never, wanted: number, topic: RegExpExecArray): Worked | Record<string, Worked>;
}

/** A computation whose fields are named once: `work` is given those and no others. */
export function computation<Field extends string, List extends string = never>(o: {
  topic?: RegExp;
  given: readonly Field[];
  lists?: readonly List[];
  asks?: readonly string[];
  work(
    given: Record<Field, number> & Record<List, readonly number[]>,
    wanted: number,
    topic: RegExpExecArray,
  ): Worked | Record<string, Worked>;
}): Computation {
  return { topic: /(?:)/, lists: [], asks: [], ...o };
}

export type Verdict = 'holds' | 'falls short' | 'not yet';

/**
 * Works an example and compares. A decimal agrees to within half of its last printed digit, a whole number exactly.
 * A field that only repeats what was given needs no computing.
 *
 * @returns `holds` where everything asked is computed and the same; `falls short` where something computed differs
 *   or is refused, with both values; `not yet` where something asked is not computed and nothing differs
 */
export function checkExample(
  example: Example,
  computations: readonly Computation[],
): { verdict: Verdict; why: string } {
  const notYet = (why: string) => ({ verdict: 'not yet' as const, why });
  if (example.kind === 'table') return notYet('a table to compare with, and nothing to compute');
  if (example.kind !== 'arithmetic' && example.kind !== 'rule') {
    return notYet(`its kind, “${example.kind}”, is not known`);
  }
  if (typeof example.expect !== 'object' || example.expect === null) {
    return notYet('it asks neither for fields nor for a list');
  }
  const found = computationFor(example, computations);
  const fields = Object.keys(example.given);
  if (!found) return notYet(`nothing computes “${example.topic}” from ${fields.join(', ') || 'nothing'}`);
  const sizes = sizesOf(numbersOf(example), found);
  if (typeof sizes === 'string') return notYet(sizes);

  const ofList = Array.isArray(example.expect);
  let worked: Worked | Record<string, Worked>;
  try {
    worked = workedOut(example, found, sizes);
  } catch (error) {
    if (!(error instanceof CraftError)) throw error;
    return { verdict: 'falls short', why: `ours cannot be worked. ${error.message}` };
  }
  if (ofList !== Array.isArray(worked)) return notYet('what it asks for is not what is computed');
  const request = ofList ? { 'The list': example.expect } : (example.expect as Record<string, unknown>);
  const ours = ofList ? { 'The list': worked as Worked } : (worked as Record<string, Worked>);
  return compared(request, ours, example.given, sizes !== null);
}

/** The computation that an example belongs to: by what it gives and asks and, where that is not enough, its topic. */
export function computationFor(
  example: Example,
  computations: readonly Computation[],
): Computation | undefined {
  const fields = Object.keys(numbersOf(example));
  const requested = Array.isArray(example.expect) ? [] : Object.keys(example.expect as object);
  return computations.find(({ topic, given, lists, asks }) => {
    const wanted = new Set([...given, ...lists]);
    return (
      fields.length === wanted.size &&
      fields.every((field) => wanted.has(field)) &&
      asks.every((field) => requested.includes(field)) &&
      topic.test(example.topic)
    );
  });
}

/** What an example gives, but for its unit: lengths and gauges are all in that one, and counts do not depend on it. */
function numbersOf({ given }: Example): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(given).filter(([field, value]) => field !== 'unit' || typeof value !== 'string'),
  );
}

/** How many sizes an example gives, null where it gives none, or a sentence on why it cannot be read. */
function sizesOf(given: Record<string, unknown>, { lists }: Computation): number | null | string {
  let sizes: number | null = null;
  for (const [field, value] of Object.entries(given)) {
    const values = Array.isArray(value) ? (value as unknown[]) : [value];
    if (values.length === 0 || !values.every((one) => typeof one === 'number')) {
      return `its ${field} is not a number or a list of numbers`;
    }
    if (lists.includes(field)) {
      if (!Array.isArray(value)) return `its ${field} is not a list`;
    } else if (Array.isArray(value)) {
      if (sizes !== null && sizes !== value.length) return 'its lists are not of the same number of sizes';
      sizes = value.length;
    }
  }
  return sizes;
}

function workedOut(
  example: Example,
  found: Computation,
  sizes: number | null,
): Worked | Record<string, Worked> {
  const { expect, topic } = example;
  const given = numbersOf(example);
  const words = found.topic.exec(topic)!;
  const one = (size: number) => {
    const ofSize = Object.entries(given).map(([field, value]) => [
      field,
      Array.isArray(value) && !found.lists.includes(field) ? (value[size] as unknown) : value,
    ]);
    const list = sizes !== null && Array.isArray(expect) ? (expect[size] as unknown) : expect;
    return found.work(Object.fromEntries(ofSize) as never, Array.isArray(list) ? list.length : 0, words);
  };
  if (sizes === null) return one(0);
  const all = Array.from({ length: sizes }, (_, size) => one(size));
  if (all.every((ofSize) => typeof ofSize === 'number' || Array.isArray(ofSize))) return all as Worked[];
  const records = all as Record<string, Worked>[];
  return Object.fromEntries(
    Object.keys(records[0]!).map((field) => [field, records.map((ofSize) => ofSize[field]!)]),
  );
}

function compared(
  request: Record<string, unknown>,
  ours: Record<string, Worked>,
  given: Record<string, unknown>,
  bySize: boolean,
): { verdict: Verdict; why: string } {
  const differing: string[] = [];
  const missing: string[] = [];
  for (const [field, expected] of Object.entries(request)) {
    const found = Object.hasOwn(ours, field) ? ours[field]! : undefined;
    if (found === undefined) {
      if (!agree(expected, given[field])) missing.push(field);
    } else if (!agree(expected, found) && !(bySize && agreeInEverySize(expected, found))) {
      differing.push(`${field} is ${inWords(expected)} in the source, and ${inWords(found)} by ours`);
    }
  }
  if (differing.length > 0) return { verdict: 'falls short', why: differing.join('; ') };
  if (missing.length > 0) return { verdict: 'not yet', why: `${missing.join(', ')} cannot be computed yet` };
  if (Object.keys(request).length === 0) return { verdict: 'not yet', why: 'it asks for nothing' };
  return { verdict: 'holds', why: '' };
}

function agreeInEverySize(expected: unknown, found: Worked): boolean {
  return Array.isArray(found) && found.every((ofSize) => agree(expected, ofSize));
}

function agree(expected: unknown, found: unknown): boolean {
  if (Array.isArray(expected)) {
    return (
      Array.isArray(found) &&
      found.length === expected.length &&
      expected.every((one, i) => agree(one, found[i]))
    );
  }
  if (typeof expected !== 'number' || typeof found !== 'number') return false;
  const decimals = /\.(\d+)$/.exec(String(expected))?.[1]?.length ?? 0;
  const within = decimals === 0 ? 0 : 0.5 / 10 ** decimals;
  return Math.abs(expected - found) <= within + 1e-9 * Math.max(1, Math.abs(expected));
}

function inWords(value: unknown): string {
  if (!Array.isArray(value))
    return typeof value === 'number' ? String(Number(value.toPrecision(12))) : JSON.stringify(value);
  return value.map((one) => (Array.isArray(one) ? `(${inWords(one)})` : inWords(one))).join(', ');
}
