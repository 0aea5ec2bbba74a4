import type { Cell, RepeatFit } from '../../notebook';
import type { PerSize } from '../../words/printed';
import { f, formula, value } from '../cells';
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
export function besides(adapting: Adapting, group: string, label: string, printed: Cell, mine: Cell): void {
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

/** A count of the pattern, fitted again: near its width at the other gauge and measurement, under the same rule. */
export function fittedCell(
  adapting: Adapting,
  of: { printed: Cell; across: string; rule: CountRule; label: string; name: string },
): Cell {
  const { multiple, plus, from } = of.rule;
  const parity = from && from.perRow > 1 ? from : undefined;
  const key = [
    'fit',
    of.printed.name,
    of.across,
    multiple,
    plus,
    parity?.count ?? '',
    parity?.perRow ?? '',
  ].join(' ');
  return adapting.shelf.once(
    key,
    adapting.sections.again,
    (): RepeatFit => ({
      kind: 'fit',
      id: of.name,
      label: of.label,
      name: of.name,
      counts: 'stitches',
      target: f(`${of.printed.name} * ${of.across}`),
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

/** Rows of one piece in one zone, told from its first: so that what meets in the pattern meets again. */
export class RowChain {
  /** The pattern's rows so far, as a sum of names. */
  #sum: string[] = [];
  #total: PerSize;
  /** The pattern's rows up to the last stretch that follows the gauge, and the rows worked since that do not. */
  #before: { sum: string[]; total: PerSize } | undefined;
  #fixed = 0;

  constructor(sizes: number) {
    this.#total = Array.from({ length: sizes }, () => 0);
  }

  fixed(rows: PerSize): void {
    this.#grow('ROWS(1)', rows);
    this.#fixed++;
  }

  /** The rows of a stretch that follows the gauge, as a formula. */
  elastic(printed: string, rows: PerSize, scale: string): string {
    this.#grow(printed, rows);
    const now = rounded(this.#sum, this.#total, scale);
    const before = this.#before ? rounded(this.#before.sum, this.#before.total, scale) : '';
    const text = [now, before && ` - ${before}`, this.#fixed > 0 ? ` - ROWS(${this.#fixed})` : ''].join('');
    this.#before = { sum: [...this.#sum], total: this.#total };
    this.#fixed = 0;
    return text;
  }

  #grow(name: string, rows: PerSize): void {
    this.#sum.push(name);
    this.#total = this.#total.map((all, at) =>
      all === null || rows[at] === null || rows[at] === undefined ? null : all + rows[at],
    );
  }
}

/** So many rows at another gauge, to the nearest; to the nearest even number where the pattern's are even in every size. */
export function rounded(sum: readonly string[], total: PerSize, scale: string): string {
  const rows = sum.length === 1 ? sum[0]! : `(${sum.join(' + ')})`;
  const all = (rest: number): boolean => total.every((many) => many === null || many % 2 === rest);
  if (all(0)) return `2 * ROUND(${rows} * ${scale} / 2)`;
  if (all(1)) return `(2 * ROUND((${rows} * ${scale} - ROWS(1)) / 2) + ROWS(1))`;
  return `ROUND(${rows} * ${scale})`;
}

/** A cell of rows, once for each formula. */
export function rowsCell(adapting: Adapting, text: string, label: string, name: string): Cell {
  return adapting.shelf.once(
    `rows ${text}`,
    adapting.sections.again,
    () => formula(label, text, { name }),
    label,
  );
}
