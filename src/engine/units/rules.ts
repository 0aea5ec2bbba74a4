import {
  type FunctionEntry,
  length,
  plain,
  rowGauge,
  rows,
  sameUnit,
  stitchGauge,
  stitches,
  timesUnit,
  type Dimension,
  type Unit,
} from '../../formulas';
import { expected, of, Problem, same, type Derived, type Known } from './derived';
import { countOfWhat, noSquareRoot, numberOfWhat, pairBroken, takesAnother } from './sentences';

/** A function whose arguments and result have units of their own. */
export function declared(found: readonly Known[], entry: FunctionEntry): Known {
  found.forEach((argument, index) => {
    const { unit, label } = entry.arguments[Math.min(index, entry.arguments.length - 1)]!;
    if (unit !== 'any' && argument !== 'unknown') expected(argument, unit, entry.name, label);
  });
  return entry.gives === 'any' ? 'unknown' : { unit: entry.gives };
}

type Rule = (found: readonly Known[], entry: FunctionEntry) => Known;

const alike: Rule = (found, { name }) =>
  found.map((value) => of(value, name)).reduce((all, value) => same(all, value, 'taken together'));

/** Keeps the unit of the first argument; the others are as declared. */
const keeps: Rule = (found, entry) => {
  declared(found, entry);
  const first = of(found[0]!, entry.name);
  return first === 'unknown' ? first : { unit: first.unit, ...(first.literal ? { literal: {} } : {}) };
};

const isOneOf = (unit: Unit, units: readonly Unit[]): boolean => units.some((one) => sameUnit(one, unit));

/** What can stand where a count is wanted: stitches, rows, or a bare number. */
function count(found: Known, { name }: FunctionEntry, label: string): Known {
  const counted = of(found, name);
  if (counted === 'unknown' || isOneOf(counted.unit, [plain, stitches, rows])) return counted;
  throw new Problem(takesAnother(name, label, stitches, counted.unit));
}

/** Arguments, by their places, that are all stitches or all rows. */
function counts(found: readonly Known[], indices: readonly number[], entry: FunctionEntry): Known {
  return indices
    .map((index) => count(found[index]!, entry, labelOf(entry, index)))
    .reduce((all, one) => same(all, one, 'taken together'));
}

const labelOf = (entry: FunctionEntry, index: number): string =>
  entry.arguments[Math.min(index, entry.arguments.length - 1)]!.label;

/** A gauge in stitches or in rows. */
function gauge(found: Known, entry: FunctionEntry, index: number): Known {
  const given = of(found, entry.name);
  if (given === 'unknown' || isOneOf(given.unit, [stitchGauge, rowGauge])) return given;
  if (given.literal) throw new Problem(numberOfWhat(given.literal.value, stitchGauge));
  throw new Problem(takesAnother(entry.name, labelOf(entry, index), stitchGauge, given.unit));
}

const times = (found: Derived, other: Dimension, power = 1): Derived => ({
  unit: timesUnit(found.unit as Dimension, other, power),
});

function inPairs(found: readonly Known[], from: number, name: string, what: string): void {
  if ((found.length - from) % 2 === 0) return;
  throw new Problem(pairBroken(name, what));
}

const fitted: Rule = (found, entry) => {
  const wanted = keeps(found, entry);
  return wanted === 'unknown' ? wanted : count(wanted, entry, 'wanted');
};

/** Readings of a swatch: counts, all stitches or all rows, and the lengths they were counted over. */
const readings: Rule = (found, entry) => {
  const { name } = entry;
  inPairs(found, 0, name, 'a count and the length it was counted over');
  let counted: Known | undefined;
  for (let i = 0; i < found.length; i += 2) {
    const [read, over] = [of(found[i]!, name), found[i + 1]!];
    if (over !== 'unknown') expected(over, length, name, 'over');
    counted = counted === undefined ? read : same(counted, read, 'counted for one gauge');
  }
  if (counted === undefined || counted === 'unknown') return 'unknown';
  if (isOneOf(counted.unit, [stitches, rows])) return times(counted, length, -1);
  if (counted.literal) throw new Problem(countOfWhat(counted.literal.value));
  throw new Problem(takesAnother(name, 'count', stitches, counted.unit));
};

/** A gauge among the arguments, with the others as declared, and its uncertainty beside it. */
function sureGauge(found: readonly Known[], entry: FunctionEntry, index: number): Known {
  declared(found, entry);
  const given = gauge(found[index]!, entry, index);
  const u = of(found[index + 1]!, entry.name);
  if (given !== 'unknown' && u !== 'unknown') {
    expected(u, given.unit, entry.name, labelOf(entry, index + 1));
  }
  return given;
}

/** The functions with rules of their own for units. */
export const rules: Readonly<Record<string, Rule>> = {
  IF: (found, entry) => {
    declared(found, entry);
    return same(found[1]!, found[2]!, 'results of one IF');
  },
  MIN: alike,
  MAX: alike,
  SUM: alike,
  AVERAGE: alike,
  MOD: alike,
  ABS: keeps,
  INT: keeps,
  ROUND: keeps,
  ROUNDUP: keeps,
  ROUNDDOWN: keeps,
  SQRT: ([value], { name }) => {
    const square = of(value!, name);
    if (square === 'unknown') return square;
    if (square.literal) return { unit: plain, literal: {} };
    const halved = Object.entries(square.unit as Dimension).map(
      ([base, exponent]) => [base, exponent / 2] as const,
    );
    if (halved.every(([, exponent]) => Number.isInteger(exponent)))
      return { unit: Object.fromEntries(halved) };
    throw new Problem(noSquareRoot(square.unit));
  },
  FITREPEAT: fitted,
  FITREPEATS: (found, entry) => {
    inPairs(found, 3, entry.name, 'a multiple and what is added to it');
    return fitted(found, entry);
  },
  ROUNDCOUNT: fitted,
  GAUGE: readings,
  GAUGEUNCERTAINTY: readings,
  GAUGEFREEDOM: (found, entry) => {
    readings(found, entry);
    return { unit: plain };
  },
  GUESSGAUGE: (found, entry) => {
    declared(found, entry);
    return gauge(found[0]!, entry, 0);
  },
  MEASUREWHILEWORKING: (found, entry) => {
    const measured = declared(found, entry);
    same(gauge(found[1]!, entry, 1), gauge(found[2]!, entry, 2), 'taken together');
    return measured;
  },
  BUTTONHOLES: (found, entry) => {
    const placed = declared(found, entry);
    counts(found, [0, 1, 3], entry);
    return placed;
  },
  JOINS: (found, entry) => {
    counts(found, [...found.keys()], entry);
    return { unit: 'truth' };
  },
  WIDTHGIVEORTAKE: (found, entry) => {
    const given = sureGauge(found, entry, 1);
    const counted = count(found[0]!, entry, labelOf(entry, 0));
    if (given !== 'unknown' && counted !== 'unknown') {
      expected(counted, times(given, length).unit, entry.name, labelOf(entry, 0));
    }
    return { unit: length };
  },
  COUNTGIVEORTAKE: (found, entry) => {
    const given = sureGauge(found, entry, 2);
    return given === 'unknown' ? given : times(given, length);
  },
  GIVEORTAKE: (found, entry) => {
    inPairs(found, 0, entry.name, 'an uncertainty and its degrees of freedom');
    let all: Known | undefined;
    for (let i = 0; i < found.length; i += 2) {
      const [u, freedom] = [of(found[i]!, entry.name), found[i + 1]!];
      if (freedom !== 'unknown') expected(freedom, plain, entry.name, labelOf(entry, 1));
      all = all === undefined ? u : same(all, u, 'taken together');
    }
    return all ?? 'unknown';
  },
  NEXTCOUNTCHANCE: (found, entry) => {
    const chance = declared(found, entry);
    counts(found, [0, 1], entry);
    return chance;
  },
};
