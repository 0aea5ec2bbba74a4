import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { inSteps } from '../../src/formulas/steps';

test('equal steps in a row are written once, and steps that repeat as a group in brackets', () => {
  expect(inSteps(['3', '4', '4', '4', '2'])).toBe('3, 4 × 3, 2');
  expect(inSteps(['3', '4', '5', '4', '5', '2'])).toBe('3, (4, 5) × 2, 2');
  expect(inSteps(['4', '4', '5', '4', '4', '5'])).toBe('(4 × 2, 5) × 2');
  expect(inSteps(['7'])).toBe('7');
  expect(inSteps([])).toBe('');
});

/** Reads steps back as a person does. */
function signalsOf(text: string): string[] {
  const steps: string[] = [];
  for (const [, group, single, times] of text.matchAll(/(?:\(([^)]*)\)|(\d+))(?: × (\d+))?/g)) {
    for (let i = 0; i < Number(times ?? 1); i++) steps.push(...(group ? signalsOf(group) : [single!]));
  }
  return steps;
}

test('whoever follows the written steps works exactly those that were meant', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 3, max: 5 }).map(String), { maxLength: 60 }), (steps) => {
      expect(signalsOf(inSteps(steps))).toEqual(steps);
    }),
  );
});

test('more than a thousand steps are no instruction', () => {
  const all = Array.from({ length: 1001 }, (_, at) => String(at));
  expect(inSteps(all.slice(1))).toContain('999, 1000');
  expect(() => inSteps(all)).toThrow('work it in sections');
});
