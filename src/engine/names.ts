import { sameName } from '../formulas';

const onScales = 'the whole swatch on the scales';
/** What a swatch gives once it has been told more than its gauge, and what that is, in the words of its own buttons. */
const partsOfSwatch: Readonly<Record<string, string>> = {
  swatch_area: onScales,
  swatch_grams: onScales,
  weight: onScales,
  stretch: 'how far it stretches',
  strain: 'how far it grows by hanging',
  sts_as_worked: 'the gauge before blocking',
  rows_as_worked: 'the gauge before blocking',
};

/**
 * What names stand for: the rows of slots, by name. A name that several slots claim stands for none of them, so
 * that it does not matter which came first.
 */
export class Names {
  readonly #rows = new Map<string, Set<number>>();

  add(name: string, row: number): void {
    const key = sameName(name);
    const rows = this.#rows.get(key);
    if (rows) rows.add(row);
    else this.#rows.set(key, new Set([row]));
  }

  remove(name: string, row: number): void {
    const key = sameName(name);
    const rows = this.#rows.get(key);
    rows?.delete(row);
    if (rows?.size === 0) this.#rows.delete(key);
  }

  /** The row a name stands for, or why it stands for none. */
  find(name: string): number | { problem: string } {
    const rows = this.#rows.get(sameName(name));
    if (!rows) {
      const untold = this.#untold(sameName(name));
      if (untold) return { problem: untold };
      const near = this.#nearest(sameName(name));
      return { problem: `There is no cell called ${name}${near ? `; did you mean ${near}?` : '.'}` };
    }
    if (rows.size > 1)
      return { problem: `More than one cell is called ${name}: rename all but one of them.` };
    for (const row of rows) return row;
    throw new Error('unreachable');
  }

  /** What a swatch has to be told before it gives what is asked of it. */
  #untold(name: string): string | undefined {
    for (const [part, what] of Object.entries(partsOfSwatch)) {
      if (!name.endsWith(`_${part}`)) continue;
      const swatch = name.slice(0, -part.length - 1);
      if (this.#rows.has(`${swatch}_sts_counted`)) return `Open the swatch ${swatch} and add ${what}.`;
    }
    return undefined;
  }

  #nearest(name: string): string | undefined {
    let best: string | undefined;
    let least = Math.min(3, Math.ceil(name.length / 3)) + 1;
    for (const candidate of this.#rows.keys()) {
      const apart = lettersApart(name, candidate, least + 1);
      if (apart < least || (apart === least && best !== undefined && candidate < best)) {
        best = candidate;
        least = apart;
      }
    }
    return best;
  }
}

/**
 * How many letters have to be put in, left out, exchanged for another or swapped with their neighbour to make one
 * word of another (Damerau–Levenshtein, each letter moved once); `limit` where it is that many or more.
 */
function lettersApart(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) >= limit) return limit;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, beforeLast[j - 2]! + 1);
      }
      row.push(least);
    }
    beforeLast = last;
    last = row;
  }
  return Math.min(last[b.length]!, limit);
}
