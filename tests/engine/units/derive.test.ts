import { describe, expect, test } from 'vitest';
import { plainMessage } from '../../../src/craft';
import {
  area,
  length,
  mass,
  plain,
  rowGauge,
  rows,
  stitchGauge,
  stitches,
  type Unit,
} from '../../../src/formulas/units';
import { isProblem } from '../../../src/engine/slot';
import { misfit } from '../../../src/engine/units/derive';
import { derived, unitOf } from './unit-of';

describe('the unit of a formula', () => {
  test.each<[string, Unit]>([
    ['bust + CM(10)', length],
    ['bust - finished_bust', length],
    ['-bust', length],
    ['+(bust)', length],
    ['bust * body_sts', stitches],
    ['body_rows * bust', rows],
    ['back_sts / body_sts', length],
    ['back_sts / bust', stitchGauge],
    ['back_rows / body_rows', length],
    ['bust / finished_bust', plain],
    ['bust * bust', area],
    ['bust ^ 2', area],
    ['bust ^ -1 * back_sts', stitchGauge],
    ['bust ^ 0', plain],
    ['SQRT(panel)', length],
    ['SQRT(bust * finished_bust)', length],
    ['SQRT(2)', plain],
    ['bust * 10%', length],
    ['10%', plain],
    ['times * 3', plain],
    ['bust / 2', length],
    ['2 ^ 0.5', plain],
    ['times ^ times', plain],
    ['title & " for " & 3', 'text'],
    ['bust > finished_bust', 'truth'],
    ['title = "x"', 'truth'],
    ['AND(wide; bust > 0)', 'truth'],
    ['NOT(wide)', 'truth'],
    ['TRUE()', 'truth'],
    ['PI() * bust', length],
    ['GRAMS(50) + yarn', mass],
    ['FINISHED(bust; CM(10))', length],
    ['FINISHEDBY(bust; 10%)', length],
    ['GAUGE(back_sts; bust)', stitchGauge],
    ['GAUGE(back_rows; CM(10); back_rows; IN(4))', rowGauge],
    ['FITREPEAT(bust * body_sts; 8; 3)', stitches],
    ['FITREPEAT(bust * body_rows; 4; 0; "up")', rows],
    ['FITREPEAT(77.2; 8; 3)', plain],
    ['ROUNDCOUNT(bust * body_rows; "even")', rows],
    ['MOD(back_sts; STS(8))', stitches],
    ['MAX(bust; finished_bust; CM(90))', length],
    ['SUM(back_sts; front_sts)', stitches],
    ['AVERAGE(bust; finished_bust)', length],
    ['ABS(bust - finished_bust)', length],
    ['INT(bust * body_sts)', stitches],
    ['ROUND(bust; 1)', length],
    ['IF(wide; bust; finished_bust)', length],
    ['IF(wide; title; "no")', 'text'],
    ['FABRIC(body_sts; body_rows)', 'fabric'],
    ['EVENROWS(back_rows; body)', 'stretch'],
    ['PIECE("flat"; back_sts; "held"; rib; rib)', 'piece'],
    ['PIECEAREA(back)', area],
    ['PIECELENGTH(back) * body_rows', rows],
  ])('of %s', (formula, unit) => {
    expect(unitOf(formula)).toEqual(unit);
  });
});

describe('a bare number beside stitches or rows is stitches or rows, because a count has only one unit', () => {
  test.each<[string, Unit]>([
    ['back_sts + 2', stitches],
    ['2 + back_rows', rows],
    ['back_sts - 2 * 3', stitches],
    ['back_sts > 40', 'truth'],
    ['MAX(back_sts; 40)', stitches],
    ['IF(wide; 4; back_sts)', stitches],
    ['MOD(back_sts; 8)', stitches],
    ['SUM(back_sts; -2)', stitches],
    ['EVENROWS(24; body)', 'stretch'],
    ['PIECE("flat"; 40; "held"; rib)', 'piece'],
    ['JOINARMHOLE(back_rows; 2; 3; 10; 2)', stitches],
  ])('%s', (formula, unit) => {
    expect(unitOf(formula)).toEqual(unit);
  });
});

describe('nothing is nothing in any unit', () => {
  test.each<[string, Unit]>([
    ['bust + 0', length],
    ['bust > 0', 'truth'],
    ['MAX(0; yarn)', mass],
    ['IF(wide; 0; bust)', length],
    ['FINISHED(bust; 0)', length],
    ['bust > -0', 'truth'],
  ])('%s', (formula, unit) => {
    expect(unitOf(formula)).toEqual(unit);
  });
});

describe('what does not go together is told with what would', () => {
  test.each([
    ['finished_bust + 10', '10 of what? Write CM(10) or IN(10).'],
    ['10 + finished_bust', '10 of what? Write CM(10) or IN(10).'],
    ['finished_bust - 2.5', '2.5 of what? Write CM(2.5) or IN(2.5).'],
    ['bust > 110', '110 of what? Write CM(110) or IN(110).'],
    ['yarn + 50', '50 of what? Write GRAMS(50).'],
    ['MAX(bust; 90)', '90 of what? Write CM(90) or IN(90).'],
    ['IF(wide; bust; 90)', '90 of what? Write CM(90) or IN(90).'],
    ['FINISHED(bust; 10)', '10 of what? Write CM(10) or IN(10).'],
    ['bust + 2 * 5', 'A number of what? Write CM(…) or IN(…).'],
    ['GAUGE(14; CM(10))', '14 of what? Write STS(14) or ROWS(14).'],
    ['GAUGE(back_sts; 10)', '10 of what? Write CM(10) or IN(10).'],
    ['body_sts + 2', '2 of what? Write GAUGE(STS(14); CM(10)).'],
    ['panel + 2', '2 of what? Here an area is needed.'],
    ['bust + 10%', 'if the number is a length, write CM(…) or IN(…) round it'],
    ['bust + times', 'A length and a plain number cannot be added; if the number is a length'],
    ['back_sts + times', 'if the number is a number of stitches, write STS(…) round it'],
    [
      'finished_bust + body_sts',
      'A length and a stitch gauge cannot be added; multiplied, they give a number of stitches.',
    ],
    [
      'back_sts - bust',
      'A number of stitches and a length cannot be subtracted from each other; multiply the length by a stitch gauge first',
    ],
    ['back_sts + back_rows', 'A number of stitches and a number of rows cannot be added.'],
    ['back_sts = back_rows', 'cannot be compared'],
    ['SUM(bust; back_sts)', 'cannot be taken together'],
    ['IF(wide; bust; back_sts)', 'cannot both be results of one IF'],
    [
      'IF(bust; back_sts; back_sts)',
      'IF asks whether something holds, such as bust > CM(110); here stands a length.',
    ],
    ['IF(1; back_sts; back_sts)', 'IF asks whether something holds'],
    ['AND(wide; back_sts)', 'AND asks whether something holds'],
    ['GAUGE(back_sts; CM(10); back_rows; CM(10))', 'cannot be counted for one gauge'],
    ['GAUGE(bust; CM(10))', 'GAUGE takes a number of stitches for "count"; here stands a length'],
    ['GAUGE(back_sts; CM(10); back_sts)', 'in pairs'],
    ['bust + title', 'Text cannot be added.'],
    ['title * 2', 'Text cannot be multiplied.'],
    ['bust / wide', 'Yes or no cannot be divided.'],
    ['back + CM(1)', 'A piece cannot be added: take one of its results, such as its length.'],
    ['body * bust', 'A fabric cannot be multiplied: take one of its gauges.'],
    ['-title', 'Text cannot be given a sign.'],
    ['bust%', '% stands after a plain number; here it is after a length.'],
    ['title%', '% stands after a plain number'],
    ['back & "x"', 'A piece cannot be joined to text'],
    ['MAX(title; title)', 'MAX works on numbers; here stands text.'],
    ['ABS(wide)', 'ABS works on numbers'],
    ['SQRT(bust)', 'The square root of a length is nothing the trade measures.'],
    ['bust ^ 0.5', 'A length cannot have the power 0.5: a value with a unit takes a whole one, such as ^2.'],
    ['bust ^ times', 'A length cannot have the power'],
    ['times ^ bust', 'A length cannot be used as a power.'],
    ['CM(bust)', 'CM takes a plain number for "number"; here stands a length.'],
    ['ROUND(bust; bust)', 'ROUND takes a plain number for "places"; here stands a length.'],
    ['FITREPEAT(bust; 8; 3)', 'here stands a length: multiply it by a stitch gauge.'],
    ['ROUNDCOUNT(yarn)', 'here stands a weight'],
    [
      'FITREPEAT(back_sts; 8; 3; 2)',
      'FITREPEAT takes "nearest", "up" or "down"; here stands a plain number.',
    ],
    ['PIECELENGTH(body)', 'PIECELENGTH takes a piece for "piece"; here stands a fabric.'],
    [
      'PIECE("flat"; back_sts; "held"; rib; body)',
      'PIECE takes a stretch of a piece for "stretch"; here stands a fabric.',
    ],
    [
      'FABRIC(body_rows; body_sts)',
      'FABRIC takes a stitch gauge for "stitch gauge"; here stands a row gauge.',
    ],
  ])('%s', (formula, sentence) => {
    expect(unitOf(formula)).toContain(sentence);
  });
});

describe('a unit that is not known', () => {
  test('makes that of the formula unknown', () => {
    expect(unitOf('unknown + bust')).toBe('unknown');
    expect(unitOf('unknown * 2')).toBe('unknown');
    expect(unitOf('MAX(unknown; bust)')).toBe('unknown');
  });
  test('leaves known what does not depend on it', () => {
    expect(unitOf('unknown > bust')).toBe('truth');
    expect(unitOf('CM(unknown)')).toEqual(length);
    expect(unitOf('unknown & "x"')).toBe('text');
  });
  test('does not hide a problem beside it', () => {
    expect(unitOf('unknown + (bust + 10)')).toContain('10 of what?');
  });
});

describe('a result in a place with a unit of its own', () => {
  const fits = (formula: string, wanted: Unit): string | undefined => {
    const found = derived(formula);
    if (found === 'unknown' || isProblem(found)) throw new Error('not derived');
    const wrong = misfit(found, wanted);
    return wrong && plainMessage(wrong);
  };
  test('fits where it has that unit, or is a bare count, or nothing', () => {
    expect(fits('bust * 2', length)).toBeUndefined();
    expect(fits('24', rows)).toBeUndefined();
    expect(fits('FITREPEAT(77; 8; 3)', stitches)).toBeUndefined();
    expect(fits('0', mass)).toBeUndefined();
  });
  test('is told what it should be where it does not', () => {
    expect(fits('bust * body_sts', length)).toBe(
      'This should be a length, but the formula gives a number of stitches: divide it by a stitch gauge.',
    );
    expect(fits('bust', stitches)).toBe(
      'This should be a number of stitches, but the formula gives a length: multiply it by a stitch gauge.',
    );
    expect(fits('10', length)).toBe('10 of what? Write CM(10) or IN(10).');
    expect(fits('times', stitches)).toBe(
      'This should be a number of stitches, but the formula gives a plain number.',
    );
    expect(fits('title', length)).toBe('This should be a length, but the formula gives text.');
  });
});
