import { describe, expect, test } from 'vitest';
import { checkSlots } from '../slots';
import {
  CraftError,
  fillPattern,
  lengthParam,
  message,
  messageOf,
  numberParam,
  plainMessage,
  sentence,
  workPiece,
} from '../../src/craft';

describe('a pattern', () => {
  const filled = (pattern: string, params: Parameters<typeof message>[2]): string =>
    fillPattern(message('x', pattern, params), (param) => `<${JSON.stringify(param)}>`);

  test('has each slot filled, as often as it stands there', () => {
    expect(filled('{a}, {b} and {a}.', { a: 1, b: 'two' })).toBe('<1>, <"two"> and <1>.');
    expect(filled('Nothing to fill.', {})).toBe('Nothing to fill.');
  });

  test('chooses between one and other, with the number and other slots in them', () => {
    const pattern =
      '{n, plural, one {is # {what}} other {are # {what}s}}{m, plural, one { of one} other { of # {whole}}}.';
    expect(filled(pattern, { n: 1, m: 2, what: 'row', whole: 'rows' })).toBe(
      'is <1> <"row"> of <2> <"rows">.',
    );
    expect(filled(pattern, { n: 0, m: 1, what: 'row', whole: 'rows' })).toBe('are <0> <"row">s of one.');
  });

  test('is not looked for in what its slots are filled with', () => {
    const typed = '{b} # {b, plural, one {x} other {y}}';
    expect(fillPattern(message('x', '{a}{b}', { a: typed, b: 1 }), String)).toBe(`${typed}1`);
  });

  test('has the pattern of a message within it filled by that one’s own params', () => {
    const inner = message('inner', '{n} of {what}', { n: 2, what: 'two' });
    expect(filled('{n}: {inner}', { n: 1, inner })).toBe('<1>: <2> of <"two">');
  });
});

test('in plain words a message has lengths in cm and numbers with a point and a true minus', () => {
  const shown = message('all', '{length} {number} {typed} {at} {labelled} {text}', {
    length: { cm: -40.56789012 },
    number: -1234.5678901,
    typed: { typed: -0.1234567891 },
    at: { stretch: 2 },
    labelled: { stretch: 3, label: 'Cuff' },
    text: '4.5 cm',
  });
  expect(plainMessage(shown)).toBe('−40.5679 cm −1234.57 -0.1234567891 2 3 (Cuff) 4.5 cm');
});

test('what is no number to be shown in digits is told in words', () => {
  expect([2.5, -0, 1e13, NaN, undefined, 'five'].map(numberParam)).toEqual([
    2.5,
    -0,
    'more than a million million',
    'not a number',
    'missing',
    '"five"',
  ]);
  expect([2.5, NaN, 1e-9].map(lengthParam)).toEqual([{ cm: 2.5 }, 'not a number cm', 'next to nothing cm']);
});

test('what an error carries goes through JSON and says the same on the other side', () => {
  const fabric = { stitches: 1.4, rows: 1.6 };
  let refused: unknown;
  try {
    const stretches = [{ kind: 'leave', atStart: 5, atEnd: 5.5, fabric } as const];
    workPiece({ name: 'Back', worked: 'flat', start: 10, stretches });
  } catch (error) {
    refused = error;
  }
  const carried = JSON.parse(JSON.stringify(messageOf(refused as CraftError))) as CraftError;
  expect(Object.keys(carried)).toEqual(['code', 'pattern', 'params']);
  expect(plainMessage(carried)).toBe((refused as Error).message);
  expect(plainMessage(carried)).toBe(
    'Stretch 1: The stitches at the end of the row has to be a whole number; 5.5 lies between 5 and 6.',
  );
  expect(structuredClone(messageOf(refused as CraftError))).toEqual(carried);
});

test('a sentence that is whole already stays as it is', () => {
  expect(plainMessage(sentence('A {b} of 4.5 #.'))).toBe('A {b} of 4.5 #.');
});

test('slots without a param, and params without a slot, are found, inner messages too', () => {
  expect(() =>
    checkSlots(message('x', '{a} of {b, plural, one {#} other {{c}}}', { a: 1, b: 2, c: 3 })),
  ).not.toThrow();
  expect(() => checkSlots(message('x', '{a}', {}))).toThrow();
  expect(() => checkSlots(message('x', 'none', { a: 1 }))).toThrow();
  expect(() => checkSlots(message('x', '{a}', { a: message('y', '{b}', {}) }))).toThrow();
  expect(() => checkSlots(message('x', '{a, plural, one {x} other y}', { a: 1 }))).toThrow();
});
