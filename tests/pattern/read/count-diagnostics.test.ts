import { expect, it } from 'vitest';
import { countsApart, noMultiple } from '../../../src/pattern/read/count-diagnostics';

const sizes = ['S', 'M', 'L', 'XL'];
const sentence = (stated: number, count: number) => `it is ${count}, not ${stated}`;
const range = { from: 0, to: 0 } as never;

it('counts that agree, or that one side does not say, are no contradiction', () => {
  expect(countsApart(sizes, [40, 42, null, 46], [40, 42, 44, null], sentence)).toBeUndefined();
});

it('one size off by one among sizes that agree is probably a misprint', () => {
  expect(countsApart(sizes, [40, 42, 44, 46], [40, 43, 44, 46], sentence)).toBe(
    'In size M it is 43, not 42. The other sizes agree, so a number here or above is off by one: it is probably a misprint. Correct it; from here it goes on with the pattern’s count.',
  );
});

it('where most sizes differ, the first three are told and the others counted', () => {
  expect(countsApart(sizes, [40, 42, 44, 46], [50, 52, 54, 56], sentence)).toBe(
    'In size S it is 50, not 40; in size M it is 52, not 42; in size L it is 54, not 44; and so in 1 more size. Correct the count, or the line; from here it goes on with the pattern’s count.',
  );
});

it('84 is no multiple of 8 plus 3: 83 and 91 are', () => {
  expect(noMultiple(['S', 'M'], [75, 84], { multiple: 8, plus: 3, range })).toBe(
    'Not a multiple of 8 plus 3: 84 in size M (83 or 91 would be). Correct the count or the multiple.',
  );
  expect(noMultiple(['S', 'M'], [75, null], { multiple: 8, plus: 3, range })).toBeUndefined();
});
