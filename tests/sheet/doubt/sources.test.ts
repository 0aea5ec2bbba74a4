import { expect, test } from 'vitest';
import { apply, cellById, type Measure, type Notebook } from '../../../src/notebook';
import { sourcesOf, tapeUncertainty } from '../../../src/sheet/doubt/sources';
import { measure, notebookOf, swatch } from '../notebook-of';
import { smock } from '../../notebooks/smock';

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

test('of a weighed swatch the tape and the scales are sources; ease and ribbon are wishes', () => {
  const found = sourcesOf(smock());
  expect(found.find(({ id }) => id === 'body weighed.grams')).toMatchObject({ kind: 'scale' });
  expect(found.find(({ id }) => id === 'body weighed.width')).toMatchObject({ kind: 'tape' });
  expect(found.some(({ id }) => /ease|tassels|yarn/.test(id))).toBe(false);
});

test('the widths and lengths of the smock’s own choosing are not measured', () => {
  for (const id of ['band-width', 'cuff-length', 'neck-width', 'cuff']) {
    expect(cellById(smock(), id)).toMatchObject({ chosen: true });
    expect(ids(smock())).not.toContain(`${id} value`);
  }
  expect(ids(smock())).toContain('bust value');
});

test('a tape is off by 0.289 cm as a rule, by what the notebook says where it says so', () => {
  expect(tapeUncertainty(smock().settings)).toBeCloseTo(0.288675, 6);
  const set = apply(smock(), { do: 'set', settings: { tapeWithin: 0.1 } });
  if ('refused' in set) throw new Error(set.refused);
  expect(tapeUncertainty(set.notebook.settings)).toBeCloseTo(0.057735, 6);
});
