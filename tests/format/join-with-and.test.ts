import { expect, test } from 'vitest';
import { joinWithAnd } from '../../src/format/join-with-and';

test('words are said one after another, the last after "and"', () => {
  expect(joinWithAnd([])).toBe('');
  expect(joinWithAnd(['back'])).toBe('back');
  expect(joinWithAnd(['back', 'front'])).toBe('back and front');
  expect(joinWithAnd(['back', 'front', 'sleeve'])).toBe('back, front and sleeve');
});
