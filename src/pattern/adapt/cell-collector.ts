import { namesOf, nameFrom, type Cell } from '../../notebook';
import { sameName } from '../../formulas';

/**
 * Cells as they are made, each under a name that nothing made before it uses. Where the same cell is asked for twice,
 * under the same key, the first is given: numbers that a pattern prints alike become one cell, and stay alike.
 */
export class CellCollector {
  readonly #names = new Set<string>();
  readonly #known = new Map<string, Cell>();

  /** Puts a cell in a section, under a free name; gives it as it stands there. */
  put(section: Cell[], cell: Cell): Cell {
    for (let number = 1; ; number++) {
      const name = number === 1 ? cell.name : `${cell.name.slice(0, 40)}_${number}`;
      const named = { ...cell, name, id: name.replaceAll('_', '-') };
      const names = namesOf(named).map((one) => sameName(one.name));
      if (names.some((one) => this.#names.has(one))) continue;
      names.forEach((one) => this.#names.add(one));
      // Notes bring no name into formulas, but their ids have to differ too.
      this.#names.add(sameName(name));
      section.push(named);
      return named;
    }
  }

  /** The cell of a key: made and put down when it is first asked for, later with its further uses in its note. */
  once(key: string, section: Cell[], make: () => Cell, use?: string): Cell {
    const known = this.#known.get(key);
    if (known) {
      const at = section.findIndex(({ id }) => id === known.id);
      const there = section[at];
      if (use && there && !there.label.includes(use)) {
        section[at] = { ...there, note: there.note ? `${there.note} Also: ${use}.` : `Also: ${use}.` };
      }
      return known;
    }
    const cell = this.put(section, make());
    this.#known.set(key, cell);
    return cell;
  }
}

/** A name short enough to be built on. */
export const shortName = (label: string): string => nameFrom(label).slice(0, 28).replace(/_+$/u, '');
