import { type Cell, type RepeatFit, f, formula, value } from '../../notebook';
import type { PerSize } from '../read';
import type { Adapting, SizeFor } from './adapting';
import type { RowZone, StitchZone } from './parts';

export const sizeOfStitches: Readonly<Record<StitchZone, SizeFor>> = {
  body: 'bust',
  arm: 'arm',
  wrist: 'arm',
  other: 'bust',
};

export const sizeOfRows = (zone: RowZone, inSleeve: boolean): SizeFor =>
  zone === 'lower'
    ? 'length'
    : zone === 'armhole'
      ? 'arm'
      : zone === 'sleeve'
        ? 'sleeve'
        : inSleeve
          ? 'arm'
          : 'bust';

/** Lays two cells side by side for the comparison, once in a group. */
export function furtherNumbers(
  adapting: Adapting,
  group: string,
  label: string,
  printed: Cell,
  mine: Cell,
): void {
  const there = adapting.beside.some(
    (one) => one.group === group && one.printed === printed.id && one.mine === mine.id,
  );
  if (!there) adapting.beside.push({ group, label, printed: printed.id, mine: mine.id });
}

/** What a count has to be, beside near its width. */
export interface CountRule {
  readonly multiple: number;
  readonly plus: number;
  /** It has to differ from this count by a multiple of so many: a taper ends on it. */
  readonly from?: { readonly count: string; readonly perRow: number };
}

/**
 * A count of the pattern, fitted again: near its width at the other gauge and measurement, under the same rule.
 *
 * @param of `target` is what it is to be near, where that is not its own width
 */
export function fittedCell(
  adapting: Adapting,
  of: { printed: Cell; across: string; rule: CountRule; label: string; name: string; target?: string },
): Cell {
  const { multiple, plus, from } = of.rule;
  const target = of.target ?? `${of.printed.name} * ${of.across}`;
  const parity = from && from.perRow > 1 ? from : undefined;
  const key = ['fit', target, multiple, plus, parity?.count ?? '', parity?.perRow ?? ''].join(' ');
  return adapting.collector.once(
    key,
    adapting.sections.again,
    (): RepeatFit => ({
      kind: 'fit',
      id: of.name,
      label: of.label,
      name: of.name,
      counts: 'stitches',
      target: f(target),
      multiple: value(multiple),
      plus: value(plus),
      rule: 'nearest',
      ...(parity
        ? {
            more: [
              {
                multiple: value(parity.perRow),
                plus: f(`MOD(${parity.count}; STS(${parity.perRow})) / STS(1) - ${parity.perRow}`),
              },
            ],
          }
        : {}),
    }),
    of.label,
  );
}

/** What a taper needs of its rows, and where it may take them from. */
export interface RowsNeeded {
  /** The rows its shaping takes, as a formula. */
  readonly rows: string;
  /** Plain rows that follow it, which it may take up: as the pattern prints them, and their scale. */
  readonly next?: { readonly printed: string; readonly rows: PerSize; readonly scale: string };
}

/**
 * The rows of one piece, each stretch up to the row where the pattern's, at another gauge, would end: so lengths add up
 * to within one rounding, and what meets in the pattern meets again.
 */
export class RowChain {
  /** The pattern's rows so far, as sums of names by what they are scaled with ('' for rows that stay as they are). */
  #sums = new Map<string, string[]>();
  #total: PerSize;
  /** The rows worked so far: the zone and the formula of each stretch. */
  #worked: { zone: RowZone; rows: string }[] = [];

  constructor(sizes: number) {
    this.#total = Array.from({ length: sizes }, () => 0);
  }

  /** A piece that goes on with another's stitches goes on with its rows, too. */
  copy(): RowChain {
    const chain = new RowChain(this.#total.length);
    chain.#sums = new Map([...this.#sums].map(([scale, names]) => [scale, [...names]]));
    chain.#total = this.#total;
    chain.#worked = [...this.#worked];
    return chain;
  }

  /** The rows worked in a zone, as a formula; undefined where there are none. */
  workedIn(zone: RowZone): string | undefined {
    return (
      this.#worked
        .filter((one) => one.zone === zone)
        .map(({ rows }) => rows)
        .join(' + ') || undefined
    );
  }

  /** One row whatever the gauge; with a scale it takes up its share of a length that is shared out. */
  fixed(zone: RowZone, rows: PerSize, scale = ''): void {
    this.#grow('ROWS(1)', rows, scale);
    this.worked(zone, 'ROWS(1)');
  }

  /** The rows of a stretch that follows the gauge, as a formula; `worked` then says what they are called. */
  elastic(printed: string, rows: PerSize, scale: string, needed?: RowsNeeded): string {
    const next = needed?.next;
    let most: string | undefined;
    if (next) {
      const further = this.copy();
      further.#grow(printed, rows, scale);
      further.#grow(next.printed, next.rows, next.scale);
      most = this.#less(further.#rounded()) + (parityOf(next.rows) === 1 ? ' - ROWS(1)' : '');
    }
    this.#grow(printed, rows, scale);
    const parity = parityOf(rows);
    const wanted = this.#less(this.#rounded());
    const least = `ROWS(${parity === 1 ? 1 : 0})`;
    if (!needed) return this.#worked.length === 0 && parity !== 1 ? wanted : `MAX(${least}; ${wanted})`;
    const taken =
      parity === 0
        ? `2 * ROUNDUP(${needed.rows} / 2; 0)`
        : parity === 1
          ? `(2 * ROUNDUP((${needed.rows} - ROWS(1)) / 2; 0) + ROWS(1))`
          : needed.rows;
    return most === undefined ? `MAX(${least}; ${wanted})` : `MAX(${wanted}; MIN(${taken}; ${most}))`;
  }

  worked(zone: RowZone, rows: string): void {
    this.#worked.push({ zone, rows });
  }

  #less(rounded: string): string {
    const names = this.#worked.filter(({ rows }) => rows !== 'ROWS(1)').map(({ rows }) => rows);
    const ones = this.#worked.length - names.length;
    return [rounded, ...names, ...(ones > 0 ? [`ROWS(${ones})`] : [])].join(' - ');
  }

  /** The row to end on: the nearest, and the nearest even or odd one where the pattern's is so in every size. */
  #rounded(): string {
    const sums = [...this.#sums].map(([scale, names]) => {
      const sum = names.length === 1 ? names[0]! : `(${names.join(' + ')})`;
      return scale === '' ? sum : `${sum} * ${scale}`;
    });
    const rows = sums.length === 1 ? sums[0]! : `(${sums.join(' + ')})`;
    const parity = parityOf(this.#total);
    if (parity === 0) return `2 * ROUND(${rows} / 2)`;
    if (parity === 1) return `(2 * ROUND((${rows} - ROWS(1)) / 2) + ROWS(1))`;
    return `ROUND(${rows})`;
  }

  #grow(name: string, rows: PerSize, scale: string): void {
    this.#sums.set(scale, [...(this.#sums.get(scale) ?? []), name]);
    this.#total = this.#total.map((all, at) =>
      all === null || rows[at] === null || rows[at] === undefined ? null : all + rows[at],
    );
  }
}

/** Whether rows are even (0) or odd (1) in every size. */
function parityOf(rows: PerSize): 0 | 1 | undefined {
  const all = (rest: number): boolean => rows.every((many) => many === null || many % 2 === rest);
  return all(0) ? 0 : all(1) ? 1 : undefined;
}

/** A cell of rows, once for each formula. */
export function rowsCell(adapting: Adapting, text: string, label: string, name: string): Cell {
  return adapting.collector.once(
    `rows ${text}`,
    adapting.sections.again,
    () => formula(label, text, { name }),
    label,
  );
}
