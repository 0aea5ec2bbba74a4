import { expect, it } from 'vitest';
import { usualSettings } from '../../src/notebook';
import { messagesOn } from '../../src/workspace/messages';
import { workspaceWith } from './local-workspace';
import { formula, measure, notebookOf } from '../engine/notebook-of';

const inInches = { ...usualSettings, length: 'in', decimal: ',' } as const;

it('the errors of a notebook in inches are in inches, and in cm again where it is switched back', async () => {
  const cells = [measure('reach', 'length', 7.62), formula('sleeve', 'DROPSLEEVE(reach; CM(40))')];
  const { workspace, settled } = workspaceWith({ ...notebookOf(cells), settings: inInches });
  workspace.allResults.messageFor = messagesOn(workspace);
  await settled();
  const inWords = () => workspace.allResults.error('m', 'sleeve', 'value')?.message;
  expect(inWords()).toContain('all of the 3\u00a0in');
  workspace.do({ do: 'set', settings: { length: 'cm' } });
  await settled();
  expect(inWords()).toContain('all of the 7,6\u00a0cm');
});

it('the errors of a notebook with decimal commas have them, whatever its cells are called', async () => {
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
    'Rows at 4.5 mm must be a whole number. This is 2,5.',
  );
  expect(await workspace.formulas.evaluate('wide + 10,5', { cell: 'wider', key: 'value' })).toEqual({
    problem: expect.stringContaining('10,5 of what? Write CM(10,5)'),
  });
});

it('an error in a stretch of a piece has its label', async () => {
  const piece = {
    kind: 'piece',
    id: 'sleeve',
    label: 'Sleeve',
    name: 'sleeve',
    worked: 'flat',
    start: { value: 40 },
    stretches: [
      { kind: 'even', name: 'cuff', label: 'Cuff', fabric: 'body', rows: { value: 3 } },
      { kind: 'evenly', name: 'cap', label: '2.5 cm hem', fabric: 'body', to: { value: 200 }, ends: 'half' },
    ],
    ends: 'bound off',
  } as const;
  const fabric = formula('body', 'FABRIC(GAUGE(STS(14); CM(10)); GAUGE(ROWS(16); CM(10)))');
  const { workspace, settled } = workspaceWith({
    ...notebookOf([fabric, piece as never]),
    settings: inInches,
  });
  workspace.allResults.messageFor = messagesOn(workspace);
  await settled();
  expect(workspace.allResults.error('m', 'sleeve', 'piece')?.message).toMatch(
    /^Stretch 2 \(2\.5 cm hem\): One row of/,
  );
});
