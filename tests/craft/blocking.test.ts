import { expect, test } from 'vitest';
import { measureWhileWorking } from '../../src/craft/blocking';

test('where blocking turns 12.5 rows to 10 cm into 12, 40 cm measure 38.4 while they are worked', () => {
  expect(measureWhileWorking({ length: 40, asWorked: 1.25, blocked: 1.2 })).toBeCloseTo(38.4, 12);
});

test('the rows are the same before and after: length × gauge', () => {
  const working = measureWhileWorking({ length: 57, asWorked: 2.1, blocked: 1.9 });
  expect(working * 2.1).toBeCloseTo(57 * 1.9, 12);
});

test('a fabric that does not change measures what it will', () => {
  expect(measureWhileWorking({ length: 40, asWorked: 1.2, blocked: 1.2 })).toBe(40);
});
