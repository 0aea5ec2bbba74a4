import { saverMissing } from './saver-missing';
import type { StorageError } from './storage-error';

/** What to say of it, and what to do. */
export const storageErrorMessages: Record<StorageError, string> = {
  full: 'Not saved: this device is out of space. Save a file before you close this window.',
  refused:
    'Not saved: this browser does not let this page save (a private window, or its settings). Save a file before you close this window.',
  broken:
    'Not saved: this browser cannot read or write its storage. Save a file before you close this window.',
  silent:
    'Not saved yet: this browser’s storage does not answer. It is tried again; until it answers, save a file before you close this window.',
  missing: saverMissing,
};
