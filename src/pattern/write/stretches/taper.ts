import { capital } from '../../../format';
import { byShape } from '../by-shape';
import { wordsFor } from '../fabric-words';
import { spacingPhrase, type RowPlan } from '../spacing-phrase';
import type { WorkedStretch } from '../gathered';
import { at, stitchCount, type PieceWriter } from '../piece-writer';
import { counted, type BySize } from '../size-list';
import {
  positionOf,
  rowNames,
  runShape,
  runsPhrase,
  shapingWords,
  taperForms,
  type TaperForm,
  type TaperRows,
} from '../taper-phrase';
import { endsOf, type StretchBySize } from './stretch';

/** A taper in one size, told from the counts of its rows. */
function taperRows({ from, counts }: WorkedStretch, done: number): TaperRows {
  const rows = counts.flatMap((count, row) =>
    count === (row === 0 ? from : counts[row - 1]!) ? [] : [row + 1 - done],
  );
  const to = counts.at(-1) ?? from;
  return {
    way: to < from ? 'dec' : 'inc',
    perRow: rows.length > 0 ? Math.abs(to - from) / rows.length : 0,
    rows,
    over: counts.length - done,
  };
}

type WordedTaper = TaperRows & { readonly form: Exclude<TaperForm, { kind: 'named' }> };

/** "Dec 1 st at each end of every 6th row 8 times, then of every 4th row 5 times [43 sts]." */
export function taperLines(writer: PieceWriter, stretch: StretchBySize): void {
  const tapers = stretch.sizes.map((size) => taperRows(size, stretch.done));
  const shaped = tapers.filter(({ rows }) => rows.length > 0);
  const more = stretch.done > 0 ? 'more ' : '';
  if (shaped.length === 0) {
    writer.even(
      stretch.name,
      tapers.map(({ over }) => over || null),
      more,
    );
    return;
  }
  const edge = edgeOf(stretch.label);
  const forms = tapers.map((taper) => taperForms(taper));
  const has = (kind: TaperForm['kind']): boolean =>
    forms.every((list) => list.length === 0 || list.some((form) => form.kind === kind));
  const kind = has('every') ? 'every' : has('next') ? 'next' : 'named';
  if (kind === 'named') {
    namedRows(writer, stretch, tapers, edge);
    return;
  }
  const worded = tapers.map((taper, sizeIndex): WordedTaper | null => {
    const form = forms[sizeIndex]!.find((one) => one.kind === kind);
    return form && form.kind !== 'named' ? { ...taper, form } : null;
  });
  const ends = endsOf(stretch);
  const shapes = groupsOf(writer, worded, edge);
  const plain = tapers.flatMap(({ over, rows }, sizeIndex) =>
    rows.length === 0 && over > 0 ? [sizeIndex] : [],
  );
  const groups = shapes.length > 1 && plain.length > 0 ? [...shapes, plain] : shapes;
  const count = stitchCount(ends.map((end, sizeIndex) => (tapers[sizeIndex]!.over > 0 ? end : null)));
  const parts = (sizeIndices: readonly number[]) => {
    const own = at(worded, sizeIndices);
    return {
      lead: at(
        tapers.map(({ over }, sizeIndex) => (worded[sizeIndex] ? worded[sizeIndex].form.lead : over)),
        sizeIndices,
      ).map((rows) => rows || null),
      shaping: own.every((one) => one === null) ? '' : shapingOf(writer, own, edge),
      tail: own.map((one) => (one && one.form.tail) || null),
    };
  };
  const all = worded.map((_one, sizeIndex) => sizeIndex);
  writer.byGroups(
    stretch.name,
    groups,
    () => {
      const { lead, shaping, tail } = parts(all);
      writer.even(`${stretch.name} before`, lead, more);
      writer.line(`${stretch.name} shaping ${kind}`, '{shaping} [{count}].', {
        shaping: capital(shaping),
        count: stitchCount(ends.map((end, sizeIndex) => (worded[sizeIndex] ? end : null))),
      });
      firstRound(writer, stretch, worded);
      writer.even(`${stretch.name} after`, tail);
    },
    () =>
      writer.line(stretch.name, 'Shape the next {rows} as follows for your size [{count}].', {
        rows: counted(
          tapers.map(({ over }) => over || null),
          writer.row,
        ),
        count,
      }),
    (sizeIndices) => {
      const { lead, shaping, tail } = parts(sizeIndices);
      const even = (rows: BySize<number>): string =>
        rows.every((one) => one === null) ? '' : `work ${counted(rows, writer.row)} even`;
      return [even(lead), shaping, even(tail)].filter(Boolean).join('; ');
    },
  );
}

/**
 * How the first of several rounds is worked that each take as many wedges of stitches: the others follow from it.
 */
function firstRound(writer: PieceWriter, stretch: StretchBySize, worded: BySize<WordedTaper>): void {
  const some = worded.find((one) => one !== null);
  if (!some || writer.worked !== 'round' || some.perRow < 3) return;
  const plans = worded.map((one, sizeIndex): RowPlan | null => {
    if (!one) return null;
    const { from } = stretch.sizes[sizeIndex]!;
    const uses = one.way === 'dec' ? 2 : 0;
    const gaps = new Array<number>(one.perRow).fill(from / one.perRow - uses);
    return { kind: one.way === 'dec' ? 'decrease' : 'increase', gaps, last: 0 };
  });
  const words = wordsFor(writer.craft, stretch.swatch?.stitch, 'round');
  const fits = plans.every((plan) => !plan || (Number.isInteger(plan.gaps[0]) && plan.gaps[0]! > 1));
  if (!fits || worded.some((one) => !one || one.rows.length < 2)) return;
  writer.line(
    `${stretch.name} first ${some.way}`,
    some.way === 'dec'
      ? 'The first of these rounds: {work}. Each one after it has 1 st fewer between the decreases.'
      : 'The first of these rounds: {work}. Each one after it has 1 st more between the increases.',
    { work: spacingPhrase(plans, words, 'round') },
  );
}

function groupsOf(writer: PieceWriter, worded: BySize<WordedTaper>, edge: string): number[][] {
  const shape = (one: WordedTaper, length: number): string => {
    const { where } = positionOf(one.perRow, writer.worked, edge);
    return [one.way, where, runShape(one.form.runs.slice(0, length))].join(' ');
  };
  // A size with one run goes with those that have two, where its second is a dash.
  const longest = new Map<string, string>();
  for (const one of worded) {
    if (one && one.form.runs.length > 1) longest.set(shape(one, 1), shape(one, 2));
  }
  const shapes = worded.map((one) => {
    if (!one) return null;
    if (one.form.runs.length === 0) {
      const like = [...longest].find(([key]) => key.startsWith(shape(one, 0).trimEnd()));
      const single = worded.find(
        (other) => other && other.form.runs.length === 1 && shape(other, 0) === shape(one, 0),
      );
      return like?.[1] ?? (single ? shape(single, 1) : shape(one, 0));
    }
    return one.form.runs.length === 1 ? (longest.get(shape(one, 1)) ?? shape(one, 1)) : shape(one, 2);
  });
  return byShape(shapes);
}

function shapingOf(writer: PieceWriter, worded: BySize<WordedTaper>, edge: string): string {
  const some = worded.find((one) => one !== null)!;
  const { where, on } = positionOf(some.perRow, writer.worked, edge);
  const each = worded.map((one) => one && positionOf(one.perRow, writer.worked, edge).each);
  const words = shapingWords(some.way, each, where);
  const runs = worded.map((one) => one && one.form.runs);
  if (some.form.kind === 'every') return `${words} ${runsPhrase(runs, writer.row, on)}`;
  const then = runsPhrase(runs, writer.row, on);
  return `${words} ${on} the next ${writer.row}${then === '' ? '' : `, then ${then}`}`;
}

/** Shaping rows that come in no order that could be said: they are named one by one. */
function namedRows(
  writer: PieceWriter,
  stretch: StretchBySize,
  tapers: readonly TaperRows[],
  edge: string,
): void {
  const shapes = tapers.map(({ way, perRow, rows }) =>
    rows.length === 0
      ? null
      : [way, positionOf(perRow, writer.worked, edge).where, rowNames(rows, writer.row)].join(' '),
  );
  const text = (sizeIndices: readonly number[]): string => {
    const some = tapers[sizeIndices.find((sizeIndex) => shapes[sizeIndex] !== null)!]!;
    const { where, on } = positionOf(some.perRow, writer.worked, edge);
    const each = sizeIndices.map((sizeIndex) =>
      shapes[sizeIndex] === null ? null : positionOf(tapers[sizeIndex]!.perRow, writer.worked, edge).each,
    );
    return `${shapingWords(some.way, each, where)} ${on} ${rowNames(some.rows, writer.row)}`;
  };
  // Sizes that shape nowhere have no row to name.
  const even = tapers.flatMap(({ rows, over }, sizeIndex) =>
    rows.length === 0 && over > 0 ? [sizeIndex] : [],
  );
  const groups = byShape(shapes).map((sizeIndices) =>
    sizeIndices.filter((sizeIndex) => shapes[sizeIndex] !== null),
  );
  const over = counted(
    tapers.map((taper) => taper.over || null),
    writer.row,
  );
  const count = stitchCount(
    endsOf(stretch).map((end, sizeIndex) => (tapers[sizeIndex]!.over > 0 ? end : null)),
  );
  writer.byGroups(
    `${stretch.name} rows`,
    even.length > 0 ? [...groups, even] : groups,
    () =>
      writer.line(`${stretch.name} rows`, 'Work {rows}; of these, {shaping} [{count}].', {
        rows: over,
        shaping: text(tapers.map((_taper, sizeIndex) => sizeIndex)),
        count,
      }),
    () =>
      writer.line(
        `${stretch.name} rows`,
        'Work {rows}, shaping as follows for your size; the numbers count these {row} [{count}].',
        { rows: over, row: `${writer.row}s`, count },
      ),
    (sizeIndices) => (shapes[sizeIndices[0]!] === null ? 'work even' : text(sizeIndices)),
  );
}

/** Which edge is shaped where only one is: the label of the stretch may say. */
function edgeOf(label: string): string {
  return /\bneck/iu.test(label) ? 'neck' : /\barmhole/iu.test(label) ? 'armhole' : 'shaped';
}
