import { describe, expect, it } from 'vitest';
import { changesBetween, checkHolds, isChilds, type CheckCell, type Size } from '../../src/notebook';
import { Results } from '../../src/engine';
import { WorkedSheet } from '../../src/engine/sheet';
import { measure, notebookOf } from '../engine/notebook-of';

type Across = CheckCell['across'];
type Value = number | string | undefined;

const plain = (...labels: string[]): Size[] => labels.map((label) => ({ id: label, label }));

/** What a check across sizes comes to, size by size, for these values. */
function across(how: NonNullable<Across>, values: readonly Value[], sizes = plain(...'abcdef')): unknown[] {
  return values.map((_value, at) =>
    checkHolds({ across: how }, sizes, at, {
      valueOf: (size) => values[sizes.findIndex(({ id }) => id === size)],
      truthOf: () => {
        throw new Error('a check across sizes has no truth of its own');
      },
    }),
  );
}

describe('a check within one size', () => {
  it('holds where its condition is true, and cannot be told where that is not worked', () => {
    const truths: Record<string, boolean | undefined> = { a: true, b: false, c: undefined };
    const held = plain(...'abc').map((_size, at, sizes) =>
      checkHolds({}, sizes, at, { valueOf: () => 1, truthOf: (size) => truths[size] }),
    );
    expect(held).toEqual([true, false, undefined]);
  });

  it('of a size that is not there cannot be told', () => {
    expect(checkHolds({}, plain('a'), 1, { valueOf: () => 1, truthOf: () => true })).toBeUndefined();
  });
});

describe('a check that sizes grow in even steps', () => {
  it('fails where the value changes by more than 1: of 0, 0.4, −0.6, 0.5 and −0.5 the fourth', () => {
    expect(across('steady', [0, 0.4, -0.6, 0.5, -0.5])).toEqual([true, true, true, false, true]);
  });

  it('1 but for what fractions leave behind is 1', () => {
    expect(across('steady', [0.1 + 0.2, 1.3])).toEqual([true, true]);
  });

  it('where edges meet it is 0, in every size for itself', () => {
    expect(across('meet', [0, 3.1, -2, 1e-12])).toEqual([true, false, false, true]);
  });
});

describe('a check that sizes differ', () => {
  it('fails where a size has the count of the one before it: cuffs of 40, 40, 44 and 40 stitches', () => {
    expect(across('differ', [40, 40, 44, 40])).toEqual([true, false, true, true]);
  });

  it('holds in the first size, which has none before it', () => {
    expect(across('differ', [40])).toEqual([true]);
  });

  it('takes what arithmetic on fractions leaves behind for no difference', () => {
    expect(across('differ', [0.3, 0.1 + 0.2])).toEqual([true, false]);
  });

  it('compares words too, such as how often a taper is shaped', () => {
    expect(across('differ', ['every 6 rows × 8', 'every 6 rows × 8', 'every 4 rows × 8'])).toEqual([
      true,
      false,
      true,
    ]);
  });

  it('cannot be told in a size that is not worked, nor in the one after it', () => {
    expect(across('differ', [40, undefined, 44, 48])).toEqual([true, undefined, undefined, true]);
  });

  it('compares across charts, in the order of the notebook', () => {
    const sizes: Size[] = [
      { id: 'a', label: '16', chart: { name: 'child', size: '16' } },
      { id: 'b', label: 'XS', chart: { name: 'woman', size: 'XS' } },
    ];
    expect(across('differ', [40, 40], sizes)).toEqual([true, false]);
  });
});

describe('a check that sizes grow', () => {
  it('fails where a size is no larger than the one before it', () => {
    expect(across('grow', [50, 54, 54, 53.9, 58])).toEqual([true, true, false, false, true]);
  });

  it('wants more than arithmetic on fractions leaves behind', () => {
    expect(across('grow', [0.3, 0.1 + 0.2])).toEqual([true, false]);
  });

  it('cannot be told of words', () => {
    expect(across('grow', ['12 sts', '14 sts'])).toEqual([true, undefined]);
  });
});

describe('a check for children’s sizes', () => {
  const sizes: Size[] = [
    { id: 'a', label: '6 months', chart: { name: 'baby', size: '6 months' } },
    { id: 'b', label: '8', chart: { name: 'child', size: '8' } },
    { id: 'c', label: 'M', chart: { name: 'woman', size: 'M' } },
    { id: 'd', label: 'L', chart: { name: 'man', size: 'L' } },
    { id: 'e', label: 'For me' },
  ];

  it('fails where a baby’s or a child’s size has notions, and holds in a grown-up’s', () => {
    expect(across('no child', [5, 5, 5, 5], sizes)).toEqual([false, false, true, true]);
  });

  it('cannot be told of a size that follows no chart, unless it has none', () => {
    expect(across('no child', [0, 0, 0, 0, 5], sizes)).toEqual([true, true, true, true, undefined]);
    expect(across('no child', [0, 0, 0, 0, 0], sizes)[4]).toBe(true);
  });

  it('cannot be told before the notions are counted', () => {
    expect(across('no child', [undefined, 5], sizes)).toEqual([undefined, false]);
  });

  it('knows a child’s size by its chart alone', () => {
    expect(sizes.map(isChilds)).toEqual([true, true, false, false, undefined]);
  });
});

describe('in the sheet', () => {
  const sizes = plain('s', 'm', 'l');
  const cuff = measure('cuff', 'stitches', { each: { s: 40, m: 40, l: 44 } });
  const checkOf = (more: Partial<CheckCell>): CheckCell => ({
    kind: 'check',
    id: 'check',
    label: 'Check',
    name: 'check',
    condition: 'cuff',
    message: '',
    ...more,
  });

  it('a check across sizes has a value of any unit, where a plain one has to be yes or no', async () => {
    const sheet = new WorkedSheet();
    const results = new Results();
    const first = notebookOf([cuff, checkOf({ across: 'differ' })], sizes);
    results.apply(await sheet.update(changesBetween(null, first)));
    expect(sizes.map(({ id }) => results.number(id, 'check', 'holds'))).toEqual([40, 40, 44]);
    expect(results.unit('check', 'holds')).toEqual({ stitch: 1 });

    const second = notebookOf([cuff, checkOf({})], sizes);
    results.apply(await sheet.update(changesBetween(first, second)));
    expect(results.number('s', 'check', 'holds')).toBeUndefined();
    expect(results.error('s', 'check', 'holds')?.message).toMatch(/should be yes or no/);
  });
});
