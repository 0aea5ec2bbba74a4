import type { Fact, Statement } from '../verify';
import { asRead, type Expected, type ExpectedFact } from './expected';

/** A statement that is otherwise than it should be, or one that is missing; `statement` where it stands. */
export interface Mismatch {
  readonly statement?: Statement;
  /** The place of the size it is wrong in; undefined where it is wrong in all. */
  readonly size?: number;
  readonly problem: string;
}

/** What statements come to against what they should be. */
export interface Matched {
  readonly wrong: readonly Mismatch[];
  /** Statements of which nothing is known: they can be neither right nor wrong. */
  readonly unknown: readonly Statement[];
}

/** Rows of a table may be added of which nothing is expected; sentences that are read are all expected. */
const open = new Set(['measurement']);

/**
 * Compares statements with what is expected, one for one and in their order.
 *
 * @param sizes how many a list by size has
 */
export function matched(
  statements: readonly Statement[],
  expected: readonly Expected[],
  sizes: number,
): Matched {
  const wrong: Mismatch[] = [];
  const left = new Set(expected);
  const unmatched: Statement[] = [];
  const found: { statement: Statement; as: Expected }[] = [];
  for (const statement of statements) {
    const as = [...left].find((one) => isSame(one, statement)) ?? anyTimes(expected, statement);
    if (!as) {
      unmatched.push(statement);
      continue;
    }
    if (!as.anyTimes) left.delete(as);
    found.push({ statement, as });
    wrong.push(...factsWrong(statement, as, sizes));
  }
  const unknown: Statement[] = [];
  for (const statement of unmatched) {
    const twice = expected.some((one) => isSame(one, statement));
    // Under another name it may be the one that is missing.
    const meant =
      twice || open.has(statement.name) ? undefined : [...left].find(({ name }) => name === statement.name);
    if (meant) left.delete(meant);
    if (!twice && open.has(statement.name)) unknown.push(statement);
    else {
      wrong.push({
        statement,
        problem: twice
          ? `${called(statement)} is here twice.`
          : `It speaks of ${meant ? `“${statement.of}”, and the notebook of “${meant.of}”` : called(statement, true)}${meant ? '' : ', and the notebook has nothing of the kind'}.`,
      });
    }
  }
  for (const one of left) {
    if (!one.anyTimes) wrong.push({ problem: `${called(one)} is missing, or cannot be read.` });
  }
  return { wrong: [...wrong, ...outOfOrder(found, expected)], unknown };
}

const isSame = (one: Pick<Expected, 'name' | 'of'>, other: Pick<Statement, 'name' | 'of'>): boolean =>
  one.name === other.name && one.of === asRead(other.of);

const anyTimes = (expected: readonly Expected[], statement: Statement): Expected | undefined =>
  expected.find((one) => one.anyTimes && isSame(one, statement));

function called({ name, of }: Pick<Expected, 'name' | 'of'>, within = false): string {
  const what = within ? name : name.charAt(0).toUpperCase() + name.slice(1);
  return of === '' ? what : `${what} “${of}”`;
}

function outOfOrder(
  found: readonly { statement: Statement; as: Expected }[],
  expected: readonly Expected[],
): Mismatch[] {
  const order = found.filter(({ as }) => !as.anyTimes).map(({ as }) => expected.indexOf(as));
  const at = order.findIndex((sizeIndex, index) => index > 0 && sizeIndex < order[index - 1]!);
  if (at < 0) return [];
  const { statement } = found.filter(({ as }) => !as.anyTimes)[at]!;
  return [{ statement, problem: `${called(statement)} stands in another order than in the notebook.` }];
}

function factsWrong(statement: Statement, { facts }: Expected, sizes: number): Mismatch[] {
  return Object.entries(facts).flatMap(([name, meant]): Mismatch[] => {
    const stated = statement.facts[name];
    const what = `${called(statement)}: ${name}`;
    if (stated === undefined) return [{ statement, problem: `${what} is not said.` }];
    return factWrong(stated, meant, sizes).map(({ size, problem }) => ({
      statement,
      ...(size === undefined ? {} : { size }),
      problem: `${what} ${problem}`,
    }));
  });
}

function factWrong(stated: Fact, meant: ExpectedFact, sizes: number): { size?: number; problem: string }[] {
  if (typeof meant === 'string' || typeof stated === 'string') {
    if (typeof stated === 'string' && typeof meant === 'string' && asRead(stated) === meant) return [];
    return [{ problem: `is “${String(stated)}”, and “${String(meant)}” in the notebook.` }];
  }
  const { values, within } = meant;
  if (values.length === 0 || stated.length === 0) {
    return values.length === stated.length
      ? []
      : [{ problem: `is there where the notebook has none, or the other way.` }];
  }
  if (stated.length !== 1 && stated.length !== sizes) {
    return [{ problem: `has ${stated.length} numbers for ${sizes} ${sizes === 1 ? 'size' : 'sizes'}.` }];
  }
  const wrong: { size?: number; problem: string }[] = [];
  const many = Math.max(values.length, stated.length);
  for (let size = 0; size < many; size++) {
    const [a, b] = [
      stated.length === 1 ? stated[0]! : stated[size]!,
      values.length === 1 ? values[0]! : values[size]!,
    ];
    if (a === b || (a !== null && b !== null && Math.abs(a - b) <= within + 1e-6)) continue;
    const shown = (value: number | null): string =>
      value === null ? 'none' : String(Math.round(value * 1000) / 1000);
    wrong.push({
      ...(many === 1 ? {} : { size }),
      problem: `is ${shown(a)}, and ${shown(b)} in the notebook.`,
    });
  }
  return wrong;
}
