import { expect, it, vi } from 'vitest';
import { workspaceWith } from './local-workspace';
import { small } from './small-notebook';

vi.mock('../../src/workspace/typed-formula', () => {
  throw new Error('It cannot be fetched.');
});

it('a formula that is typed while what reads formulas cannot be fetched is not entered, and that is said', async () => {
  const { workspace } = workspaceWith(small());
  const before = workspace.notebook;
  const why = expect.stringMatching(/checks formulas did not load/);
  expect(await workspace.formulas.enter('cuff', 'value', '= hem * 2')).toEqual(why);
  expect(await workspace.formulas.takeOver('half', 'value', '= cuff')).toEqual(why);
  expect(await workspace.formulas.evaluate('hem * 2', { cell: 'cuff', key: 'value' })).toEqual({
    problem: why,
  });
  expect(workspace.notebook).toBe(before);
  const entering = workspace.formulas.enter('cuff', 'value', '= hem * 2');
  workspace.document.begin(small());
  expect(await entering).toMatch(/was for Sleeve, which is no longer open/);
});
