import { describe, expect, it } from 'vitest';
import type { Notebook } from '../../../src/notebook';
import { check } from '../../../src/notebook/cell-builders';
import { patternOf, sentencesOf } from '../../../src/pattern';
import { sourceOf } from './source-of';
import { vNeck } from '../../notebooks/v-neck';

/** The lines under "Making up" of the V-neck with one check of its own instead of all others. */
async function making(condition: string): Promise<string[]> {
  const { sections, ...rest } = vNeck();
  const notebook: Notebook = {
    ...rest,
    sections: sections.map((section) => ({
      ...section,
      cells:
        section.id === 'joins-section'
          ? [check('Seam', condition, 'It does not match.')]
          : section.cells.filter(({ kind }) => kind !== 'check'),
    })),
  };
  const document = patternOf(await sourceOf(notebook));
  expect(document.notes).toEqual([]);
  const parts = document.parts.filter(({ kind }) => kind === 'making up');
  return sentencesOf({ ...document, parts })
    .map(({ text }) => text)
    .slice(0, -1);
}

const rows = 'join row to row';
const lower = '46 (46, 46, 46, 44, 42, 40, 38, 38) rows on each side.';

describe('seams under “Making up”', () => {
  it('a side that is the sum of several stretches is joined by what they add up to', async () => {
    expect(
      await making(
        'JOINS(back_lower_worked_rows + back_upper_worked_rows; front_lower_worked_rows + front_upper_worked_rows + front_neck_worked_rows)',
      ),
    ).toEqual([`Seam: ${rows}, 66 (68, 68, 70, 70, 72, 72, 72, 74) rows on each side.`]);
  });

  it('rows are rows where only the other side says so', async () => {
    expect(
      await making('JOINS(back_lower_worked_rows + armhole_rows - armhole_rows; front_lower_worked_rows)'),
    ).toEqual([`Seam: ${rows}, ${lower}`]);
  });

  it('half of what a neck leaves of the last row is a shoulder', async () => {
    expect(await making('JOINS((back_end - (back_end - 2 * shoulder_sts)) / 2; front_end)')).toEqual([
      'Seam: join stitch to stitch, 22 (26, 29, 29, 33, 36, 40, 44, 47) sts on each side.',
    ]);
  });

  it('what only one piece comes to, or two functions beside each other, is no seam', async () => {
    expect(await making('JOINS(back_lower_worked_rows + ROWS(0); back_lower_worked_rows)')).toEqual([]);
    expect(await making('AND(JOINS(back_end; back_end); JOINS(front_end; front_end))')).toEqual([]);
  });
});
