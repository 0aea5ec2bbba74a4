import { expect, test } from 'vitest';
import { pageWord } from '../../src/notebook';

const knittingUS = { craft: 'knitting', terms: 'US' } as const;
const knittingUK = { craft: 'knitting', terms: 'UK' } as const;
const crochetUS = { craft: 'crochet', terms: 'US' } as const;
const crochetUK = { craft: 'crochet', terms: 'UK' } as const;

test('gauge is tension in the UK, in both crafts', () => {
  expect([crochetUS, knittingUS].map((of) => pageWord(of, 'gauge'))).toEqual(['gauge', 'gauge']);
  expect([crochetUK, knittingUK].map((of) => pageWord(of, 'gauge'))).toEqual(['tension', 'tension']);
});

test('knitting is bound off in the US and cast off in the UK; crochet is fastened off in both', () => {
  expect(pageWord(knittingUS, 'bound off')).toBe('bound off');
  expect(pageWord(knittingUK, 'bound off')).toBe('cast off');
  expect(pageWord(crochetUS, 'bound off')).toBe('fastened off');
  expect(pageWord(crochetUK, 'bind off')).toBe('fasten off');
});

test('a stitch skipped in the US is missed in the UK', () => {
  expect(pageWord(crochetUS, 'skip')).toBe('skip');
  expect(pageWord(crochetUK, 'skip')).toBe('miss');
});

test('crochet begins with a chain on a hook, knitting by casting on to needles', () => {
  expect(pageWord(crochetUK, 'cast on')).toBe('chain');
  expect(pageWord(crochetUK, 'hook or needles')).toBe('hook');
  expect(pageWord(knittingUS, 'cast on')).toBe('cast on');
  expect(pageWord(knittingUS, 'hook or needles')).toBe('needles');
});
