import { fitCount, pickUpEdge, taper } from '../../src/craft';
import { computation } from './check-example';
import { WorkedPiece, half } from './worked-piece';

/** A raglan has four lines, and each gains or loses a stitch on both sides. */
const perRaglanRow = 8;
/** Waist shaping has four lines: one on each side of two marked stitches. */
const perWaistRow = 4;
/** A triangle gains a stitch at both edges and on both sides of its middle. */
const perTriangleRow = 4;

/** The whole count, row or round nearest to a length times a gauge; a half goes up. */
const nearest = (exact: number) => fitCount(exact, [], 'nearest').count;

/** Stitches bound off at the beginning of each of so many rows. */
const atBeginnings = (piece: WorkedPiece, rows: number, each: number) =>
  piece.times(rows, (sofar) => sofar.leave(each, 0));

/** The shaping rows from one count to another, `perRow` stitches on each. */
const shapingRows = (from: number, to: number, perRow: number) =>
  taper({ from, to, over: 2 * Math.abs(from - to), perRow, every: 2, before: 0, after: 0 }).shapingRows
    .length;

const raglans = [
  computation({
    given: ['back', 'bindOff', 'shapingRows', 'every', 'cuff', 'sleeveIncreases'],
    work: ({ back, bindOff, shapingRows, every, cuff, sleeveIncreases }) => {
      const sleeve = new WorkedPiece(cuff).shape(2, sleeveIncreases);
      const raglan = (piece: WorkedPiece) =>
        piece.leave(bindOff).shape(-2, shapingRows, every as 1 | 2).count;
      return {
        backLeft: raglan(new WorkedPiece(back)),
        sleeveTop: sleeve.count,
        sleeveLeft: raglan(sleeve),
      };
    },
  }),
  computation({
    given: ['from', 'to', 'bindOff', 'rightSideRows'],
    work: ({ from, to, bindOff, rightSideRows }) => {
      const start = new WorkedPiece(from).leave(bindOff).count;
      const plan = { perRow: 2, every: 2, before: 0, after: 0 } as const;
      const { intervals, shapingRows } = taper({ from: start, to, over: 2 * rightSideRows, ...plan });
      const every = intervals.map((interval) => interval.every / 2);
      return {
        stitches: start - to,
        times: shapingRows.length,
        every: every.length === 1 ? every[0]! : every,
      };
    },
  }),
  computation({
    topic: /raglan/,
    given: ['from', 'sleeve', 'times'],
    asks: ['yoke'],
    work: ({ from, sleeve, times }) => {
      const yoke = new WorkedPiece(from, 'round').shape(perRaglanRow, times).count;
      const top = new WorkedPiece(sleeve, 'round').shape(2, times).count;
      return { yoke, sleeve: top, body: yoke - 2 * top };
    },
  }),
];

const yokes = [
  computation({
    topic: /^(?!.*percent)/,
    given: ['body', 'sleeve', 'underarm'],
    asks: ['yoke'],
    work: (given) => joined(given),
  }),
  computation({
    // Half the depth plain, then a quarter of the stitches out, then a third.
    topic: /yoke, percent/,
    given: ['body', 'sleeve', 'underarm'],
    asks: ['after'],
    work: (given) => {
      const { yoke } = joined(given);
      const { counts } = new WorkedPiece(yoke, 'round').counts(2, (piece, i) =>
        piece.together(i === 0 ? 2 : 1),
      );
      return { yoke, after: counts };
    },
  }),
  computation({
    topic: /yoke.*thirds/,
    given: ['from'],
    work: ({ from }, wanted) =>
      new WorkedPiece(from, 'round').counts(wanted, (piece) => piece.together(1)).counts,
  }),
  computation({
    topic: /yoke|round/,
    given: ['from'],
    lists: ['plain'],
    work: ({ from, plain }) => plain.map((k) => new WorkedPiece(from, 'round').together(k).count),
  }),
  computation({
    given: ['depth', 'rowsPerIn', 'groups', 'every', 'first'],
    work: ({ depth, rowsPerIn, groups, every, first }) => {
      const rows = nearest(depth * rowsPerIn);
      const piece = new WorkedPiece(groups, 'round')
        .even(first - 1)
        .eachRepeat(groups, 1)
        .times(groups - 1, (sofar) => sofar.even(every - 1).eachRepeat(groups, 1))
        .even(rows - first - (groups - 1) * every);
      return { rows: piece.rows.length, at: piece.shapingRows };
    },
  }),
  computation({
    given: ['bust', 'sts', 'yoke', 'rounds'],
    work: ({ bust, sts, yoke, rounds }) => ({
      bust: nearest(bust * sts),
      yokeRounds: nearest(yoke * rounds),
    }),
  }),
];

/** A body and two sleeves joined into a round, an underarm held of each side of the body and of each sleeve. */
function joined({ body, sleeve, underarm }: Record<'body' | 'sleeve' | 'underarm', number>) {
  const ofHalf = half(new WorkedPiece(body).leave(underarm).count);
  const ofSleeve = new WorkedPiece(sleeve).leave(underarm, 0).count;
  const parts = [ofHalf, ofSleeve, ofHalf, ofSleeve].map((count) => ({ kind: 'stitches' as const, count }));
  return { half: ofHalf, sleeve: ofSleeve, yoke: pickUpEdge(parts).total };
}

const armholes = [
  computation({
    given: ['castOn', 'dec', 'bindOff', 'times', 'sh1', 'rows1', 'sh2', 'rows2'],
    work: ({ castOn, dec, bindOff, times, sh1, rows1, sh2, rows2 }) => {
      const body = new WorkedPiece(castOn).evenly(-dec);
      const above = body.leave(bindOff).shape(-2, times);
      const neck = atBeginnings(atBeginnings(above, rows1, sh1), rows2, sh2);
      return { body: body.count, aboveArmhole: above.count, neck: neck.count };
    },
  }),
  computation({
    given: ['castOn', 'first', 'second', 'to', 'sh', 'rows'],
    work: ({ castOn, first, second, to, sh, rows }) => {
      const boundOff = new WorkedPiece(castOn).leave(first).leave(second);
      const times = shapingRows(boundOff.count, to, 2);
      return { times, neck: atBeginnings(boundOff.shape(-2, times), rows, sh).count };
    },
  }),
  computation({
    topic: /armhole|bind-off/,
    given: ['stitches'],
    lists: ['each'],
    work: ({ stitches, each }) =>
      new WorkedPiece(stitches).counts(each.length, (piece, i) => piece.leave(each[i]!)).counts,
  }),
  computation({
    given: ['depth', 'rows', 'width', 'sts', 'cast'],
    asks: ['third'],
    work: ({ depth, rows, width, sts, cast }) => {
      const all = nearest(depth * rows);
      const left = nearest(width * sts);
      return { rows: all, third: nearest(all / 3), left, eachSide: half(cast - left) };
    },
  }),
  computation({
    given: ['armhole', 'top', 'capLess', 'rowsPerIn', 'sleeve'],
    lists: ['off'],
    work: ({ armhole, capLess, rowsPerIn, sleeve, off }) => {
      const exactRows = (armhole - capLess) * rowsPerIn;
      const stitches = new WorkedPiece(sleeve).counts(off.length, (piece, i) => piece.leave(off[i]!, 0)).piece
        .count;
      return { exactRows, rows: nearest(exactRows), stitches, eachSide: half(stitches) };
    },
  }),
];

const shouldersAndNecks = [
  computation({
    given: ['castOn', 'bo', 'times', 'neck'],
    work: ({ castOn, bo, times, neck }) => {
      const after = new WorkedPiece(castOn).leave(bo);
      const above = after.shape(-2, times).count;
      return { after: after.count, above, shoulder: half(above - neck) };
    },
  }),
  computation({
    given: ['stitches'],
    asks: ['workedOnTurns'],
    lists: ['steps'],
    work: ({ stitches, steps }) => {
      const turns = new WorkedPiece(stitches).counts(steps.length - 1, (piece, i) =>
        piece.leave(0, steps[i]!),
      );
      return { workedOnTurns: turns.counts, last: turns.piece.count };
    },
  }),
  computation({
    // The two lines of shaping begin on the same row; the shorter one ends first.
    given: ['left', 'centre', 'armTimes', 'neckTimes'],
    work: ({ left, centre, armTimes, neckTimes }) => {
      const eachSide = half(left - centre);
      const both = Math.min(armTimes, neckTimes);
      const side = new WorkedPiece(eachSide).shape(-2, both).shape(-1, Math.max(armTimes, neckTimes) - both);
      return { eachSide, left: side.count };
    },
  }),
];

const waists = [
  computation({
    given: ['hem', 'more', 'sleeve', 'held'],
    asks: ['waist'],
    work: ({ hem, more, sleeve, held }) => {
      const waist = new WorkedPiece(hem, 'round').shape(-perWaistRow, more + 1);
      return {
        waist: waist.count,
        half: half(waist.leave(held).count),
        sleeve: new WorkedPiece(sleeve, 'round').leave(held, 0).count,
      };
    },
  }),
  computation({
    given: ['hip', 'waist', 'sts', 'waistSts'],
    work: ({ hip, waist, sts }) => {
      const exact = (hip - waist) * sts;
      const stitches = fitCount(exact, [{ multiple: perWaistRow, plus: 0 }], 'nearest').count;
      const wide = nearest(hip * sts);
      return { hip: wide, exact, rounds: shapingRows(wide, wide - stitches, perWaistRow), stitches };
    },
  }),
];

const handsFeetAndHeads = [
  computation({
    given: ['heel', 'pick', 'instep', 'sock'],
    work: ({ heel, pick, instep, sock }) => {
      const parts = [heel, pick, instep, pick].map((count) => ({ kind: 'stitches' as const, count }));
      const foot = pickUpEdge(parts).total;
      return { foot, rounds: shapingRows(foot, sock, 2) };
    },
  }),
  computation({
    given: ['hand', 'from', 'to'],
    asks: ['increaseRounds'],
    work: ({ hand, from, to }) => {
      const increaseRounds = shapingRows(from, to, 2);
      return { increaseRounds, round: new WorkedPiece(hand, 'round').shape(2, increaseRounds).count };
    },
  }),
  computation({
    // What the gusset began on is added again over the thumb: the hand is as before.
    topic: /gusset; (\d+) added over the thumb/,
    given: ['castOn', 'thumb'],
    work: ({ castOn, thumb }, _request, [, added]) => {
      const rounds = shapingRows(Number(added), thumb, 2);
      const full = new WorkedPiece(castOn, 'round').shape(2, rounds);
      return { rounds, full: full.count, after: full.leave(thumb, 0).add(Number(added)).count };
    },
  }),
  computation({
    topic: /gusset/,
    given: ['start', 'rounds'],
    work: ({ start, rounds }) =>
      new WorkedPiece(start, 'round').counts(rounds, (piece) => piece.shape(2, 1)).counts,
  }),
  computation({
    topic: /crown/,
    given: ['stitches', 'wedges'],
    work: ({ stitches, wedges }) =>
      new WorkedPiece(stitches, 'round').counts(shapingRows(stitches, wedges, wedges), (piece) =>
        piece.eachRepeat(wedges, -1),
      ).counts,
  }),
  computation({
    topic: /crown of \(k(\d+), k2tog\) … \(k(\d+), k2tog\)/,
    given: ['stitches'],
    work: ({ stitches }, _request, [, first, last]) =>
      new WorkedPiece(stitches, 'round').counts(Number(first) - Number(last) + 1, (piece, i) =>
        piece.together(Number(first) - i),
      ).counts,
  }),
];

const circlesAndShawls = [
  computation({
    topic: /circle/,
    given: ['first', 'rounds'],
    work: ({ first, rounds }) => circle(first, first, rounds),
  }),
  computation({
    topic: /circle/,
    given: ['first', 'more', 'rounds'],
    work: ({ first, more, rounds }) => circle(first, more, rounds),
  }),
  computation({
    topic: /\bpi\b/,
    given: ['castOn', 'sections'],
    work: ({ castOn, sections }) =>
      new WorkedPiece(castOn, 'round').counts(sections, (piece) => piece.eachRepeat(piece.count, 1)).counts,
  }),
  computation({
    topic: /triangle from the neck/,
    given: ['castOn'],
    lists: ['rightSideRows'],
    work: ({ castOn, rightSideRows }) =>
      rightSideRows.map((rows) => new WorkedPiece(castOn).shape(perTriangleRow, rows).count),
  }),
];

/** The counts of a flat circle's rounds: the first, and each of the others with so many more. */
function circle(first: number, more: number, rounds: number): number[] {
  const start = new WorkedPiece(first, 'round').even(1);
  return [start.count, ...start.counts(rounds - 1, (piece) => piece.shape(more, 1, 1)).counts];
}

/** What can be computed today of published constructions. An example belongs to one of them at most. */
export const constructionComputations = [
  ...raglans,
  ...yokes,
  ...armholes,
  ...shouldersAndNecks,
  ...waists,
  ...handsFeetAndHeads,
  ...circlesAndShawls,
];
