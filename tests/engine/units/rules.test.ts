import { describe, expect, test } from 'vitest';
import {
  length,
  massPerArea,
  plain,
  rowGauge,
  rows,
  stitchGauge,
  stitches,
  strain,
  type Unit,
} from '../../../src/formulas/units';
import { unitOf } from './unit-of';

describe('functions with rules of their own for units', () => {
  test.each<[string, Unit]>([
    ['GUESSGAUGE(body_sts; MM(6); MM(7))', stitchGauge],
    ['GUESSGAUGE(body_rows; MM(6); MM(7))', rowGauge],
    ['MEASUREWHILEWORKING(bust; body_rows; body_rows)', length],
    ['FITREPEATS(bust * body_sts; "nearest"; "any"; 8; 3; 6; 1)', stitches],
    ['FITREPEATS(bust * body_rows; "up"; "odd"; 8; 3)', rows],
    ['FITREPEATS(77.2; "up"; "odd"; 8; 3)', plain],
    ['BUTTONHOLES(back_rows; 3; 5; ROWS(3))', 'text'],
    ['BUTTONHOLES(80; 3; 5; 3)', 'text'],
    ['JOINS(back_sts; front_sts; 20 + 27 + 20)', 'truth'],
    ['JOINS(back_rows; 48)', 'truth'],
    ['GAUGEUNCERTAINTY(back_sts; bust)', stitchGauge],
    ['GAUGEUNCERTAINTY(back_rows; bust; 12; bust)', rowGauge],
    ['GAUGEFREEDOM(back_rows; bust)', plain],
    ['WIDTHGIVEORTAKE(back_sts; body_sts; body_sts / 20; times)', length],
    ['WIDTHGIVEORTAKE(60; body_rows; 0; 1; CM(0.2))', length],
    ['COUNTGIVEORTAKE(bust; 0; body_sts; body_sts / 20; times)', stitches],
    ['COUNTGIVEORTAKE(bust; CM(1); body_rows; 0; times)', rows],
    ['GIVEORTAKE(bust; 4; CM(1); times)', length],
    ['GIVEORTAKE(body_sts; 4)', stitchGauge],
    ['NEXTCOUNTCHANCE(bust * body_rows; 1.5; times; 8; 3; "up")', plain],
    // What is as declared, where the unit is one that is not often met.
    ['STRAIN(bust; bust; bust; yarn)', strain],
    ['yarn / panel', massPerArea],
    ['HANGINGGROWTH(bust; STRAIN(bust; bust; bust; yarn); yarn / panel)', length],
    ['EDGEROWS(back_rows; 3; 4)', 'edge'],
    ['PICKUPEDGE(4; 2; "up"; neck; EDGESTITCHES(25); neck)', stitches],
    ['FABRIC(body_sts; body_rows; CM(2); CM(0.5); CM(2))', 'fabric'],
    ['COUNTEDROWS(body; 40; back_sts; 35)', 'stretch'],
  ])('%s', (formula, unit) => {
    expect(unitOf(formula)).toEqual(unit);
  });
});

describe('what such a function cannot take is told with what it takes', () => {
  test.each([
    ['GUESSGAUGE(back_sts; MM(6); MM(7))', 'GUESSGAUGE takes a stitch gauge for "gauge"'],
    ['GUESSGAUGE(14; MM(6); MM(7))', '14 of what? Write GAUGE(STS(14); CM(10)).'],
    ['GUESSGAUGE(body_sts; 6; MM(7))', '6 of what? Write CM(6) or IN(6).'],
    ['GUESSGAUGE(title; MM(6); MM(7))', 'GUESSGAUGE works on numbers; here stands text.'],
    [
      'MEASUREWHILEWORKING(bust; body_sts; body_rows)',
      'A stitch gauge and a row gauge cannot be taken together',
    ],
    [
      'MEASUREWHILEWORKING(bust; back_rows; body_rows)',
      'a stitch gauge for "gauge as worked"; here stands a number of rows',
    ],
    ['FITREPEATS(bust; "nearest"; "any"; 8; 3)', 'here stands a length: multiply it by a stitch gauge.'],
    ['FITREPEATS(back_sts; "nearest"; "any"; 8; 3; 6)', 'a multiple and what is added to it, in pairs'],
    [
      'FITREPEATS(back_sts; 1; "any"; 8; 3)',
      'FITREPEATS takes "nearest", "up" or "down"; here stands a plain number.',
    ],
    ['BUTTONHOLES(back_sts; ROWS(3); 5; 3)', 'cannot be taken together'],
    [
      'BUTTONHOLES(bust; 3; 5; 3)',
      'BUTTONHOLES takes a number of stitches for "length of the band"; here stands a length',
    ],
    ['BUTTONHOLES(back_sts; 3; back_sts; 3)', 'a plain number for "buttonholes"'],
    ['JOINS(back_sts; back_rows)', 'A number of stitches and a number of rows cannot be taken together.'],
    ['JOINS(back_sts; bust)', 'JOINS takes a number of stitches for "another side"; here stands a length'],
    ['JOINS(back_sts; times)', 'if the number is a number of stitches, write STS(…) round it'],
    ['GAUGEUNCERTAINTY(14; CM(10))', '14 of what? Write STS(14) or ROWS(14).'],
    ['GAUGEFREEDOM(back_sts; bust; back_rows; bust)', 'cannot be counted for one gauge'],
    [
      'GAUGEFREEDOM(back_sts; bust; back_sts)',
      'GAUGEFREEDOM takes a count and the length it was counted over, in pairs',
    ],
    [
      'WIDTHGIVEORTAKE(back_sts; body_rows; 0; 1)',
      'WIDTHGIVEORTAKE takes a number of rows for "count"; here stands a number of stitches',
    ],
    [
      'WIDTHGIVEORTAKE(back_sts; body_sts; body_rows; 1)',
      'WIDTHGIVEORTAKE takes a stitch gauge for "its uncertainty"; here stands a row gauge',
    ],
    ['WIDTHGIVEORTAKE(back_sts; body_sts; 0.05; 1)', '0.05 of what?'],
    ['WIDTHGIVEORTAKE(back_sts; bust; 0; 1)', 'a stitch gauge for "gauge"'],
    ['COUNTGIVEORTAKE(bust; 1; body_sts; 0; 1)', '1 of what? Write CM(1) or IN(1).'],
    ['COUNTGIVEORTAKE(bust; 0; body_sts; 0; back_sts)', 'a plain number for "degrees of freedom"'],
    ['GIVEORTAKE(bust; 4; back_sts; 4)', 'A length and a number of stitches cannot be taken together'],
    ['GIVEORTAKE(bust; 4; bust)', 'in pairs'],
    [
      'GIVEORTAKE(bust; bust)',
      'GIVEORTAKE takes a plain number for "degrees of freedom"; here stands a length',
    ],
    ['NEXTCOUNTCHANCE(back_sts; back_rows; 1; 8; 3; "up")', 'cannot be taken together'],
    ['HANGINGGROWTH(bust; 0.02; yarn / panel)', '0.02 of what? Here a strain is needed.'],
    [
      'HANGINGGROWTH(bust; bust / yarn; yarn)',
      'HANGINGGROWTH takes a weight per area for "weight of the fabric per area"; here stands a weight',
    ],
    [
      'PICKUPEDGE(4; 2; "up"; rib)',
      'PICKUPEDGE takes a stretch of an edge for "stretch of the edge"; here stands a stretch of a piece',
    ],
    ['neck + CM(1)', 'A stretch of an edge cannot be added'],
  ])('%s', (formula, sentence) => {
    expect(unitOf(formula)).toContain(sentence);
  });
});

test('a gauge whose unit is not known leaves unknown only what follows from it', () => {
  expect(unitOf('GUESSGAUGE(unknown; MM(6); MM(7))')).toBe('unknown');
  expect(unitOf('COUNTGIVEORTAKE(bust; 0; unknown; 0; 1)')).toBe('unknown');
  expect(unitOf('GAUGEUNCERTAINTY(unknown; bust)')).toBe('unknown');
  expect(unitOf('GIVEORTAKE(unknown; 1)')).toBe('unknown');
  expect(unitOf('WIDTHGIVEORTAKE(back_sts; unknown; unknown; 1)')).toEqual(length);
  expect(unitOf('GAUGEFREEDOM(unknown; bust)')).toEqual(plain);
  expect(unitOf('MEASUREWHILEWORKING(bust; unknown; body_rows)')).toEqual(length);
  expect(unitOf('NEXTCOUNTCHANCE(unknown; 1; 1; 8; 3; "up")')).toEqual(plain);
  expect(unitOf('JOINS(unknown; back_sts)')).toBe('truth');
});
