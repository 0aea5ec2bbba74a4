import {
  areaOf as areaIn,
  CraftError,
  edgeOf as edgeMeasured,
  lengthOf as lengthIn,
  shapedSide,
  stitchesIn,
  widthAt,
  whole,
  workPiece,
  type Fabric,
  type Piece,
  type Row,
  type Stretch,
} from '../../craft';
import { rowGauge, stitchGauge, readHowWorked } from '..';
import {
  amount,
  areaOf,
  bare,
  lengthOf,
  numberIn as n,
  rowsOf,
  stitchesOf,
  worthOf,
  type Amount,
} from '../../explain/amount';
import type { Shows, Work } from '../../explain/work';
import type { TextRun } from '../../explain/step';
import { gathered } from './shaping.explain';
import { spaced } from './spaced.explain';
import { taperRequest, tapered } from './tapered.explain';

const planOf = ({ value }: Amount): Piece => JSON.parse(value as string) as Piece;
const rowsIn = (piece: Amount): Row[] => workPiece(planOf(piece));
const gauges = ({ stitches, rows }: Fabric) => ({
  stitches: amount(stitches, stitchGauge),
  rows: amount(rows, rowGauge),
});
/** Which row it is, that is how many rows there are up to it. */
const rowNumber = ({ number }: Row): Amount => bare(rowsOf(number));
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
    return work.say(work.words`${count}, each at the height it has in its repeat`, lengthOf(lengthIn(run)));
  });
  const all = lengthOf(lengthIn(rows));
  return lengths.length === 1 ? all : work.say(work.sum(lengths), all);
}

function stretchPlan(plan: object, fabric: Amount, madeOf: readonly Amount[]): Amount {
  const text = JSON.stringify({ ...plan, fabric: JSON.parse(fabric.value as string) as Fabric });
  return { ...amount(text, 'stretch'), madeOf };
}

function rowsOfStretch(piece: Amount, which: Amount): Row[] {
  const rows = rowsIn(piece).filter(({ stretch }) => stretch === whole(n(which)) - 1);
  if (rows.length > 0) return rows;
  throw new CraftError('no-rows', 'This stretch has no rows.');
}

function counted(work: Work, stretches: readonly Stretch[], rows: readonly Row[]): TextRun[] {
  return work.sum(
    stretches.flatMap((_stretch, at) => {
      const own = rows.filter(({ stretch }) => stretch === at).length;
      return own > 0 ? [rowsOf(own)] : [];
    }),
  );
}

/**
 * The steps of one stretch, from the count it begins with; `madeOf` are the numbers it was made of, in the order of the
 * function that made it.
 *
 * @returns the count it ends on
 */
function stretchSteps(
  work: Work,
  { stretch, madeOf }: { stretch: Stretch; madeOf: readonly Amount[] },
  from: Amount,
  rows: readonly Row[],
  worked: 'flat' | 'round',
): Amount {
  const [first, second] = madeOf as [Amount, Amount];
  const last = (): Amount => stitchesOf(rows.at(-1)!.count);
  const atEnds = (sign: string): TextRun[] =>
    [first, second].filter((count) => n(count) > 0).flatMap((count) => work.words`${sign}${count}`);
  switch (stretch.kind) {
    case 'even':
      work.say(work.words`${from}, ${first} even`, from);
      return from;
    case 'taper': {
      const [to, over, perRow, every, before, after, order] = madeOf;
      tapered(work, taperRequest([from, to!, over!, perRow!, every!, before!, after!], order!));
      return to!;
    }
    case 'evenly':
      spaced(work, { from, to: first, worked, ends: stretch.ends ?? 'half' });
      work.say('one row', first);
      return first;
    case 'eachRepeat': {
      const by = { ...second, ...stitchesOf(Math.abs(stretch.by)) };
      return work.say(work.words`${from} ${stretch.by < 0 ? '−' : '+'} ${bare(first)} × ${by}`, last());
    }
    case 'gather':
      gathered(work, from, first, second);
      return last();
    case 'leave':
      return work.say(
        work.words`${from}${atEnds(' − ')} left`,
        stitchesOf(n(from) - stretch.atStart - stretch.atEnd),
      );
    case 'add':
      return work.say(
        work.words`${from}${atEnds(' + ')} added`,
        stitchesOf(n(from) + stretch.atStart + stretch.atEnd),
      );
    case 'rows':
      return work.say(work.words`${rowsOf(stretch.counts.length)}, told one by one`, last());
  }
}

/** The length of an edge: what it is made of, then along its steps. */
function edgeLength(work: Work, piece: Amount, side: Amount, first?: Amount, last?: Amount): Amount {
  const rows = rowsIn(piece);
  const from = first ? whole(n(first)) - 1 : 0;
  const to = last || first ? whole(n((last ?? first)!)) - 1 : Infinity;
  const edge = side.value === 'shaped' ? shapedSide(rows, from, to) : (side.value as 'left' | 'right');
  const measured = edgeMeasured(rows, edge, from, to);
  const left = measured.stitches > 0 ? work.words` and ${stitchesOf(measured.stitches)} left or added` : [];
  return work.say(
    work.words`the ${edge} edge, ${rowsOf(measured.rows)}${left}, along each of its steps: across by its stitches, up by its rows`,
    lengthOf(measured.length),
  );
}

export const pieces = {
  EVENROWS: (_work, rows, fabric) => stretchPlan({ kind: 'even', rows: whole(n(rows!)) }, fabric!, [rows!]),
  TAPERROWS: (_work, ...given) => {
    const [to, over, perRow, every, before, after] = given.slice(0, 6).map((one) => whole(n(one)));
    const edge = given[8] ? { edge: given[8].value } : {};
    const plan = { kind: 'taper', to, over, perRow, every, before, after, order: given[6]!.value, ...edge };
    return stretchPlan(plan, given[7]!, given);
  },
  EVENLYROW: (_work, to, ends, fabric) =>
    stretchPlan({ kind: 'evenly', to: whole(n(to!)), ends: ends!.value }, fabric!, [to!]),
  REPEATSROW: (_work, repeats, by, fabric) =>
    stretchPlan({ kind: 'eachRepeat', repeats: whole(n(repeats!)), by: whole(n(by!)) }, fabric!, [
      repeats!,
      by!,
    ]),
  GATHERROUNDS: (_work, to, rounds, fabric) =>
    stretchPlan({ kind: 'gather', to: whole(n(to!)), rounds: whole(n(rounds!)) }, fabric!, [to!, rounds!]),
  LEAVESTITCHES: (_work, atStart, atEnd, fabric) =>
    stretchPlan({ kind: 'leave', atStart: whole(n(atStart!)), atEnd: whole(n(atEnd!)) }, fabric!, [
      atStart!,
      atEnd!,
    ]),
  ADDSTITCHES: (_work, atStart, atEnd, fabric) =>
    stretchPlan({ kind: 'add', atStart: whole(n(atStart!)), atEnd: whole(n(atEnd!)) }, fabric!, [
      atStart!,
      atEnd!,
    ]),
  COUNTEDROWS: (_work, fabric, ...counts) =>
    stretchPlan({ kind: 'rows', counts: counts.map((one) => whole(n(one))) }, fabric!, counts),
  PIECE: (work, worked, start, ends, ...stretches) => {
    const plan = {
      name: '',
      ...readHowWorked(worked!.value as string),
      start: whole(n(start!)),
      ends: ends!.value,
      stretches: stretches.map(({ value }) => JSON.parse(value as string) as Stretch),
    } as Piece;
    const rows = workPiece(plan);
    let from = start!;
    plan.stretches.forEach((stretch, at) => {
      const own = rows.filter((row) => row.stretch === at);
      const made = { stretch, madeOf: stretches[at]!.madeOf ?? [] };
      from = work.under(at, undefined, () => stretchSteps(work, made, from, own, plan.worked));
    });
    const text = JSON.stringify(plan);
    return work.say(work.words`${rowsOf(rows.length)} in all, at the end`, amount(text, 'piece'), {
      answer: work.write(from),
      worth: worthOf(from),
    });
  },
  PIECELENGTH: (work, piece) => measured(work, rowsIn(piece!)),
  PIECEROWS: (work, piece) => {
    const rows = rowsIn(piece!);
    return work.say(
      work.words`${counted(work, planOf(piece!).stretches, rows)}, stretch by stretch`,
      rowsOf(rows.length),
    );
  },
  PIECECOUNT: (work, piece, row) => {
    const found = rowsIn(piece!)[whole(n(row!)) - 1];
    if (!found) throw new CraftError('no-rows', 'This piece has no such row.');
    return work.say(work.words`the stitches after row ${bare(row!)}`, stitchesOf(found.count));
  },
  PIECEEND: (work, piece) => {
    const last = rowsIn(piece!).at(-1);
    if (!last) throw new CraftError('no-rows', 'The piece has no rows yet.');
    return work.say(work.words`the stitches of the last row, row ${rowNumber(last)}`, stitchesOf(last.count));
  },
  PIECEWIDTH: (work, piece, at) => {
    const rows = rowsIn(piece!);
    const width = widthAt(rows, n(at!));
    let up = 0;
    const row = rows.find((one) => (up += one.height) >= n(at!) - 1e-9) ?? rows.at(-1)!;
    const count = work.say(work.words`at ${at!}, row ${rowNumber(row)}`, stitchesOf(row.count));
    work.times(count, '÷', gauges(row.fabric).stitches);
    return lengthOf(width);
  },
  PIECEAREA: (work, piece) => {
    const rows = rowsIn(piece!);
    const areas = byFabric(rows).map((run) => {
      const { fabric } = run[0]!;
      const { stitches, rows: rowsPerCm } = gauges(fabric);
      const all = work.say(
        work.words`${rowsOf(run.length)}, their stitches added up`,
        stitchesOf(stitchesIn(run)),
      );
      const high = fabric.heights ? 'its row’s height' : work.words`1 row ÷ (${rowsPerCm})`;
      return work.say(
        work.words`${all}, each 1 st ÷ (${stitches}) wide and ${high} high`,
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
          ? work.words`${rowsOf(of.length)} × ${stitchesOf(first)}`
          : work.words`${rowsOf(of.length)} from ${bare(stitchesOf(first))} to ${stitchesOf(last)}, added up`;
      return [work.under(at, piece, () => work.say(says, all))];
    });
    const all = stitchesOf(stitchesIn(rows));
    return own.length === 1 ? all : work.say(work.sum(own), all);
  },
  STRETCHEND: (work, piece, which) => {
    const last = rowsOfStretch(piece!, which!).at(-1)!;
    return work.say(
      work.words`the stitches of the last row of stretch ${n(which!)}, row ${rowNumber(last)}`,
      stitchesOf(last.count),
    );
  },
  STRETCHROWS: (work, piece, which) => {
    const own = rowsIn(piece!).filter(({ stretch }) => stretch === whole(n(which!)) - 1);
    const says =
      own.length > 1
        ? work.words`from row ${rowNumber(own[0]!)} to row ${rowNumber(own.at(-1)!)}`
        : work.words`the rows of stretch ${n(which!)}`;
    return work.say(says, rowsOf(own.length));
  },
  STRETCHLENGTH: (work, piece, which) => measured(work, rowsOfStretch(piece!, which!)),
  EDGELENGTH: (work, piece, side, first, last) => edgeLength(work, piece!, side!, first, last),
} satisfies Record<string, Shows>;
