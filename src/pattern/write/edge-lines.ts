import { joinArmhole, pickUp, pickUpRatio } from '../../craft';
import type { EdgePart, PickUpCell } from '../../notebook';
import { byShape } from './by-shape';
import { groupWords, inBlocks, shapeOfBlocks, type Along } from './pick-up-groups';
import type { PieceWriter } from './piece-writer';
import { theirs } from './sentence';
import { counted, sizeList, type BySize } from './size-list';
import type { PatternSource } from '../source';
import { argumentsOf } from './work-out';
import { lengthIn } from './written';

/** Each stretch of an edge, with its stitches, its ratio, and how they come out even. */
export function edgeLines(source: PatternSource, writer: PieceWriter, cell: PickUpCell): void {
  const number = (key: string): BySize<number> =>
    writer.sizes.map((size) => source.number(size, cell.id, key) ?? null);
  for (const part of cell.edge) {
    const share = number(`${part.name}.share`).map((count) => count || null);
    const own = (field: string): BySize<number> =>
      number(`${part.name}.${field}`).map((value, sizeIndex) => (share[sizeIndex] ? value : null));
    if (share.every((count) => !count)) continue;
    const key = `edge ${cell.id} ${part.name}`;
    partLine(source, writer, part, key, share, own);
    const edge = countedEdge(part, own);
    if (edge && !isAsWanted(share, edge)) groupLines(writer, key, edge.many, share, edge.along);
  }
}

/** What a stretch of an edge is counted in, how many there are, and how many stitches each takes. */
interface CountedEdge {
  readonly along: Along;
  readonly many: BySize<number>;
  /** Missing of row ends, which take a ratio. */
  readonly each?: BySize<number>;
}

function countedEdge(part: EdgePart, own: (field: string) => BySize<number>): CountedEdge | undefined {
  switch (part.kind) {
    case 'rows':
      return { along: 'row end', many: own('rows') };
    case 'stitches':
      return { along: 'st', many: own('count'), each: own('count').map((count) => count && 1) };
    case 'motifs':
      return { along: 'repeat', many: own('motifs'), each: own('each') };
    case 'curve':
      return undefined;
  }
}

/** Whether each stitch or repeat takes just what is asked of it, in every size, so that nothing is to be spread. */
function isAsWanted(share: BySize<number>, { many, each }: CountedEdge): boolean {
  return (
    each !== undefined &&
    share.every((count, sizeIndex) => !count || count === many[sizeIndex]! * each[sizeIndex]!)
  );
}

function partLine(
  source: PatternSource,
  writer: PieceWriter,
  part: EdgePart,
  key: string,
  share: BySize<number>,
  own: (field: string) => BySize<number>,
): void {
  const sts = counted(share, 'st');
  const label = theirs(part.label);
  switch (part.kind) {
    case 'rows':
      writer.line(key, '{edge}: {count} over {rows}, {ratio}.', {
        edge: label,
        count: sts,
        rows: counted(own('rows'), 'row end'),
        ratio: ratio(own('rows'), share, own('pick'), own('of')),
      });
      return;
    case 'stitches':
      if (isAsWanted(share, countedEdge(part, own)!)) {
        writer.line(key, '{edge}: {count}, one in each st.', { edge: label, count: sts });
        return;
      }
      // The count was fitted to a multiple, so some are skipped, or take two.
      writer.line(`${key} fitted`, '{edge}: {count} over {tops}, {ratio}.', {
        edge: label,
        count: sts,
        tops: counted(own('count'), 'st'),
        ratio: ratio(own('count'), share, own('count'), own('count')),
      });
      return;
    case 'motifs': {
      const exact = isAsWanted(share, countedEdge(part, own)!);
      const slots = {
        edge: label,
        count: sts,
        motifs: counted(own('motifs'), 'repeat'),
        each: sizeList(exact ? own('each') : inEach(own('motifs'), share, own('each'))),
      };
      if (exact) writer.line(`${key} exact`, '{edge}: {count} over {motifs}, {each} in each.', slots);
      else writer.line(key, '{edge}: {count} over {motifs}, about {each} in each.', slots);
      return;
    }
    case 'curve':
      writer.line(key, '{edge}: {count}, spread evenly along {length}.', {
        edge: label,
        count: sts,
        length: lengthIn(source.notebook.settings, own('length')),
      });
  }
}

/**
 * The lines of an armhole that a sleeve is worked from: up one side, down the other, and across the underarm. Undefined
 * where the numbers of `JOINARMHOLE` cannot be told, or are not those the piece starts on.
 */
export function armholeLines(
  source: PatternSource,
  writer: PieceWriter,
  formula: string,
  starts: readonly number[],
): (() => void) | undefined {
  const sizes = writer.sizes.map((size, sizeIndex) => {
    const stated = argumentsOf(source, size, formula, 'JOINARMHOLE');
    const [sideRows, pick, of, underarm, seam] = stated ?? [];
    const all = [sideRows, pick, of, underarm, seam];
    if (
      all.length !== stated?.length ||
      !all.every((one) => one !== undefined && Number.isInteger(one) && one >= 0)
    ) {
      return undefined;
    }
    const numbers = { sideRows: sideRows!, pick: pick!, of: of!, underarm: underarm!, seam: seam! };
    if (numbers.sideRows < 1 || numbers.pick < 1 || numbers.of < 1) return undefined;
    const side = (joinArmhole(numbers) - numbers.underarm - numbers.seam) / 2;
    return side > 0 && joinArmhole(numbers) === starts[sizeIndex] ? { ...numbers, side } : undefined;
  });
  const known = sizes.filter((size) => size !== undefined);
  if (known.length !== sizes.length) return undefined;
  const of = (value: (size: (typeof known)[number]) => number): BySize<number> =>
    known.map((size) => value(size) || null);
  return () => {
    const side = of((size) => size.side);
    const rows = of((size) => size.sideRows);
    const slots = {
      count: counted(side, 'st'),
      rows: counted(rows, 'row end'),
      ratio: ratio(
        rows,
        side,
        of((size) => size.pick),
        of((size) => size.of),
      ),
    };
    writer.line('armhole up', 'Up one side: {count} over {rows}, {ratio}.', slots);
    groupLines(writer, 'armhole up', rows, side);
    writer.line('armhole down', 'Down the other side, in the same way: {count} over {rows}, {ratio}.', slots);
    const underarm = of((size) => size.underarm);
    if (underarm.some((count) => count !== null)) {
      writer.line(
        'armhole underarm',
        'Across the underarm, half of them before the sides: {count}, one in each st.',
        {
          count: counted(underarm, 'st'),
        },
      );
    }
    const seam = of((size) => size.seam);
    if (seam.some((count) => count !== null)) {
      writer.line('armhole seam', 'For the seam, half at each end: {count}, one in each st.', {
        count: counted(seam, 'st'),
      });
    }
  };
}

/**
 * "about 3 in every 4": the ratio that was asked for, as the nearest that can be kept in mind; where the count was
 * fitted so far from it that who followed it would pick up another, the ratio that comes to the count.
 */
function ratio(
  rows: BySize<number>,
  share: BySize<number>,
  pick: BySize<number>,
  of: BySize<number>,
): string {
  const stated = rows.map((ends, sizeIndex) => {
    const [stitches, target, over] = [share[sizeIndex], pick[sizeIndex], of[sizeIndex]];
    if (!ends || !stitches) return null;
    const fits = (one: Ratio): boolean =>
      Math.abs((ends * one.pick) / one.of - stitches) <= Math.max(1, stitches / 20);
    const wanted = target && over ? simple(target, over, usualOver) : undefined;
    if (wanted && fits(wanted)) return wanted;
    for (let most = usualOver; ; most *= 2) {
      const nearest = pickUpRatio({ rowsPerCm: ends, stitchesPerCm: stitches, most });
      if (most >= ends || fits(nearest)) return nearest;
    }
  });
  const every = stated.map((one) => one && one.of);
  const one = every.every((ends) => ends === null || ends === 1);
  return `about ${sizeList(stated.map((one) => one && one.pick))} in every ${one ? 'one' : sizeList(every)}`;
}

interface Ratio {
  readonly pick: number;
  readonly of: number;
}

/** More rows than these are not kept in mind. */
const usualOver = 8;

function simple(pick: number, of: number, most: number): Ratio {
  return of <= most ? { pick, of } : pickUpRatio({ rowsPerCm: of, stitchesPerCm: pick, most });
}

/** Stitches in each repeat: as was asked for, or what the count that was fitted comes to, where that is nearer. */
function inEach(repeats: BySize<number>, share: BySize<number>, wanted: BySize<number>): BySize<number> {
  return wanted.map((each, sizeIndex) => {
    const [many, stitches] = [repeats[sizeIndex], share[sizeIndex]];
    if (!many || !stitches || (each && Math.abs(stitches / many - each) <= 0.5)) return each;
    return Math.max(1, Math.round(stitches / many));
  });
}

/** The groups of a pick-up as words, where sizes agree in shape in one line. */
function groupLines(
  writer: PieceWriter,
  key: string,
  rows: BySize<number>,
  share: BySize<number>,
  along: Along = 'row end',
): void {
  const groups = rows.map((ends, sizeIndex) => {
    const stitches = share[sizeIndex];
    return ends && stitches ? inBlocks(pickUp({ rows: ends, stitches }).groups) : null;
  });
  const text = (sizeIndices: readonly number[]): string =>
    groupWords(
      sizeIndices.map((sizeIndex) => groups[sizeIndex] ?? null),
      along,
    );
  writer.byGroups(
    `${key} groups`,
    byShape(groups.map((blocks) => blocks && shapeOfBlocks(blocks))),
    () =>
      writer.line(`${key} groups`, 'To come out even: {groups}.', {
        groups: text(rows.map((_row, sizeIndex) => sizeIndex)),
      }),
    () => writer.line(`${key} groups`, 'To come out even, as follows for your size:'),
    text,
  );
}
