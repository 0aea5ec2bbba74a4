import {
  areaOf as areaIn,
  CraftError,
  lengthOf as lengthIn,
  stitchesIn,
  widthAt,
  whole,
  workPiece,
  type Fabric,
  type Piece,
  type Row,
  type Stretch,
} from '../../../craft';
import { rowGauge, stitchGauge } from '../../../notebook';
import { amount, areaOf, lengthOf, numberIn as n, rowsOf, stitchesOf, type Amount } from '../amount';
import type { Shows, Work } from '../work';
import type { Part } from '../working';
import { gathered } from './shaping';
import { spaced } from './spaced';
import { tapered } from './tapered';

const planOf = ({ value }: Amount): Piece => JSON.parse(value as string) as Piece;
const rowsIn = (piece: Amount): Row[] => workPiece(planOf(piece));
const gauges = ({ stitches, rows }: Fabric) => ({
  stitches: amount(stitches, stitchGauge),
  rows: amount(rows, rowGauge),
});
const sameFabric = (a: Fabric, b: Fabric): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Rows of one fabric that follow each other. */
function byFabric(rows: readonly Row[]): Row[][] {
  const runs: Row[][] = [];
  for (const row of rows) {
    const last = runs.at(-1);
    if (last && sameFabric(last[0]!.fabric, row.fabric)) last.push(row);
    else runs.push([row]);
  }
  return runs;
}

/** The length of rows: of each fabric by its own gauge, then added up. */
function measured(work: Work, rows: Row[]): Amount {
  const lengths = byFabric(rows).map((run) => {
    const { fabric } = run[0]!;
    const count = rowsOf(run.length);
    if (!fabric.heights) return work.times(count, '÷', gauges(fabric).rows);
    return work.say(work.tell`${count}, each at the height it has in its repeat`, lengthOf(lengthIn(run)));
  });
  const all = lengthOf(lengthIn(rows));
  return lengths.length === 1 ? all : work.say(work.sum(lengths), all);
}

function stretchPlan(plan: object, fabric: Amount): Amount {
  return amount(JSON.stringify({ ...plan, fabric: JSON.parse(fabric.value as string) as Fabric }), 'stretch');
}

function rowsOfStretch(piece: Amount, which: Amount): Row[] {
  const rows = rowsIn(piece).filter(({ stretch }) => stretch === whole(n(which)) - 1);
  if (rows.length > 0) return rows;
  throw new CraftError('no-rows', 'This stretch has no rows.');
}

function counted(work: Work, stretches: readonly Stretch[], rows: readonly Row[]): Part[] {
  return work.sum(
    stretches.flatMap((_stretch, at) => {
      const own = rows.filter(({ stretch }) => stretch === at).length;
      return own > 0 ? [rowsOf(own)] : [];
    }),
  );
}

/** The steps of one stretch, from the count it begins with. */
function stretchSteps(
  work: Work,
  stretch: Stretch,
  from: number,
  rows: readonly Row[],
  startsOn: 'RS' | 'WS',
  worked: 'flat' | 'round',
): void {
  const sts = (count: number): string => work.write(stitchesOf(count));
  const atEnds = (ends: { atStart: number; atEnd: number }): string[] =>
    [ends.atStart, ends.atEnd].filter((count) => count > 0).map(sts);
  switch (stretch.kind) {
    case 'even':
      work.say(work.tell`${rowsOf(stretch.rows)} even`, stitchesOf(from));
      break;
    case 'taper':
      tapered(work, { order: 'longFirst', ...stretch, from }, startsOn);
      break;
    case 'evenly':
      spaced(work, { from, to: stretch.to, worked, ends: stretch.ends ?? 'half' });
      work.say('one row', stitchesOf(stretch.to));
      break;
    case 'eachRepeat':
      work.say(
        `${sts(from)} ${stretch.by < 0 ? '−' : '+'} ${stretch.repeats} × ${sts(Math.abs(stretch.by))}`,
        stitchesOf(from + stretch.repeats * stretch.by),
      );
      break;
    case 'gather':
      gathered(work, from, stretch.to, stretch.rounds);
      break;
    case 'leave':
      work.say(
        [sts(from), ...atEnds(stretch)].join(' − ') + ' left',
        stitchesOf(from - stretch.atStart - stretch.atEnd),
      );
      break;
    case 'add':
      work.say(
        [sts(from), ...atEnds(stretch)].join(' + ') + ' added',
        stitchesOf(from + stretch.atStart + stretch.atEnd),
      );
      break;
    case 'rows':
      work.say(work.tell`${rowsOf(stretch.counts.length)}, told one by one`, stitchesOf(rows.at(-1)!.count));
  }
}

export const pieces = {
  EVENROWS: (_work, rows, fabric) => stretchPlan({ kind: 'even', rows: whole(n(rows!)) }, fabric!),
  TAPERROWS: (_work, ...given) => {
    const [to, over, perRow, every, before, after] = given.slice(0, 6).map((one) => whole(n(one)));
    const plan = { kind: 'taper', to, over, perRow, every, before, after, order: given[6]!.value };
    return stretchPlan(plan, given[7]!);
  },
  EVENLYROW: (_work, to, ends, fabric) =>
    stretchPlan({ kind: 'evenly', to: whole(n(to!)), ends: ends!.value }, fabric!),
  REPEATSROW: (_work, repeats, by, fabric) =>
    stretchPlan({ kind: 'eachRepeat', repeats: whole(n(repeats!)), by: whole(n(by!)) }, fabric!),
  GATHERROUNDS: (_work, to, rounds, fabric) =>
    stretchPlan({ kind: 'gather', to: whole(n(to!)), rounds: whole(n(rounds!)) }, fabric!),
  LEAVESTITCHES: (_work, atStart, atEnd, fabric) =>
    stretchPlan({ kind: 'leave', atStart: whole(n(atStart!)), atEnd: whole(n(atEnd!)) }, fabric!),
  ADDSTITCHES: (_work, atStart, atEnd, fabric) =>
    stretchPlan({ kind: 'add', atStart: whole(n(atStart!)), atEnd: whole(n(atEnd!)) }, fabric!),
  COUNTEDROWS: (_work, fabric, ...told) =>
    stretchPlan({ kind: 'rows', counts: told.map((one) => whole(n(one))) }, fabric!),
  PIECE: (work, worked, start, ends, ...stretches) => {
    const plan = {
      name: '',
      worked: worked!.value as Piece['worked'],
      start: whole(n(start!)),
      ends: ends!.value,
      stretches: stretches.map(({ value }) => JSON.parse(value as string) as Stretch),
    } as Piece;
    const rows = workPiece(plan);
    let from = plan.start;
    let done = 0;
    plan.stretches.forEach((stretch, at) => {
      const own = rows.filter((row) => row.stretch === at);
      stretchSteps(work, stretch, from, own, done % 2 === 0 ? 'RS' : 'WS', plan.worked);
      done += own.length;
      if (stretch.kind === 'leave') from -= stretch.atStart + stretch.atEnd;
      else if (stretch.kind === 'add') from += stretch.atStart + stretch.atEnd;
      else from = own.at(-1)?.count ?? from;
    });
    const text = JSON.stringify(plan);
    return work.say(work.tell`${rowsOf(rows.length)} in all, at the end`, amount(text, 'piece'), {
      answer: work.write(stitchesOf(from)),
    });
  },
  PIECELENGTH: (work, piece) => measured(work, rowsIn(piece!)),
  PIECEROWS: (work, piece) => {
    const rows = rowsIn(piece!);
    return work.say(
      work.tell`${counted(work, planOf(piece!).stretches, rows)}, stretch by stretch`,
      rowsOf(rows.length),
    );
  },
  PIECECOUNT: (work, piece, row) => {
    const found = rowsIn(piece!)[whole(n(row!)) - 1];
    if (!found) throw new CraftError('no-rows', 'This piece has no such row.');
    return work.say(`the stitches after row ${n(row!)}`, stitchesOf(found.count));
  },
  PIECEEND: (work, piece) => {
    const last = rowsIn(piece!).at(-1);
    if (!last) throw new CraftError('no-rows', 'The piece has no rows yet.');
    return work.say(`the stitches of the last row, row ${last.number}`, stitchesOf(last.count));
  },
  PIECEWIDTH: (work, piece, at) => {
    const rows = rowsIn(piece!);
    const width = widthAt(rows, n(at!));
    let up = 0;
    const row = rows.find((one) => (up += one.height) >= n(at!) - 1e-9) ?? rows.at(-1)!;
    const count = work.say(work.tell`at ${at!}, row ${row.number}`, stitchesOf(row.count));
    work.times(count, '÷', gauges(row.fabric).stitches);
    return lengthOf(width);
  },
  PIECEAREA: (work, piece) => {
    const rows = rowsIn(piece!);
    const areas = byFabric(rows).map((run) => {
      const { fabric } = run[0]!;
      const { stitches, rows: rowsPerCm } = gauges(fabric);
      const all = work.say(
        work.tell`${rowsOf(run.length)}, their stitches added up`,
        stitchesOf(stitchesIn(run)),
      );
      const high = fabric.heights ? 'its row’s height' : work.tell`1 row ÷ (${rowsPerCm})`;
      return work.say(
        work.tell`${all}, each 1 st ÷ (${stitches}) wide and ${high} high`,
        areaOf(areaIn(run)),
      );
    });
    const all = areaOf(areaIn(rows));
    return areas.length === 1 ? all : work.say(work.sum(areas), all);
  },
  PIECESTITCHES: (work, piece) => {
    const rows = rowsIn(piece!);
    const own = planOf(piece!).stretches.flatMap((stretch, at) => {
      const of = rows.filter((row) => row.stretch === at);
      if (of.length === 0) return [];
      const all = stitchesOf(stitchesIn(of));
      const [first, last] = [of[0]!.count, of.at(-1)!.count];
      const says =
        stretch.kind === 'even' || of.length === 1
          ? work.tell`${rowsOf(of.length)} × ${stitchesOf(first)}`
          : work.tell`${rowsOf(of.length)} from ${first} to ${stitchesOf(last)}, added up`;
      return [work.say(says, all)];
    });
    const all = stitchesOf(stitchesIn(rows));
    return own.length === 1 ? all : work.say(work.sum(own), all);
  },
  STRETCHEND: (work, piece, which) => {
    const last = rowsOfStretch(piece!, which!).at(-1)!;
    return work.say(
      `the stitches of the last row of stretch ${n(which!)}, row ${last.number}`,
      stitchesOf(last.count),
    );
  },
  STRETCHROWS: (work, piece, which) => {
    const own = rowsIn(piece!).filter(({ stretch }) => stretch === whole(n(which!)) - 1);
    const says =
      own.length > 1
        ? `from row ${own[0]!.number} to row ${own.at(-1)!.number}`
        : `the rows of stretch ${n(which!)}`;
    return work.say(says, rowsOf(own.length));
  },
  STRETCHLENGTH: (work, piece, which) => measured(work, rowsOfStretch(piece!, which!)),
} satisfies Record<string, Shows>;
