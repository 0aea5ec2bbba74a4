import type { Entry } from './document';

export function mapEntry(entry: Entry, change: (formula: string) => string): Entry {
  return 'formula' in entry ? { formula: change(entry.formula) } : entry;
}
