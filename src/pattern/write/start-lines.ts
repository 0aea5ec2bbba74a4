import { foundationChain } from '../../craft';
import type { RepeatFit } from '../../notebook';
import { ordinal } from '../../formulas';
import { armholeLines, edgeLines } from './edge-lines';
import { chains, wordsFor } from './fabric-words';
import type { GatheredPiece, WorkedStretch } from './gathered';
import { startOf, type Start } from './piece-start';
import type { PieceWriter } from './piece-writer';
import { theirs } from './sentence';
import { counted, sizeList } from './size-list';
import type { PatternSource } from '../source';
import type { StretchBySize } from './stretches/stretch';

/** Whether the first row can be written with the start: it is plain in every size. */
function firstRowIsPlain({ sizes }: GatheredPiece, stretches: readonly StretchBySize[]): boolean {
  const [first] = stretches;
  if (!first || !sizes.every(({ plan, rows }) => rows[0]!.count === plan.start && rows[0]!.stretch === 0))
    return false;
  return first.sizes.every(
    ({ stretch }) => stretch.kind === 'even' || stretch.kind === 'taper' || stretch.kind === 'rows',
  );
}

/**
 * How a piece begins. A first row on the wrong side is told where no line names its side: rows begin on the right side
 * unless a pattern says so.
 *
 * @returns the rows that are written with it, 0 or 1
 */
export function startLines(
  source: PatternSource,
  writer: PieceWriter,
  piece: GatheredPiece,
  stretches: readonly StretchBySize[],
): 0 | 1 {
  const start = startOf(source, piece);
  const written = beginning(source, writer, piece, stretches, start);
  const pickedUpAsRow = writer.craft === 'crochet' && (start.kind === 'armhole' || start.kind === 'edge');
  if (sideOf(stretches) === 'WS' && written === 0 && !pickedUpAsRow) {
    writer.line('first row', 'Row 1 is a wrong-side row.');
  }
  return written;
}

const sideOf = (stretches: readonly StretchBySize[]) => stretches[0]!.sizes[0]!.side;

/**
 * How a piece begins. In crochet the first row is worked as it begins, into the chain or the edge: where that row is
 * plain it is written here.
 *
 * @returns the rows that are written with it, 0 or 1
 */
function beginning(
  source: PatternSource,
  writer: PieceWriter,
  piece: GatheredPiece,
  stretches: readonly StretchBySize[],
  start: Start,
): 0 | 1 {
  const counts = piece.sizes.map(({ plan }) => plan.start);
  const count = counted(counts, 'st');
  const plain = writer.craft === 'crochet' && firstRowIsPlain(piece, stretches);
  const side = sideOf(stretches);
  const one = `${writer.row === 'round' ? 'Round' : 'Row'} 1${side === 'round' ? '' : ` (${side})`}`;
  const round = writer.worked === 'round';
  const stitch = wordsFor(writer.craft, stretches[0]!.swatch?.stitch).basic;
  switch (start.kind) {
    case 'stitches': {
      const whole = writer.sizes.map(
        (size) => (start.isPart && source.number(size, start.piece, 'end')) || null,
      );
      const middle = counts.map((own, sizeIndex) => (whole[sizeIndex] ?? 0) - 2 * own);
      if (start.held && start.isSide && middle.every((many) => many > 0)) {
        writer.line(
          'start of side',
          `Take up the first {count} of the {whole} left at the end of {piece}, leaving the {middle} in the middle ${writer.craft === 'knitting' ? 'on a holder' : 'unworked'} and the last {count} for the other side.`,
          { count, whole: counted(whole, 'st'), piece: theirs(start.of), middle: counted(middle, 'st') },
        );
        if (round) marker(writer);
        return 0;
      }
      if (start.held && whole.some((many, sizeIndex) => many !== null && many > counts[sizeIndex]!)) {
        writer.line(
          'start of part',
          writer.craft === 'knitting'
            ? 'Take up {count} of the {whole} left at the end of {piece}, leaving the others on a holder.'
            : 'Take up {count} of the {whole} left at the end of {piece}, leaving the others unworked.',
          {
            count,
            whole: counted(whole, 'st'),
            piece: theirs(start.of),
          },
        );
        if (round) marker(writer);
        return 0;
      }
      writer.line(
        'start',
        start.held
          ? 'Take up the {count} left at the end of {piece}.'
          : 'Pick up {count} along the last row of {piece}.',
        {
          count,
          piece: theirs(start.of),
        },
      );
      if (round) marker(writer);
      return 0;
    }
    case 'armhole': {
      const along = armholeLines(source, writer, start.formula, counts);
      const where = along ? 'round the armhole, as follows' : 'evenly round the armhole';
      pickedUp(
        writer,
        `at the middle of the underarm`,
        where,
        plain ? { row: one, stitch, count } : { count },
        side,
      );
      along?.();
      if (round) marker(writer);
      return plain ? 1 : 0;
    }
    case 'edge':
      pickedUp(
        writer,
        '',
        'along the edge, as follows',
        plain ? { row: one, stitch, count } : { count },
        side,
      );
      edgeLines(source, writer, start.pickUp);
      if (round) marker(writer);
      return plain ? 1 : 0;
    case 'new':
      return writer.craft === 'knitting'
        ? castOn(writer, count, round)
        : chained(writer, counts, stretches, start.fit, plain, one, source);
  }
}

/**
 * Stitches picked up along an edge. In crochet that is a row: the first one where it is plain, which is then written
 * here, or the one that follows, which shapes as it picks up. So it is the side of that row that faces; in knitting row
 * 1 comes back over the stitches, so it is the other side: the right side, unless the piece is meant otherwise.
 */
function pickedUp(
  writer: PieceWriter,
  from: string,
  where: string,
  slots: { readonly count: string; readonly row?: string; readonly stitch?: string },
  side: WorkedStretch['side'],
): void {
  const facing = side === (writer.craft === 'crochet' ? 'WS' : 'RS') ? 'wrong' : 'right';
  const key = facing === 'wrong' ? 'start on the wrong side' : 'start';
  const address = from === '' ? '' : ` ${from}`;
  if (slots.row !== undefined && slots.stitch !== undefined) {
    writer.line(
      key,
      `{row}: with the ${facing} side facing, join the yarn${address} and work {stitch} ${where} [{count}].`,
      { row: slots.row, stitch: slots.stitch, count: slots.count },
    );
  } else if (writer.craft === 'crochet') {
    writer.line(
      key,
      `With the ${facing} side facing, join the yarn${address}: the next ${writer.row} picks up {count} ${where}.`,
      { count: slots.count },
    );
  } else {
    writer.line(
      key,
      `With the ${facing} side facing${from === '' ? '' : `, begin${address}`} and pick up {count} ${where}.`.replace(
        'facing and',
        'facing,',
      ),
      {
        count: slots.count,
      },
    );
  }
}

function marker(writer: PieceWriter): void {
  writer.paragraph('marker', 'Place a marker at the start of the round and move it up as you go.');
}

function castOn(writer: PieceWriter, count: string, round: boolean): 0 {
  writer.line('start', 'Cast on {count}.', { count });
  if (round) {
    writer.paragraph(
      'join',
      'Join to work in the round, without twisting the stitches; place a marker at the start of the round.',
    );
  }
  return 0;
}

/** A foundation chain, and the first row into it where that row is plain. */
function chained(
  writer: PieceWriter,
  counts: readonly number[],
  stretches: readonly StretchBySize[],
  fit: RepeatFit | undefined,
  plain: boolean,
  row: string,
  source: PatternSource,
): 0 | 1 {
  const { basic } = wordsFor('crochet', stretches[0]!.swatch?.stitch);
  const usual = chains[basic]!;
  const stated =
    fit?.chain && source.notebook.sizes[0]
      ? source.number(source.notebook.sizes[0].id, fit.id, 'chain.turning')
      : undefined;
  const turning = stated ?? usual.turning;
  const counts1 = stated === undefined ? usual.counts : fit!.chain!.counts && turning > 0;
  if (writer.worked === 'round') {
    writer.line('start', 'Ch {chain}.', { chain: sizeList(counts) });
    writer.paragraph(
      'join',
      'Join with a sl st in the first ch, without twisting the chain; place a marker at the start of the round.',
    );
    if (!plain) {
      writer.line('into', 'The next round is worked into the chain.');
      return 0;
    }
    writer.line('into', '{row}: {stitch} in each ch around [{count}].', {
      row,
      stitch: basic,
      count: counted(counts, 'st'),
    });
    return 1;
  }
  const chain = counts.map((stitches) => foundationChain({ stitches, turning, counts: counts1 }));
  const first = ordinal(turning + 1);
  writer.line('start', 'Ch {chain}.', { chain: sizeList(chain) });
  const counting = counts1 ? ` (the skipped ch count as 1 ${basic})` : '';
  if (plain) {
    const across = counts.every((stitches) => stitches === 1) ? '' : ' and in each ch across';
    writer.line('into', '{row}: {stitch} in the {first} ch from hook{counting}{across} [{count}].', {
      row,
      stitch: basic,
      first,
      counting,
      across,
      count: counted(counts, 'st'),
    });
    return 1;
  }
  writer.line(
    'into',
    'The next row is worked into the chain, beginning in the {first} ch from hook{counting} [{count}].',
    { first, counting, count: counted(counts, 'st') },
  );
  return 0;
}
