import { expect, it, vi } from 'vitest';
import { openFile } from '../../../src/features/notebooks/open-file';
import { workspaceWith } from '../../workspace/local-workspace';
import { small } from '../../workspace/small-notebook';

vi.mock('../../../src/features/notebooks/picked-file', () => {
  throw new Error('It cannot be fetched.');
});

it('a file that is picked while the part that opens it cannot be fetched is not opened, and that is said', async () => {
  const { workspace } = workspaceWith(small());
  const before = workspace.notebook;
  await openFile(workspace, new File(['{}'], 'hat.json'));
  expect(workspace.notebook).toBe(before);
  expect(workspace.complaint).toMatch(/^hat\.json was not opened: .* did not load\./);
});
