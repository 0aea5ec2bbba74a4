import { expect, test } from 'vitest';
import { CraftError } from '../../src/craft/craft-error';

test('a refusal is an error with a name, a code and a sentence', () => {
  const refusal = new CraftError('nothing-left', 'The ease leaves nothing.');
  expect(refusal).toBeInstanceOf(Error);
  expect(refusal.name).toBe('CraftError');
  expect(refusal.code).toBe('nothing-left');
  expect(String(refusal)).toBe('CraftError: The ease leaves nothing.');
});
