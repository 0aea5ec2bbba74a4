import { describe, expect, it } from 'vitest';
import { charts } from '../../src/craft';
import { usualSettings, type Cell, type Settings, type Size } from '../../src/notebook';
import { questionsAbout } from '../../src/notebook/measure-questions';
import { chosen, measure, value } from '../../src/notebook/cell-builders';

const sizes: Size[] = [
  { id: 's', label: 'S' },
  { id: 'm', label: 'M' },
  { id: 'l', label: 'L' },
];
const ask = (cell: Cell, settings: Settings = usualSettings, of: readonly Size[] = sizes): string[] =>
  questionsAbout(cell, of, settings).map(
    ({ message, sizes }) => `${sizes.length > 0 ? `${sizes.join(', ')}: ` : ''}${message}`,
  );
const bust = (cm: number | null): Cell => measure('Bust', 'length', { value: cm });

describe('a body measurement that no chart comes near', () => {
  it.each([
    [9.4, 'Is the bust 9.4 cm? Measurements here are in cm, and charts have 40.6 to 157.5 cm.'],
    [3, 'Is the bust 3.0 cm? Measurements here are in cm, and charts have 40.6 to 157.5 cm.'],
    [900, 'Is the bust 900.0 cm? Measurements here are in cm, and charts have 40.6 to 157.5 cm.'],
  ])('a bust of %d cm is asked about', (cm, question) => {
    expect(ask(bust(cm))).toEqual([question]);
  });

  it('between half of the smallest and one and a half of the largest nothing is asked', () => {
    // The charts print a bust of 16 in for a baby and of 62 in for a woman.
    expect([charts.baby.measures.bust[0], charts.woman.measures.bust.at(-1)]).toEqual([16, [60, 62]]);
    for (const inches of [8.01, 16, 37, 62, 92.99]) expect(ask(bust(inches * 2.54))).toEqual([]);
    for (const inches of [7.99, 93.01]) expect(ask(bust(inches * 2.54))).toHaveLength(1);
    expect(ask(bust(null))).toEqual([]);
  });

  it('speaks inches where lengths are typed in inches: 94 cm typed as 94 in', () => {
    expect(ask(bust(94 * 2.54), { ...usualSettings, length: 'in' })).toEqual([
      'Is the bust 94 in? Measurements here are in inches, and charts have 16 to 62 in.',
    ]);
  });

  it('is asked for the sizes that have it, and by the chart a size follows', () => {
    const each: Cell = measure('Upper arm', 'length', { each: { s: 28, m: 2.8, l: 31 } });
    expect(ask(each)).toEqual([
      'M: Is the upper arm 2.8 cm? Measurements here are in cm, and charts have 14.0 to 49.5 cm.',
    ]);
    const child: Size = { id: 's', label: 'Age 6', chart: { name: 'child', size: '6' } };
    expect(ask(bust(130), usualSettings, [child])).toHaveLength(1);
    expect(ask(bust(130), usualSettings, sizes)).toEqual([]);
  });

  it('is known by its name, in a garment’s ease too; what is no measure of a chart is not asked about', () => {
    const ease: Cell = {
      kind: 'ease',
      id: 'finished-bust',
      label: 'My finished bust',
      name: 'finished_bust',
      by: 'length',
      body: value(9.4),
      ease: value(10),
    };
    expect(ask(ease)).toHaveLength(1);
    expect(ask({ ...ease, body: { formula: 'bust' } })).toEqual([]);
    expect(ask(measure('Length of the cuff', 'length', value(3)))).toEqual([]);
    expect(ask(measure('Bust', 'stitches', value(3)))).toEqual([]);
    expect(ask(chosen('Bust', 'length', value(3)))).toEqual([]);
  });

  it.each(['My waist', 'Waist measurement', 'Waist girth', 'Waist circumference', 'Waist size'])(
    'is known as “%s” too',
    (label) =>
      expect(ask(measure(label, 'length', value(7)))).toEqual([expect.stringMatching(/^Is the waist /)]),
  );

  it('is spoken of as one or as several', () => {
    expect(ask(measure('Hips', 'length', value(9)))).toEqual([
      expect.stringMatching(/^Are the hips 9\.0 cm\?/),
    ]);
  });

  it('is asked where a size has its own instead of its chart’s; what the chart itself has is not', () => {
    const of = (own: Record<string, number>): Cell =>
      measure('Round me', 'length', { chart: 'bust', point: 'middle', own });
    expect(ask(of({ m: 9.4 }))).toEqual([expect.stringMatching(/^M: Is the bust 9\.4 cm\?/)]);
    expect(ask(of({}))).toEqual([]);
  });
});
