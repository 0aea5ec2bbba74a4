import { expect, test } from 'vitest';
import { apply, cellById, type Measure, type Notebook } from '../../../src/notebook';
import { chartUncertainty, sourcesOf, tapeUncertainty } from '../../../src/analysis/uncertainty/sources';
import { measure, notebookOf, swatch } from '../../engine/notebook-of';
import { vNeck } from '../../notebooks/v-neck';

const ids = (notebook: Notebook): string[] => sourcesOf(notebook).map(({ id }) => id);

test('stitch and row gauge of a swatch are two sources, whatever they feed', () => {
  expect(ids(notebookOf([swatch('body', 14, 12)]))).toEqual(['body sts', 'body rows']);
});

test('a measured length is a source; one that was chosen, one that is worked and an empty one are not', () => {
  const notebook = notebookOf([
    measure('bust', 'length', 94),
    measure('neck', 'length', { chart: 'bust', point: 'middle' }),
    { ...measure('cuff', 'length', 6), chosen: true } as Measure,
    measure('half', 'length', { formula: 'bust / 2' }),
    measure('arm', 'length', null),
    measure('underarm', 'stitches', 8),
  ]);
  expect(ids(notebook)).toEqual(['bust value', 'neck value']);
});

test('of a weighed swatch the tape and the scales are sources; ease and yarn are wishes', () => {
  const found = sourcesOf(vNeck());
  expect(found.find(({ id }) => id === 'body weighed.grams')).toMatchObject({ kind: 'scale' });
  expect(found.find(({ id }) => id === 'body weighed.width')).toMatchObject({ kind: 'tape' });
  expect(found.some(({ id }) => /ease|yarn/.test(id))).toBe(false);
});

test('the widths and lengths of the V-neck’s own choosing are not measured', () => {
  for (const id of ['band-width', 'neck-width']) {
    expect(cellById(vNeck(), id)).toMatchObject({ chosen: true });
    expect(ids(vNeck())).not.toContain(`${id} value`);
  }
  expect(ids(vNeck())).toContain('bust value');
});

test('a tape is off by 0.289 cm as a rule, by what the notebook says where it says so', () => {
  expect(tapeUncertainty(vNeck().settings)).toBeCloseTo(0.288675, 6);
  const set = apply(vNeck(), { do: 'set', settings: { tapeWithin: 0.1 } });
  if ('refused' in set) throw new Error(set.refused);
  expect(tapeUncertainty(set.notebook.settings)).toBeCloseTo(0.057735, 6);
});

// JCGM 100:2008 (GUM), 4.3.7: a value anywhere within ± a has a standard uncertainty of a/√3.
test('a chart’s middle carries the range of the chart, not the reading of a tape', () => {
  const bust = sourcesOf(vNeck()).find(({ id }) => id === 'bust value')!;
  // 36 to 38 in for M: 1 in to either side.
  expect(bust.inChart!.m!.label).toBe('Bust, the range of its chart');
  expect(bust.inChart!.m!.u).toBeCloseTo(2.54 / Math.sqrt(3), 9);
  // Of the upper arm the chart prints one number in each size.
  const arm = sourcesOf(vNeck()).find(({ id }) => id === 'upper-arm value')!;
  expect(arm).not.toHaveProperty('inChart');
  expect(arm.u).toBeCloseTo(0.288675, 6);
});

test('from an end of the range, all of it lies to one side; a size with a value of its own was measured', () => {
  const m = { name: 'woman', size: 'M' } as const;
  expect(chartUncertainty({ chart: 'bust', point: 'lower' }, m)).toBeCloseTo(5.08 / Math.sqrt(3), 9);
  expect(chartUncertainty({ chart: 'upperArm', point: 'middle' }, m)).toBeUndefined();
  const own = apply(vNeck(), {
    do: 'change',
    cell: {
      ...(cellById(vNeck(), 'bust') as Measure),
      entry: { chart: 'bust', point: 'middle', own: { m: 95 } },
    },
  });
  if ('refused' in own) throw new Error(own.refused);
  const bust = sourcesOf(own.notebook).find(({ id }) => id === 'bust value')!;
  expect(bust.inChart).not.toHaveProperty('m');
  expect(bust.inChart).toHaveProperty('s');
});
