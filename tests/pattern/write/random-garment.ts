import type { GeneratorValue } from 'fast-check';
import * as fc from 'fast-check';
import {
  CraftError,
  pickUpEdge,
  workPiece,
  type EdgeStretch,
  type Piece,
  type Stretch,
} from '../../../src/craft';
import {
  usualSettings,
  type BasicStitch,
  type Cell,
  type EdgePart,
  type Notebook,
  type PieceStretch,
  type Size,
} from '../../../src/notebook';
import type { PatternSource } from '../../../src/pattern';
import { uncountedFabric } from './uncounted-fabric';

/*
 * Garments of one piece that nobody would make, in several sizes that have nothing in common but the kinds of their
 * stretches: what is written for them has to be right all the same.
 */

const fabric = { stitches: 1.4, rows: 1.2 };
const kinds = ['even', 'taper', 'evenly', 'eachRepeat', 'gather', 'leave', 'add', 'rows'] as const;
type Kind = (typeof kinds)[number];

/** One stretch with numbers that can be worked from a count, and the count after it. */
function stretchOf(
  g: GeneratorValue,
  kind: Kind,
  from: number,
  worked: 'flat' | 'round',
  alike: number,
): Stretch {
  const whole = (min: number, max: number): number => g(fc.integer, { min, max: Math.max(min, max) });
  switch (kind) {
    case 'even':
      return { kind, fabric, rows: whole(0, 40) };
    case 'taper': {
      const perRow = [1, 2, 2, 2, 3, 4, 8][whole(0, 6)]!;
      const most = Math.min(15, Math.floor((from - 1) / perRow));
      const shapings = whole(0, most);
      const to = whole(0, 3) > 0 ? from - shapings * perRow : from + shapings * perRow;
      const every = (worked === 'flat' ? whole(1, 2) : 1) as 1 | 2;
      const [before, after] = [whole(0, 5), whole(0, 5)];
      return {
        kind,
        fabric,
        to,
        perRow,
        every,
        before,
        after,
        over: before + after + shapings * every + whole(0, 40),
        order: (['longFirst', 'shortFirst', 'spread'] as const)[whole(0, 2)]!,
      };
    }
    case 'evenly': {
      const down = whole(0, 1) === 0;
      const to = down ? from - whole(0, Math.floor(from / 2)) : from + whole(0, from);
      return { kind, fabric, to, ends: whole(0, 1) === 0 ? 'half' : 'whole' };
    }
    case 'eachRepeat': {
      const each = whole(1, 12);
      const repeats = Math.max(1, Math.floor(from / each));
      return { kind, fabric, repeats, by: whole(-Math.min(3, Math.floor(from / repeats) - 1), 3) };
    }
    case 'gather':
      if (from < 4) return { kind: 'even', fabric, rows: 1 };
      return { kind, fabric, to: whole(1, from - 1), rounds: whole(1, Math.min(alike, from - 1)) };
    case 'leave': {
      const atStart = whole(0, Math.min(9, from - 1));
      return { kind, fabric, atStart, atEnd: whole(0, Math.min(9, from - 1 - atStart)) };
    }
    case 'add':
      return { kind, fabric, atStart: whole(0, 9), atEnd: whole(0, 9) };
    case 'rows':
      return {
        kind,
        fabric,
        counts: Array.from({ length: alike }, () =>
          Math.max(1, whole(0, 2) > 0 ? from + whole(-6, 6) : from),
        ),
      };
  }
}

function after(plan: Piece): number | undefined {
  try {
    const rows = workPiece({ ...plan, stretches: [...plan.stretches, { kind: 'even', fabric, rows: 1 }] });
    return rows.at(-1)!.count;
  } catch (error) {
    if (error instanceof CraftError) return undefined;
    throw error;
  }
}

const value = { value: null };

/** The cell's stretch: its own numbers do not matter, they stand in the plans. */
function cellStretch(stretch: Stretch, name: string): PieceStretch {
  const base = { name, label: stretch.label ?? '', fabric: 'fabric' };
  switch (stretch.kind) {
    case 'even':
      return { kind: 'even', ...base, rows: value };
    case 'taper':
      return {
        kind: 'taper',
        ...base,
        to: value,
        over: value,
        perRow: value,
        every: 1,
        before: value,
        after: value,
        order: 'spread',
      };
    case 'evenly':
      return { kind: 'evenly', ...base, to: value, ends: 'half' };
    case 'eachRepeat':
      return { kind: 'eachRepeat', ...base, repeats: value, by: value };
    case 'gather':
      return { kind: 'gather', ...base, to: value, rounds: value };
    case 'rows':
      return { kind: 'rows', ...base, counts: stretch.counts.map(() => value) };
    case 'leave':
    case 'add':
      return { kind: stretch.kind, ...base, atStart: value, atEnd: value };
  }
}

export interface RandomGarment {
  readonly source: PatternSource;
  readonly plans: readonly Piece[];
}

/** A garment of one piece in up to six sizes; undefined where the numbers drawn cannot be worked. */
export function randomGarment(g: GeneratorValue): RandomGarment | undefined {
  const whole = (min: number, max: number): number => g(fc.integer, { min, max });
  const craft = whole(0, 1) === 0 ? 'crochet' : 'knitting';
  const terms = whole(0, 1) === 0 ? 'US' : 'UK';
  const worked = whole(0, 1) === 0 ? 'flat' : 'round';
  const ends = whole(0, 1) === 0 ? 'held' : 'bound off';
  const sizes: Size[] = Array.from({ length: whole(1, 6) }, (_size, at) => ({
    id: `s${at}`,
    label: ['XS', 'X', 'S', 'M (tall)', 'L, wide', '2'][at]!,
  }));
  const drawn = Array.from({ length: whole(1, 6) }, () => kinds[whole(0, kinds.length - 1)]!);
  const alike = whole(1, 4);
  const startsOn = whole(0, 3) === 0 ? 'WS' : 'RS';
  const edge = whole(0, 2) === 0 ? edgeOf(g, sizes.length) : undefined;
  const plans: Piece[] = [];
  for (const [sizeIndex] of sizes.entries()) {
    const start = edge ? edge.totals[sizeIndex]! : whole(1, 160);
    let plan: Piece = { name: '', worked, start, startsOn, stretches: [], ends };
    for (const kind of drawn) {
      const from = plan.stretches.length === 0 ? start : after(plan);
      if (from === undefined || from > 1500) return undefined;
      plan = { ...plan, stretches: [...plan.stretches, stretchOf(g, kind, from, worked, alike)] };
    }
    plan = { ...plan, stretches: [...plan.stretches, { kind: 'even', fabric, rows: 1 + whole(0, 3) }] };
    try {
      workPiece(plan);
    } catch (error) {
      if (error instanceof CraftError) return undefined;
      throw error;
    }
    plans.push(plan);
  }
  // A stretch that had to be another kind in one size is no garment of one cell.
  const [first] = plans as [Piece, ...Piece[]];
  if (plans.some((plan) => plan.stretches.some((one, at) => one.kind !== first.stretches[at]!.kind)))
    return undefined;

  const stitch = ([undefined, 'sc', 'hdc', 'dc', 'tr'] as const)[whole(0, 4)];
  const own: BasicStitch | undefined =
    craft === 'crochet' ? stitch : ([undefined, 'stockinette', 'garter'] as const)[whole(0, 2)];
  const cells: Cell[] = [
    uncountedFabric(own),
    ...(edge
      ? [
          {
            kind: 'pickUp' as const,
            id: 'edge',
            name: 'edge',
            label: 'Edge',
            edge: edge.parts,
            multiple: value,
            plus: value,
            rule: 'nearest' as const,
          },
        ]
      : []),
    {
      kind: 'piece',
      id: 'piece',
      name: 'piece',
      label: 'Piece',
      worked,
      start: edge ? { formula: 'edge' } : value,
      stretches: first.stretches.map((stretch, at) => cellStretch(stretch, `part_${at}`)),
      ends,
    },
  ];
  const notebook: Notebook = {
    title: 'Random',
    settings: { ...usualSettings, craft, terms },
    sizes,
    sections: [{ id: 'all', label: '', cells }],
  };
  const indexOf = (size: string): number => sizes.findIndex(({ id }) => id === size);
  return {
    plans,
    source: {
      notebook,
      number: (size, cell, key) => (cell === 'edge' ? edge?.numbers[indexOf(size)]!.get(key) : undefined),
      truth: () => undefined,
      errorAt: () => undefined,
      plan: (size) => plans[indexOf(size)]!,
    },
  };
}

/** A random edge in each size: its parts, its total and its numbers by key. */
function edgeOf(g: GeneratorValue, sizes: number) {
  const whole = (min: number, max: number): number => g(fc.integer, { min, max });
  const drawn = Array.from(
    { length: whole(1, 3) },
    () => (['rows', 'stitches', 'motifs', 'curve'] as const)[whole(0, 3)]!,
  );
  const parts = drawn.map((kind, at): EdgePart => {
    const base = {
      name: `e${at}`,
      label: ['Neck', 'Left (2): 3 sts over 4 row ends', '9 (8, 7) times'][at]!,
    };
    if (kind === 'rows') return { kind, ...base, rows: value, pick: value, of: value };
    if (kind === 'stitches') return { kind, ...base, count: value };
    if (kind === 'motifs') return { kind, ...base, motifs: value, each: value };
    return { kind, ...base, length: value, gauge: value };
  });
  const totals: number[] = [];
  const numbers = Array.from({ length: sizes }, () => {
    const map = new Map<string, number>();
    const edge = drawn.map((kind, at): EdgeStretch => {
      const put = (fields: Record<string, number>): void => {
        for (const [field, number] of Object.entries(fields)) map.set(`e${at}.${field}`, number);
      };
      if (kind === 'rows') {
        const stated = { rows: whole(1, 90), pick: whole(1, 9), of: whole(1, 8) };
        put(stated);
        return { kind, ...stated };
      }
      if (kind === 'stitches') {
        const count = whole(1, 50);
        put({ count });
        return { kind, count };
      }
      if (kind === 'motifs') {
        const stated = { motifs: whole(1, 20), each: whole(1, 12) };
        put(stated);
        return { kind, ...stated };
      }
      put({ length: whole(1, 60), gauge: 1.4 });
      return { kind, length: map.get(`e${at}.length`)!, stitchesPerCm: 1.4 };
    });
    const fitted = pickUpEdge(edge, { repeats: [{ multiple: whole(1, 6), plus: 0 }], rule: 'nearest' });
    fitted.perStretch.forEach((share, at) => map.set(`e${at}.share`, share));
    totals.push(fitted.total);
    return map;
  });
  return { parts, totals, numbers };
}
