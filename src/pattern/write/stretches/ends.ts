import type { PieceWriter } from '../piece-writer';
import { counted, sizeList, type BySize } from '../size-list';
import type { EndsInRows } from './ends-in-rows';
import type { StretchBySize } from './stretch';

/**
 * Stitches left at the ends of a row, or new ones put there. They have no row of their own: they are told with the
 * rows that are worked even with them, or else as the beginning of the row that is told next.
 */
export function endsLines(
  writer: PieceWriter,
  stretch: StretchBySize,
  stated?: EndsInRows & { readonly on: StretchBySize },
): void {
  const ends = stretch.sizes.map(({ stretch: plan, from }) => {
    if (plan.kind !== 'leave' && plan.kind !== 'add') return null;
    const both = plan.atStart + plan.atEnd;
    if (both === 0) return null;
    const after = plan.kind === 'leave' ? from - both : from + both;
    return { start: plan.atStart || null, end: plan.atEnd || null, after };
  });
  if (ends.every((one) => one === null)) return;
  const start = ends.map((one) => one && one.start);
  const end = ends.map((one) => one && one.end);
  const leave = stretch.sizes[0]!.stretch.kind === 'leave';
  const atStart = start.some((count) => count !== null);
  const atEnd = end.some((count) => count !== null);
  const key = `${stretch.name} ${atStart ? 'start' : ''}${atEnd ? 'end' : ''}`;
  const slots = {
    ...(atStart ? { start: stitches(start) } : {}),
    ...(atEnd ? { end: stitches(end) } : {}),
  };
  if (!stated) {
    writer.line(key, leave ? leaving(writer, atStart, atEnd) : adding(writer, atStart, atEnd), {
      ...slots,
      which: writer.begun ? 'On the same' : 'On the next',
      row: writer.row,
      count: counted(
        ends.map((one) => one && one.after),
        'st',
      ),
    });
    writer.begun = true;
    return;
  }
  const count = counted(
    stated.on.sizes.map(({ counts }) => counts[0]!),
    'st',
  );
  if (stated.rows > 1) {
    writer.line(`${key} of rows`, leave ? leavingEach(writer) : addingEach(writer), {
      ...slots,
      rows: `${stated.rows} ${writer.row}s`,
      count,
    });
    return;
  }
  const next = writer.next(stated.on.sizes.map(({ side }) => side));
  const work = leave ? leavingRow(writer, atStart, atEnd) : addingRow(writer, atStart, atEnd);
  writer.line(`${key} of row`, `{next}: ${work} [{count}].`, { ...slots, next, count });
}

/** "8 sts", or "8 (–) sts" */
const stitches = (counts: BySize<number>): string =>
  counts.every((count) => count === null || count === 1)
    ? `${sizeList(counts)} st`
    : `${sizeList(counts)} sts`;

function leaving({ craft }: PieceWriter, start: boolean, end: boolean): string {
  const first = craft === 'crochet' ? 'sl st across the first {start}' : 'bind off the first {start}';
  const last = craft === 'crochet' ? 'leave the last {end} unworked' : 'leave the last {end} on a holder';
  const what = [start ? first : '', end ? last : ''].filter(Boolean).join(' and ');
  return `{which} {row}, ${what}, working the other {count} as follows, that {row} included.`;
}

function adding({ craft }: PieceWriter, start: boolean, end: boolean): string {
  const verb = craft === 'crochet' ? 'add a foundation of' : 'cast on';
  const what = [start ? '{start} at the start' : '', end ? '{end} at the end' : ''].filter(Boolean);
  return `{which} {row}, ${verb} ${what.join(' and ')}, working {count} in all as follows, that {row} included.`;
}

function leavingRow({ craft }: PieceWriter, start: boolean, end: boolean): string {
  const first = craft === 'crochet' ? 'sl st across the first {start}' : 'bind off the first {start}';
  const last = craft === 'crochet' ? 'leaving the last {end} unworked' : 'leaving the last {end} on a holder';
  const work = end ? `work even, ${last}` : 'work even to the end';
  return start ? `${first}, then ${work}` : work;
}

function addingRow({ craft }: PieceWriter, start: boolean, end: boolean): string {
  const verb = craft === 'crochet' ? 'add a foundation of' : 'cast on';
  return [start ? `${verb} {start}` : '', 'work even to the end', end ? `${verb} {end}` : '']
    .filter(Boolean)
    .join(', then ');
}

function leavingEach({ craft }: PieceWriter): string {
  return craft === 'crochet'
    ? 'Sl st across {start} at the start of each of the next {rows}, working the others even [{count}].'
    : 'Bind off {start} at the start of the next {rows} [{count}].';
}

function addingEach({ craft }: PieceWriter): string {
  return craft === 'crochet'
    ? 'Add a foundation of {start} at the start of each of the next {rows} [{count}].'
    : 'Cast on {start} at the start of the next {rows} [{count}].';
}
