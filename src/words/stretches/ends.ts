import type { PieceWriter } from '../piece-writer';
import { counted, sizeList, type BySize } from '../size-list';
import type { StretchBySize } from './stretch';

/** Stitches left at the ends of the next row, or new ones put there. They have no row of their own. */
export function endsLines(writer: PieceWriter, stretch: StretchBySize): void {
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
  const after = ends.map((one) => one && one.after);
  const leave = stretch.sizes[0]!.stretch.kind === 'leave';
  const atStart = start.some((count) => count !== null);
  const atEnd = end.some((count) => count !== null);
  const key = `${stretch.name} ${atStart ? 'start' : ''}${atEnd ? 'end' : ''}`;
  writer.line(key, leave ? leaving(writer, atStart, atEnd) : adding(writer, atStart, atEnd), {
    row: writer.row,
    ...(atStart ? { start: stitches(start) } : {}),
    ...(atEnd ? { end: stitches(end) } : {}),
    count: counted(after, 'st'),
  });
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
  return `On the next {row}, ${what}, working the other {count} as follows.`;
}

function adding({ craft }: PieceWriter, start: boolean, end: boolean): string {
  const verb = craft === 'crochet' ? 'add a foundation of' : 'cast on';
  const what = [start ? '{start} at the start' : '', end ? '{end} at the end' : ''].filter(Boolean);
  return `On the next {row}, ${verb} ${what.join(' and ')}, working {count} in all as follows.`;
}
