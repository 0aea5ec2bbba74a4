import type { BodyMeasure } from '../craft';
import type {
  AsMadeCell,
  Cell,
  CheckCell,
  EdgePart,
  Entry,
  FormulaCell,
  Measure,
  MeasureUnit,
  PieceCell,
  PieceStretch,
  RepeatFit,
  Size,
  Swatch,
} from './document';
import { nameFrom } from './names';

/*
 * Cells of starters in few words. A cell's id is its name with hyphens, and its name follows from its label unless
 * another is given.
 */

export const f = (formula: string): Entry => ({ formula });
export const value = (number: number): Entry => ({ value: number });
export const each = (sizes: readonly Size[], values: readonly number[]): Entry => ({
  each: Object.fromEntries(sizes.map((size, at) => [size.id, values[at] ?? null])),
});

interface Head {
  readonly id: string;
  readonly label: string;
  readonly name: string;
  readonly note?: string;
}

function head(label: string, name = nameFrom(label), note?: string): Head {
  return { id: name.replaceAll('_', '-'), label, name, ...(note ? { note } : {}) };
}

interface More {
  readonly name?: string;
  readonly note?: string;
}

export function charted(label: string, measure: BodyMeasure, more: More = {}): Measure {
  return {
    kind: 'measure',
    ...head(label, more.name, more.note),
    unit: 'length',
    entry: { chart: measure, point: 'middle' },
  };
}

export function measure(label: string, unit: MeasureUnit, entry: Entry, more: More = {}): Measure {
  return { kind: 'measure', ...head(label, more.name, more.note), unit, entry };
}

/** A measure that is chosen and not measured. */
export function chosen(label: string, unit: MeasureUnit, entry: Entry, more: More = {}): Measure {
  return { ...measure(label, unit, entry, more), chosen: true };
}

export function formula(label: string, text: string, more: More = {}): FormulaCell {
  return { kind: 'formula', ...head(label, more.name, more.note), formula: text };
}

/** A swatch counted over 10 cm, and weighed whole: width and length in cm, grams. */
export function swatch(
  label: string,
  counted: { worked: string; stitches: number; rows: number; weighed?: readonly [number, number, number] },
  more: More & Pick<Partial<Swatch>, 'pulled' | 'stitch'> = {},
): Swatch {
  const [width, length, grams] = counted.weighed ?? [];
  return {
    kind: 'swatch',
    ...head(label, more.name, more.note),
    worked: counted.worked,
    stitches: [{ count: value(counted.stitches), over: value(10) }],
    rows: [{ count: value(counted.rows), over: value(10) }],
    ...(width && length && grams
      ? { weighed: { width: value(width), length: value(length), grams: value(grams) } }
      : {}),
    ...(more.stitch ? { stitch: more.stitch } : {}),
    ...(more.pulled ? { pulled: more.pulled } : {}),
  };
}

export function fit(
  label: string,
  wanted: string,
  multiple: number,
  plus: number,
  more: More & Pick<Partial<RepeatFit>, 'chain'> = {},
): RepeatFit {
  return {
    kind: 'fit',
    ...head(label, more.name, more.note),
    counts: 'stitches',
    target: f(wanted),
    multiple: value(multiple),
    plus: value(plus),
    rule: 'nearest',
    ...(more.chain ? { chain: more.chain } : {}),
  };
}

export function piece(
  label: string,
  worked: PieceCell['worked'],
  start: string,
  stretches: readonly PieceStretch[],
  more: More & { ends?: PieceCell['ends'] } & Pick<Partial<PieceCell>, 'startsOn'> = {},
): PieceCell {
  return {
    kind: 'piece',
    ...head(label, more.name, more.note),
    worked,
    ...(more.startsOn ? { startsOn: more.startsOn } : {}),
    start: f(start),
    stretches,
    ends: more.ends ?? 'bound off',
  };
}

export function even(label: string, fabric: string, rows: string, name = nameFrom(label)): PieceStretch {
  return { kind: 'even', name, label, fabric, rows: f(rows) };
}

export function pickUp(
  label: string,
  edge: readonly EdgePart[],
  multiple: number,
  plus: number,
  more: More = {},
): Cell {
  return {
    kind: 'pickUp',
    ...head(label, more.name, more.note),
    edge,
    multiple: value(multiple),
    plus: value(plus),
    rule: 'nearest',
  };
}

/**
 * A measurement as it is made: widths of worked pieces, each so many times. `less` says what an overlap or seams take of
 * it, `within` how far it may be from `wish`: half the step that its repeats allow.
 *
 * @example asMade('Finished bust', 'finished_bust', [['back_start_width', 1], ['front_start_width', 2]], 'CM(1)')
 */
export function asMade(
  label: string,
  wish: string,
  of: readonly (readonly [width: string, times: number])[],
  within: string,
  more: More & { closes?: AsMadeCell['closes']; less?: string } = {},
): AsMadeCell {
  return {
    kind: 'as made',
    ...head(`${label}, as made`, more.name, more.note),
    of: of.map(([width, times]) => ({ width: f(width), times: value(times) })),
    closes: more.closes ?? 'edge to edge',
    less: more.less === undefined ? value(0) : f(more.less),
    wish: f(wish),
    within: f(within),
  };
}

export function check(
  label: string,
  condition: string,
  message: string,
  more: More & Pick<CheckCell, 'across'> = {},
): CheckCell {
  const { across } = more;
  return {
    kind: 'check',
    ...head(label, more.name, more.note),
    condition,
    message,
    ...(across ? { across } : {}),
  };
}
