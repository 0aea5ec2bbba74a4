import { foundationChain, pickUp, pickUpRatio } from '../craft';
import {
  allCells,
  inputsOf,
  nameTable,
  namesIn,
  sameName,
  type Cell,
  type EdgePart,
  type PickUpCell,
  type PieceCell,
  type RepeatFit,
} from '../notebook';
import { byShape } from './by-shape';
import { chains, wordsFor } from './fabric-words';
import type { GatheredPiece } from './gathered';
import type { PieceWriter } from './piece-writer';
import { theirs } from './sentence';
import { groupWords, inBlocks, shapeOfBlocks } from './pick-up-groups';
import { counted, ordinal, sizeList, type BySize } from './size-list';
import type { PatternSource } from './source';
import type { StretchBySize } from './stretches/stretch';
import { lengthIn } from './written';

/** Where the first stitches of a piece come from. */
export type Start =
  | { readonly kind: 'new'; readonly fit?: RepeatFit }
  | { readonly kind: 'edge'; readonly pickUp: PickUpCell }
  | { readonly kind: 'armhole' }
  | { readonly kind: 'stitches'; readonly of: string; readonly held: boolean };

/**
 * Where the first stitches of a piece come from, read off the formula of its count: a pick-up, an armhole, the last
 * row of another piece, or new ones. A formula cell that only passes a count on is followed.
 */
export function startOf(source: PatternSource, piece: GatheredPiece): Start {
  const { notebook } = source;
  const table = nameTable(notebook);
  const byId = new Map<string, Cell>(allCells(notebook).map((cell) => [cell.id, cell]));
  let formula = 'formula' in piece.cell.start ? piece.cell.start.formula : '';
  for (let followed = 0; followed < 8; followed++) {
    if (/^\s*=?\s*JOINARMHOLE\s*\(/iu.test(formula)) return { kind: 'armhole' };
    const names = namesIn(formula);
    // A part of another piece's last row: its end, less what is left out.
    const left = names.length > 1 ? endNamed(names, table, byId, piece.cell.id) : undefined;
    if (left) return { kind: 'stitches', of: left.label, held: left.ends === 'held' };
    const only = formula.trim().replace(/^=\s*/u, '');
    const named = names.length === 1 ? table.get(sameName(names[0]!)) : undefined;
    const cell = named && byId.get(named.cell);
    if (!named || !cell || sameName(only) !== sameName(names[0]!)) break;
    if (cell.kind === 'pickUp' && named.key === 'total') return { kind: 'edge', pickUp: cell };
    if (
      cell.kind === 'piece' &&
      cell.id !== piece.cell.id &&
      (named.key === 'end' || named.key.endsWith('.last'))
    ) {
      return { kind: 'stitches', of: cell.label, held: cell.ends === 'held' };
    }
    if (cell.kind === 'fit') return { kind: 'new', fit: cell };
    const input = inputsOf(cell).find((one) => one.key === named.key);
    const next =
      cell.kind === 'formula' ? cell.formula : input && 'formula' in input.entry ? input.entry.formula : '';
    if (next === '') break;
    formula = next;
  }
  return { kind: 'new' };
}

/** The other piece whose end a formula begins with. */
function endNamed(
  names: readonly string[],
  table: ReturnType<typeof nameTable>,
  byId: ReadonlyMap<string, Cell>,
  own: string,
): PieceCell | undefined {
  const named = table.get(sameName(names[0]!));
  const cell = named && byId.get(named.cell);
  return cell?.kind === 'piece' && cell.id !== own && named?.key === 'end' ? cell : undefined;
}

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
 * How a piece begins. In crochet the first row is worked as it begins, into the chain or the edge: where that row is
 * plain it is written here.
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
  const counts = piece.sizes.map(({ plan }) => plan.start);
  const count = counted(counts, 'st');
  const plain = writer.craft === 'crochet' && firstRowIsPlain(piece, stretches);
  const side = stretches[0]!.sizes[0]!.side;
  const one = `${writer.row === 'round' ? 'Round' : 'Row'} 1${side === 'round' ? '' : ` (${side})`}`;
  const round = writer.worked === 'round';
  const stitch = wordsFor(writer.craft, stretches[0]!.swatch?.stitch).basic;
  switch (start.kind) {
    case 'stitches':
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
    case 'armhole':
      if (plain) {
        writer.line(
          'start',
          '{row}: with the right side facing, join the yarn at the middle of the underarm and work {stitch} evenly round the armhole [{count}].',
          { row: one, stitch, count },
        );
      } else {
        writer.line(
          'start',
          'With the right side facing, begin at the middle of the underarm and pick up {count} evenly round the armhole.',
          { count },
        );
      }
      if (round) marker(writer);
      return plain ? 1 : 0;
    case 'edge': {
      if (plain) {
        writer.line(
          'start',
          '{row}: with the right side facing, join the yarn and work {stitch} along the edge, as follows [{count}].',
          { row: one, stitch, count },
        );
      } else {
        writer.line('start', 'With the right side facing, pick up {count} along the edge, as follows.', {
          count,
        });
      }
      edgeLines(source, writer, start.pickUp);
      if (round) marker(writer);
      return plain ? 1 : 0;
    }
    case 'new':
      return writer.craft === 'knitting'
        ? castOn(writer, count, round)
        : chained(writer, counts, stretches, start.fit, plain, one, source);
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
  const told =
    fit?.chain && source.notebook.sizes[0]
      ? source.number(source.notebook.sizes[0].id, fit.id, 'chain.turning')
      : undefined;
  const turning = told ?? usual.turning;
  const counts1 = told === undefined ? usual.counts : fit!.chain!.counts && turning > 0;
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

/** Each stretch of an edge, with its stitches, its ratio, and how they come out even. */
export function edgeLines(source: PatternSource, writer: PieceWriter, cell: PickUpCell): void {
  const number = (key: string): BySize<number> =>
    writer.sizes.map((size) => source.number(size, cell.id, key) ?? null);
  for (const part of cell.edge) {
    const share = number(`${part.name}.share`).map((count) => count || null);
    const own = (field: string): BySize<number> => number(`${part.name}.${field}`);
    if (share.every((count) => !count)) continue;
    const sts = counted(share, 'st');
    const key = `edge ${cell.id} ${part.name}`;
    partLine(source, writer, part, key, sts, own);
    if (part.kind === 'rows') groupLines(writer, key, own('rows'), share);
  }
}

function partLine(
  source: PatternSource,
  writer: PieceWriter,
  part: EdgePart,
  key: string,
  sts: string,
  own: (field: string) => BySize<number>,
): void {
  const label = theirs(part.label);
  switch (part.kind) {
    case 'rows':
      writer.line(key, '{edge}: {count} over {rows}, {ratio}.', {
        edge: label,
        count: sts,
        rows: counted(own('rows'), 'row end'),
        ratio: ratio(...simple(own('pick'), own('of'))),
      });
      return;
    case 'stitches':
      writer.line(key, '{edge}: {count}, one in each st.', { edge: label, count: sts });
      return;
    case 'motifs':
      writer.line(key, '{edge}: {count} over {motifs}, about {each} in each.', {
        edge: label,
        count: sts,
        motifs: counted(own('motifs'), 'repeat'),
        each: sizeList(own('each')),
      });
      return;
    case 'curve':
      writer.line(key, '{edge}: {count}, spread evenly along {length}.', {
        edge: label,
        count: sts,
        length: lengthIn(source.notebook.settings, own('length')),
      });
  }
}

/** A ratio of large numbers, such as all the stitches over all the rows, as the nearest that can be kept in mind. */
function simple(pick: BySize<number>, of: BySize<number>): [BySize<number>, BySize<number>] {
  const small = pick.map((stitches, place) => {
    const rows = of[place];
    if (!stitches || !rows || rows <= 8) return { pick: stitches, of: rows ?? null };
    return pickUpRatio({ rowsPerCm: rows, stitchesPerCm: stitches });
  });
  return [small.map((one) => one.pick), small.map((one) => one.of)];
}

/** "about 3 in every 4" */
function ratio(pick: BySize<number>, of: BySize<number>): string {
  const every = of.every((rows) => rows === null || rows === 1);
  return `about ${sizeList(pick)} in every ${every ? 'one' : sizeList(of)}`;
}

/** The groups of a pick-up as words, where sizes agree in shape in one line. */
function groupLines(writer: PieceWriter, key: string, rows: BySize<number>, share: BySize<number>): void {
  const groups = rows.map((ends, place) => {
    const stitches = share[place];
    return ends && stitches ? inBlocks(pickUp({ rows: ends, stitches }).groups) : null;
  });
  const text = (places: readonly number[]): string =>
    groupWords(places.map((place) => groups[place] ?? null));
  writer.byGroups(
    `${key} groups`,
    byShape(groups.map((blocks) => blocks && shapeOfBlocks(blocks))),
    () =>
      writer.line(`${key} groups`, 'To come out even: {groups}.', {
        groups: text(rows.map((_row, place) => place)),
      }),
    () => writer.line(`${key} groups`, 'To come out even, as follows for your size:'),
    text,
  );
}
