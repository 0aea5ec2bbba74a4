import { expect, test } from 'vitest';
import { listed } from '../../src/format/join-with-and';

test('words are said one after another, the last after "and"', () => {
  expect(listed([])).toBe('');
  expect(listed(['back'])).toBe('back');
  expect(listed(['back', 'front'])).toBe('back and front');
  expect(listed(['back', 'front', 'sleeve'])).toBe('back, front and sleeve');
});
