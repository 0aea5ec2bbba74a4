import { expect, it } from 'vitest';
import { oldNames } from './old-words.js';

it('no identifier and no file name has a word of the old dialect', () => {
  expect(oldNames()).toEqual([]);
});
