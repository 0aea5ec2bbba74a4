import type { Page } from 'playwright';
import { writeFile, type Notebook } from '../../src/notebook';
import { settled } from './workspace';

/** Opens a notebook from a file, as a person does: one with what the starters lack. */
export async function openNotebook(page: Page, notebook: Notebook): Promise<void> {
  await page.setInputFiles('input[type=file]', {
    name: 'opened.notebook.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeFile(notebook)),
  });
  await page.getByText(notebook.title).first().waitFor();
  await settled(page);
}
