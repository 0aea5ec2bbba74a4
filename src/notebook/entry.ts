import type { Entry } from './document';

/** An entry with its formula, where it is one, passed through `change`. */
export function mapEntry(entry: Entry, change: (formula: string) => string): Entry {
  return 'formula' in entry ? { formula: change(entry.formula) } : entry;
}
