import type { Size, Swatch } from '../../../notebook';
import { swatchNamed, workedStretches, type GatheredPiece } from '../gathered';
import type { PatternPart } from '../../pattern-document';
import { fabricLine, PieceWriter } from '../piece-writer';
import { startOf } from '../piece-start';
import { startLines } from '../start-lines';
import { shown, theirs, type Sentences } from '../sentence';
import { counted } from '../size-list';
import type { PatternSource } from '../../source';
import { acrossLines } from '../stretches/across';
import { buttonholeLines, buttonholesOn } from '../stretches/buttonholes';
import { countedLines } from '../stretches/counted';
import { endsLines } from '../stretches/ends';
import { endsInRows } from '../stretches/ends-in-rows';
import { evenLines } from '../stretches/even';
import { gatherLines } from '../stretches/gather';
import type { StretchBySize } from '../stretches/stretch';
import { taperLines } from '../stretches/taper';

/**
 * A piece from its first stitch to its last, in all sizes at once.
 *
 * @param next the piece that is written after it, which may go on with its stitches
 */
export function piecePart(
  source: PatternSource,
  piece: GatheredPiece,
  next: GatheredPiece | undefined,
  sizes: readonly Size[],
  sentences: Sentences,
): PatternPart {
  const { cell } = piece;
  const writer = new PieceWriter(
    sentences,
    `piece ${cell.id}`,
    source.notebook.settings.craft,
    cell.worked,
    sizes,
  );
  const stretches = stretchesBySize(source, piece);
  let fabric: Swatch | undefined;
  const say = (stretch: StretchBySize): void => {
    if (stretch.swatch && stretch.swatch !== fabric) {
      writer.paragraph(`${stretch.name} fabric`, fabric ? 'Change to {fabric}.' : 'Work in {fabric}.', {
        fabric: theirs(fabricLine(stretch.swatch, writer.craft)),
      });
      fabric = stretch.swatch;
    }
  };
  const [opening] = stretches;
  if (opening) say(opening);
  const done = new Map<number, number>([[0, startLines(source, writer, piece, stretches)]]);
  let heading = '';
  let shownTo = -1;
  stretches.forEach((stretch, at) => {
    // Its rows were told with the stitches that are left or added on them.
    if (at < shownTo) return;
    if (stretch.sizes.every(({ counts }) => counts.length === 0) && !endsOnly(stretch)) return;
    say(stretch);
    const goesOn = stretch.label === '' || stretch.label === heading;
    if (!goesOn) writer.apart();
    const before = writer.blocks.length;
    const ends = endsOnly(stretch) ? endsInRows(stretches, at) : undefined;
    if (ends) endsLines(writer, stretch, { ...ends, on: stretches[ends.last]! });
    else {
      const own = { ...stretch, done: done.get(at) ?? 0 };
      const holes =
        own.sizes[0]!.stretch.kind === 'even' ? buttonholesOn(source, writer, cell, own) : undefined;
      if (!holes || !buttonholeLines(writer, own, holes)) stretchLines(writer, own);
    }
    if (ends && writer.blocks.length > before) {
      shownTo = ends.last;
      done.set(ends.last, 1);
    }
    // A stretch that its first row was all of has nothing more to say. Stretches under one label, such as the two
    // bind-offs of an armhole, are read under one heading.
    if (writer.blocks.length === before) return;
    heading = stretch.label;
    if (goesOn) return;
    writer.blocks.splice(before, 0, {
      kind: 'heading',
      key: `${writer.key} ${stretch.name} heading`,
      text: shown(stretch.label),
    });
  });
  finish(writer, piece, next !== undefined && !goesOnWith(source, next, piece));
  if (cell.note) writer.paragraph('note', '{note}', { note: theirs(cell.note) });
  return {
    key: writer.key,
    kind: 'piece',
    cell: cell.id,
    heading: shown(cell.label),
    blocks: writer.blocks,
  };
}

function endsOnly({ sizes }: StretchBySize): boolean {
  const kind = sizes[0]!.stretch.kind;
  return kind === 'leave' || kind === 'add';
}

function stretchesBySize(source: PatternSource, { cell, sizes }: GatheredPiece): StretchBySize[] {
  const worked = sizes.map(workedStretches);
  return cell.stretches.map(({ name, label, fabric }, at) => ({
    name,
    label,
    swatch: swatchNamed(source, fabric),
    sizes: worked.map((stretches) => stretches[at]!),
    done: 0,
  }));
}

function stretchLines(writer: PieceWriter, stretch: StretchBySize): void {
  switch (stretch.sizes[0]!.stretch.kind) {
    case 'even':
      return evenLines(writer, stretch);
    case 'taper':
      return taperLines(writer, stretch);
    case 'evenly':
    case 'eachRepeat':
      return acrossLines(writer, stretch);
    case 'gather':
      return gatherLines(writer, stretch);
    case 'rows':
      return countedLines(writer, stretch);
    case 'leave':
    case 'add':
      return endsLines(writer, stretch);
  }
}

function goesOnWith(source: PatternSource, next: GatheredPiece, { cell }: GatheredPiece): boolean {
  const start = startOf(source, next);
  return start.kind === 'stitches' && start.piece === cell.id;
}

/** @param interrupted whether another piece is worked, and wants the needles, before its held stitches are gone on with */
function finish(writer: PieceWriter, { cell, sizes }: GatheredPiece, interrupted: boolean): void {
  const count = counted(
    sizes.map(({ rows }) => rows.at(-1)!.count),
    'st',
  );
  const knitting = writer.craft === 'knitting';
  if (cell.ends === 'held') {
    writer.line(
      'end',
      knitting
        ? interrupted
          ? 'Do not bind off: leave the {count} on a holder.'
          : 'Do not bind off: keep the {count} on the needle.'
        : 'Do not fasten off: keep the last {count} open.',
      { count },
    );
  } else {
    writer.line('end', knitting ? 'Bind off all {count}.' : 'Fasten off.', knitting ? { count } : {});
  }
}
