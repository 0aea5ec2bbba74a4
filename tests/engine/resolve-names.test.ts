import { describe, expect, test } from 'vitest';
import { linked, reading } from '../../src/engine/resolve-names';
import { Names } from '../../src/engine/names';
import { isProblem } from '../../src/engine/slot';

const names = new Names();
['bust', 'sleeve1', 'größe', 'true'].forEach((name, row) => names.add(name, row));

function link(formula: string) {
  const read = reading(formula);
  return isProblem(read) ? read : linked(read, names);
}

describe('names become absolute references', () => {
  test.each([
    ['bust + CM(10)', '$A$1+CM(10)', [0]],
    ['BUST * sleeve1', '$A$1*$A$2', [0, 1]],
    ['sleeve1 / bust - bust', '$A$2/$A$1-$A$1', [1, 0]],
    ['Größe', '$A$3', [2]],
    ['true', '$A$4', [3]],
    ['IF ( bust > 0 ; 1 ; 2 )', 'IF($A$1>0;1;2)', [0]],
  ])('%s', (formula, text, uses) => {
    expect(link(formula)).toEqual({ text, uses });
  });
});

describe('numbers and texts become what HyperFormula reads', () => {
  test.each([
    ['.5', '0.5'],
    ['5.', '5'],
    ['1E5', '100000'],
    ['1e30', '1e+30'],
    ['"plain"', '"plain"'],
    ['"a ""b"""', 'EW.SPELT("97 32 34 98 34")'],
    ['"\\"', 'EW.SPELT("92")'],
  ])('%s', (formula, text) => {
    expect(link(formula)).toEqual({ text, uses: [] });
  });
});

test('a name that stands for nothing is told where it stands', () => {
  expect(link('bust + hat')).toMatchObject({ start: 7, end: 10 });
});
