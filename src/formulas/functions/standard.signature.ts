import { plain } from '../units';
import { given, optional, type FunctionSignature } from './function-entry';

const value = given('value', 'any');
/** Functions of OpenFormula (OASIS OpenDocument 1.3, part 4). */
export const standard = [
  {
    name: 'IF',
    arguments: [given('condition', 'truth'), given('then', 'any'), given('else', 'any')],
    gives: 'any',
  },
  {
    name: 'AND',
    arguments: [given('condition', 'truth')],
    repeats: true,
    gives: 'truth',
  },
  {
    name: 'OR',
    arguments: [given('condition', 'truth')],
    repeats: true,
    gives: 'truth',
  },
  {
    name: 'NOT',
    arguments: [given('condition', 'truth')],
    gives: 'truth',
  },
  {
    name: 'MIN',
    arguments: [value],
    repeats: true,
    gives: 'any',
  },
  {
    name: 'MAX',
    arguments: [value],
    repeats: true,
    gives: 'any',
  },
  {
    name: 'SUM',
    arguments: [value],
    repeats: true,
    gives: 'any',
  },
  {
    name: 'AVERAGE',
    arguments: [value],
    repeats: true,
    gives: 'any',
  },
  {
    name: 'ABS',
    arguments: [value],
    gives: 'any',
  },
  {
    name: 'INT',
    arguments: [value],
    gives: 'any',
  },
  {
    name: 'ROUND',
    arguments: [value, optional('places', plain)],
    gives: 'any',
  },
  {
    name: 'ROUNDUP',
    arguments: [value, optional('places', plain)],
    gives: 'any',
  },
  {
    name: 'ROUNDDOWN',
    arguments: [value, optional('places', plain)],
    gives: 'any',
  },
  {
    name: 'MOD',
    arguments: [given('number', 'any'), given('divisor', 'any')],
    gives: 'any',
  },
  {
    name: 'SQRT',
    arguments: [given('value', 'any')],
    gives: 'any',
  },
  { name: 'TRUE', arguments: [], gives: 'truth' },
  { name: 'FALSE', arguments: [], gives: 'truth' },
  {
    name: 'PI',
    arguments: [],
    gives: plain,
  },
] as const satisfies readonly FunctionSignature[];
