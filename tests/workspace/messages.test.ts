import { describe, expect, it } from 'vitest';
import { dropSleeveLength, fitCount } from '../../src/craft';
import { usualSettings, type PieceCell } from '../../src/notebook';
import { inNotebook, messagesOn, withStretches } from '../../src/workspace/messages';
import { workspaceWith } from './local-workspace';
import { formula, measure, notebookOf } from '../engine/notebook-of';

const inInches = { ...usualSettings, length: 'in', decimal: ',' } as const;

function refusal(work: () => unknown): string {
  try {
    work();
  } catch (error) {
    return (error as Error).message;
  }
  throw new Error('It was worked.');
}

describe('a sentence of the arithmetic', () => {
  it('is told in the unit of the notebook and as finely as lengths are read', () => {
    const sentence = refusal(() => dropSleeveLength({ neckToWrist: 7.62, bodyWidth: 42.142857 }));
    expect(inNotebook(sentence, inInches)).toBe(
      'A body 16⅝\u00a0in wide reaches 8¼\u00a0in down each arm, all of the 3\u00a0in from neck to wrist: no sleeve is left. A body narrower than 6\u00a0in leaves one.',
    );
    expect(inNotebook(sentence, { ...inInches, length: 'cm' })).toMatch(/^A body 42,1\u00a0cm wide/);
  });

  it('keeps the sign of a length and leaves a label alone that only looks like one', () => {
    expect(inNotebook('Swatch of 10 cm must be more than 0. It is −2.54\u00a0cm.', inInches)).toBe(
      'Swatch of 10 cm must be more than 0. It is −1\u00a0in.',
    );
  });

  it('has every number with the decimal mark of the notebook, and leaves what was typed as it was typed', () => {
    const sentence = refusal(() => fitCount(-2.5, [{ multiple: 8, plus: 3 }], 'down'));
    expect(sentence).toContain('−2.5');
    expect(inNotebook(sentence, inInches)).toContain('−2,5');
    expect(inNotebook(sentence, usualSettings)).toBe(sentence);
    const labels = ['Hook 4.5', 'Hook 4.5 (old)', 'Cuff'];
    expect(
      inNotebook(
        'Waits for hook 4.5 (old), and Hook 4.5 is 4.5 where "size 2.5" is 1.25 to 0.5. See 3.',
        inInches,
        () => labels,
      ),
    ).toBe('Waits for hook 4.5 (old), and Hook 4.5 is 4,5 where "size 2.5" is 1,25 to 0,5. See 3.');
  });

  it('that counts the stretches of a piece has their labels beside', () => {
    const stretch = { kind: 'even', fabric: 'wool', rows: { value: 3 } } as const;
    const piece: PieceCell = {
      kind: 'piece',
      id: 'p',
      label: 'Sleeve',
      name: 'p',
      worked: 'flat',
      start: { value: 10 },
      stretches: [
        { ...stretch, name: 'a', label: 'Cuff' },
        { ...stretch, name: 'b', label: 'To the underarm' },
      ],
      ends: 'bound off',
    };
    expect(withStretches('Stretch 2: 40 rows would do.', () => piece)).toBe(
      'Stretch 2 (To the underarm): 40 rows would do.',
    );
    expect(withStretches('Stretch 3: 40 rows would do.', () => piece)).toBe('Stretch 3: 40 rows would do.');
    expect(withStretches('Stretch 2: 40 rows would do.', () => undefined)).toBe(
      'Stretch 2: 40 rows would do.',
    );
  });
});

it('the troubles of a notebook in inches are in inches, and in cm again where it is switched back', async () => {
  const cells = [measure('reach', 'length', 7.62), formula('sleeve', 'DROPSLEEVE(reach; CM(40))')];
  const { workspace, settled } = workspaceWith({ ...notebookOf(cells), settings: inInches });
  workspace.allResults.messageFor = messagesOn(workspace);
  await settled();
  const told = () => workspace.allResults.error('m', 'sleeve', 'value')?.message;
  expect(told()).toContain('all of the 3\u00a0in');
  workspace.do({ do: 'set', settings: { length: 'cm' } });
  await settled();
  expect(told()).toContain('all of the 7,6\u00a0cm');
});

it('the troubles of a notebook with decimal commas have them, whatever its cells are called', async () => {
  const cells = [
    { ...measure('rows', 'rows', null), label: 'Rows at 4.5 mm', entry: { formula: 'ROWS(2.5)' } },
    formula('wide', 'CM(20) * 1'),
    formula('wider', 'CM(30)'),
  ];
  const { workspace, settled } = workspaceWith({
    ...notebookOf(cells),
    settings: { ...usualSettings, decimal: ',' },
  });
  workspace.allResults.messageFor = messagesOn(workspace);
  await settled();
  expect(workspace.allResults.error('m', 'rows', 'value')?.message).toBe(
    'Rows at 4.5 mm must be a whole number. What is put in comes to 2,5.',
  );
  expect(await workspace.formulas.evaluate('wide + 10,5', { cell: 'wider', key: 'value' })).toEqual({
    problem: expect.stringContaining('10,5 of what? Write CM(10,5)'),
  });
});
