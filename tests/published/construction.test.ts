import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkExample, computationFor } from './check-example';
import type { Example } from './check-example';
import { examplesOf } from './check-file';
import { constructionComputations } from './construction-computations';

const examples = examplesOf(readFileSync(new URL('construction.json', import.meta.url), 'utf8'));
const check = (example: Example) => checkExample(example, constructionComputations);

/** What nothing computes yet, most of it shapes of whole garments. Whoever builds one takes it off this list. */
const notYet = [
  'raglan-top-down-cardigan-sections',
  'raglan-top-down-neck-at-same-time',
  'raglan-depth-of-neck',
  'raglan-thirds',
  'yoke-placement',
  'cap-knit-3-sizes',
  'modified-drop-4-sizes',
  'short-row-shoulders-3-sizes',
  'stepped-to-short-rows-8-sizes',
  'round-neck-32',
  'crew-neck-15',
  'v-neck-halves',
  'v-vest-5-sizes',
  'waist-58-rounds',
  'waist-between-markers-7-sizes',
  'waist-9-times-5-sizes',
  'heel-turn-32',
  'heel-turn-3-sizes',
  'heel-63-to-33',
  'square-heel-56',
  'mitten-3-sizes',
  'hat-crown-88-rib',
  'hat-diameter',
  'crescent-61',
  'raglan-crochet-3-sizes',
  'yards-by-weight',
  'yards-worsted-12-sizes',
];
const computed = examples.filter(({ id }) => !notYet.includes(id));

describe('published constructions', () => {
  for (const example of computed) {
    test(`${example.topic}: ${example.id} (${example.source})`, () => {
      expect(check(example)).toEqual({ verdict: 'holds', why: '' });
    });
  }

  test('those that are not computed yet are the ones listed here', () => {
    const found = examples.filter((example) => check(example).verdict === 'not yet');
    expect(found.map(({ id }) => id)).toEqual(notYet);
  });
});

describe('the check itself', () => {
  for (const example of computed) {
    test(`no figure of ${example.id} could be another one`, () => {
      for (const expected of alterations(example.expect)) {
        expect(check({ ...example, expect: expected }).verdict).not.toBe('holds');
      }
    });
  }

  test('every computation is the one and only of an example', () => {
    const used = new Set(
      examples.flatMap((example) => computationFor(example, constructionComputations) ?? []),
    );
    expect(used.size).toBe(constructionComputations.length);
    for (const example of examples) {
      const fitting = constructionComputations.filter((one) => computationFor(example, [one]));
      expect(fitting.length, example.id).toBeLessThanOrEqual(1);
    }
  });

  test('whatever numbers are given, an example holds, falls short or is not yet', () => {
    const number = fc.oneof(
      fc.integer({ min: -5, max: 300 }),
      fc.double({ min: -5, max: 300, noNaN: true }),
      fc.constantFrom(1e6, 1e12, -1e12, 1e300),
    );
    fc.assert(
      fc.property(fc.constantFrom(...computed), fc.infiniteStream(number), (example, numbers) => {
        const given = Object.fromEntries(
          Object.entries(example.given).map(([field, value]) => [field, replaced(value, numbers)]),
        );
        expect(['holds', 'falls short', 'not yet']).toContain(check({ ...example, given }).verdict);
      }),
    );
  });
});

/** A value with other numbers in it. */
function replaced(value: unknown, numbers: Iterator<number>): unknown {
  return Array.isArray(value) ? value.map((one) => replaced(one, numbers)) : numbers.next().value;
}

/** A value as often as it has numbers in it, with another one of them greater by one. */
function alterations(value: unknown): unknown[] {
  if (typeof value === 'number') return [value + 1];
  if (Array.isArray(value)) {
    return value.flatMap((one, i) => alterations(one).map((other) => value.with(i, other)));
  }
  return Object.entries(value as object).flatMap(([field, one]) =>
    alterations(one).map((other) => ({ ...(value as object), [field]: other })),
  );
}
