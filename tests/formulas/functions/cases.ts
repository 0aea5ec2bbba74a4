import { expect, test } from 'vitest';
import type { Cell } from '../../../src/notebook/document';
import type { Unit } from '../../../src/formulas/units';
import { formula, swatch } from '../../engine/notebook-of';
import { valueOf, worked } from '../../engine/worked';

type Value = number | string | boolean;

/** 14 stitches and 12 rows to 10 cm, and 16 stitches and 14 rows. */
export const swatches: readonly Cell[] = [swatch('body', 14, 12), swatch('sleeve_fabric', 16, 14)];

/** Formulas with the unit and the value of each. */
export function works(
  cases: readonly (readonly [formula: string, unit: Unit, value: Value])[],
  ...others: readonly Cell[]
): void {
  test.each(cases)('%s', async (text, unit, value) => {
    const { results } = await worked(...swatches, ...others, formula('here', text));
    const read = ['m', 'here', 'value'] as const;
    expect(results.error(...read)).toBeUndefined();
    expect(results.unit('here', 'value')).toEqual(unit);
    if (typeof value === 'number') expect(results.number(...read)).toBeCloseTo(value, 9);
    else expect(results.text(...read) ?? results.truth(...read)).toBe(value);
  });
}

/** Formulas that cannot be worked, with what has to stand in the sentence that says why. */
export function refuses(
  cases: readonly (readonly [formula: string, sentence: string])[],
  ...others: readonly Cell[]
): void {
  test.each(cases)('%s', async (text, sentence) => {
    expect(await valueOf(text, ...swatches, ...others)).toContain(sentence);
  });
}
