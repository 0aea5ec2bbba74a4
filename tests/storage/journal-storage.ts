import type { JournalStorage } from '../../src/storage';

/** A storage for the journal in memory. `most` is how many characters it takes before it is full. */
export class MapStorage implements JournalStorage {
  readonly map = new Map<string, string>();
  most = Infinity;

  get length(): number {
    return this.map.size;
  }
  key(at: number): string | null {
    return [...this.map.keys()][at] ?? null;
  }
  getItem(key: string): string | null {
    return this.map.get(key) ?? null;
  }
  setItem(key: string, value: string): void {
    const held = [...this.map].reduce((sum, [one, text]) => sum + one.length + text.length, 0);
    if (held + value.length > this.most) throw new DOMException('Full.', 'QuotaExceededError');
    this.map.set(key, value);
  }
  removeItem(key: string): void {
    this.map.delete(key);
  }
}
