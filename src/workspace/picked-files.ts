import { largestFile } from '../notebook';
import { loadNotebookFile } from '../notebook/lazy';
import type { Announcements } from './announcements.svelte';
import type { Complaints } from './complaints.svelte';
import type { OpenDocument } from './document.svelte';

/** Opens notebooks from files that a person picked or dropped. */
export class PickedFiles {
  #picked = 0;
  readonly #document: OpenDocument;
  readonly #complaints: Complaints;
  readonly #announcements: Announcements;

  constructor(document: OpenDocument, complaints: Complaints, announcements: Announcements) {
    this.#document = document;
    this.#complaints = complaints;
    this.#announcements = announcements;
  }

  /** Opens a file. The notebook that was open stays saved, and stays open where the file is refused. */
  async open(file: File): Promise<void> {
    if (file.size > largestFile) {
      this.#complaints.add(
        `${file.name}: this file is larger than any notebook (${Math.round(file.size / 1e6)} MB), so it was not opened.`,
      );
      return;
    }
    const { open } = this.#document;
    const picked = ++this.#picked;
    const { readFile } = await loadNotebookFile();
    const text = await file.text();
    // Of several files the one picked last is wanted.
    if (picked !== this.#picked) return;
    if (!this.#document.isStillOpen(open)) {
      this.#complaints.ofAttempt(
        `${file.name} was not opened, since you opened another notebook meanwhile. Pick it again.`,
      );
      return;
    }
    const read = readFile(text);
    if ('problem' in read) {
      this.#complaints.add(`${file.name}: ${read.problem}`);
      return;
    }
    if (this.#document.begin(read.notebook)) this.#announcements.announce(`Opened ${file.name}.`);
  }
}
