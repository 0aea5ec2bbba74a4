import type { Message } from '../../craft';
import {
  functionNamed,
  isDimension,
  plain,
  sameUnit,
  timesUnit,
  type Dimension,
  type Unit,
} from '../../formulas';
import { own } from '../own-functions';
import { fits, number, Problem, same, type Derivation, type Derived, type Known } from './derived';
import { declared, rules } from './rules';
import {
  cannotBe,
  givesAnother,
  noFunction,
  notThatPower,
  numberOfWhat,
  percentOf,
  type Together,
} from './sentences';
import type { BinaryOperator, Syntax } from './syntax';

export type { Derivation, Derived } from './derived';

/**
 * Derives the unit of a formula.
 *
 * @param tree the syntax tree
 * @param unitOf the unit of what stands in a row; null where it is not known
 * @example derive(treeOf('$A$1*$A$2'), (row) => [length, stitchGauge][row]) // { unit: { stitch: 1 } }
 * @example derive(treeOf('$A$1+10'), () => length) // { problem: '10 of what? Write CM(10) or IN(10).' }
 */
export function derive(tree: Syntax, unitOf: (row: number) => Unit | null): Derivation {
  try {
    return new Reader(unitOf).read(tree);
  } catch (problem) {
    if (problem instanceof Problem) return { problem: problem.message };
    throw problem;
  }
}

/**
 * Whether a result can stand where a unit is wanted: undefined, or why not.
 *
 * @param wanted the unit of the place
 */
export function misfit(found: Derived, wanted: Unit): Message | undefined {
  if (fits(found, wanted)) return undefined;
  if (found.literal) return numberOfWhat(found.literal.value, wanted);
  return givesAnother(wanted, found.unit);
}

const comparisons = new Set<BinaryOperator>([
  'EQUALS_OP',
  'NOT_EQUAL_OP',
  'GREATER_THAN_OP',
  'LESS_THAN_OP',
  'GREATER_THAN_OR_EQUAL_OP',
  'LESS_THAN_OR_EQUAL_OP',
]);

class Reader {
  constructor(readonly unitOf: (row: number) => Unit | null) {}

  read(tree: Syntax): Known {
    switch (tree.type) {
      case 'NUMBER':
        return { unit: plain, literal: { value: tree.value } };
      case 'STRING':
        return { unit: 'text' };
      case 'CELL_REFERENCE': {
        const unit = this.unitOf(tree.reference.row);
        return unit === null ? 'unknown' : { unit };
      }
      case 'PARENTHESES':
        return this.read(tree.expression);
      case 'PLUS_UNARY_OP':
      case 'MINUS_UNARY_OP':
        return this.#signed(tree.value, tree.type === 'MINUS_UNARY_OP' ? -1 : 1);
      case 'PERCENT_OP':
        return this.#percent(tree.value);
      case 'FUNCTION_CALL':
        return this.#call(tree.procedureName, tree.args);
      default:
        return this.#binary(tree.type, this.read(tree.left), this.read(tree.right), tree.right);
    }
  }

  #signed(of: Syntax, sign: number): Known {
    const found = number(this.read(of), (unit) => cannotBe('given a sign', unit));
    if (found === 'unknown' || found.literal?.value === undefined) return found;
    return { unit: found.unit, literal: { value: sign * found.literal.value } };
  }

  #percent(of: Syntax): Known {
    const found = number(this.read(of), percentOf);
    if (found !== 'unknown' && !sameUnit(found.unit, plain)) throw new Problem(percentOf(found.unit));
    // 10 % of what is a question that no unit of length or count answers, so this is no literal any more.
    return { unit: plain };
  }

  #binary(type: BinaryOperator, left: Known, right: Known, exponent: Syntax): Known {
    switch (type) {
      case 'PLUS_OP':
        return sum(left, right, 'added', 'added');
      case 'MINUS_OP':
        return sum(left, right, 'subtracted', 'subtracted from each other');
      case 'TIMES_OP':
        return product(left, right, 1);
      case 'DIV_OP':
        return product(left, right, -1);
      case 'POWER_OP':
        return power(left, right, exponent);
      case 'CONCATENATE_OP':
        for (const side of [left, right]) {
          if (side === 'unknown' || isDimension(side.unit) || side.unit === 'text' || side.unit === 'truth')
            continue;
          throw new Problem(cannotBe('joined to text', side.unit));
        }
        return { unit: 'text' };
      default:
        if (comparisons.has(type)) same(left, right, 'compared');
        return { unit: 'truth' };
    }
  }

  #call(name: string, trees: readonly Syntax[]): Known {
    if (name === own.spelt) return { unit: 'text' };
    const entry = functionNamed(name);
    if (!entry) throw new Problem(noFunction(name));
    const found = trees.map((tree) => this.read(tree));
    const rule = rules[entry.name];
    return rule ? rule(found, entry) : declared(found, entry);
  }
}

function sum(a: Known, b: Known, done: string, together: Together): Known {
  const [left, right] = [a, b].map((side) => number(side, (unit) => cannotBe(done, unit)));
  return same(left!, right!, together);
}

function product(a: Known, b: Known, sign: 1 | -1): Known {
  for (const side of [a, b]) {
    if (side !== 'unknown' && !isDimension(side.unit))
      throw new Problem(cannotBe(sign === 1 ? 'multiplied' : 'divided', side.unit));
  }
  if (a === 'unknown' || b === 'unknown') return 'unknown';
  const unit = timesUnit(a.unit as Dimension, b.unit as Dimension, sign);
  return { unit, ...(a.literal && b.literal ? { literal: {} } : {}) };
}

function power(base: Known, exponent: Known, written: Syntax): Known {
  const raised = number(base, (unit) => cannotBe('raised to a power', unit));
  const by = number(exponent, (unit) => cannotBe('used as a power', unit));
  if (raised === 'unknown' || by === 'unknown') return 'unknown';
  if (!sameUnit(by.unit, plain)) throw new Problem(cannotBe('used as a power', by.unit));
  if (sameUnit(raised.unit, plain))
    return { unit: plain, ...(raised.literal && by.literal ? { literal: {} } : {}) };
  const times = by.literal?.value;
  if (times === undefined || !Number.isInteger(times) || Math.abs(times) > 9) {
    throw new Problem(notThatPower(raised.unit, written));
  }
  return { unit: timesUnit(plain, raised.unit as Dimension, times) };
}
