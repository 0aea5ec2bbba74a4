import {
  BlockBeingDrawn,
  dimension,
  drawOutline,
  laid,
  type,
  writeLines,
  type Block,
  type Laid,
  type Room,
} from './block';
import { coloursOf } from './colours';
import { overlap, placed, textWidth, labelLines, type Box, type Wish } from './labels';
import { element, px } from './markup';
import type { MeasurePosition } from './measures';
import { outlineOf } from './outline';
import type { Lettered } from './schematic-table';
import { drawnSize, missingOf } from './missing';
import { sidesOf } from './sides-of';
import type { JoinEdge } from '../../notebook';
import type { SchematicPiece, SchematicSpec } from './types';

/** A mark of a join on one edge of this piece. */
export interface Mark {
  readonly letter: string;
  readonly edge: JoinEdge;
}

const mark = 8;

/** A piece to scale with its measurements on dimension lines and the marks of its joins. */
export function schematicBlock(
  spec: SchematicSpec,
  piece: SchematicPiece,
  measures: readonly Lettered[],
  marks: readonly Mark[],
  o: {
    readonly pxPerCm: number;
    /** The room there is, in px: what is larger is shortened. */
    readonly room: Room;
    /** Begins the ids in it; null where only the room it takes is wanted. */
    readonly id: string | null;
    readonly text: (measure: Lettered) => string;
  },
): Block {
  const block = new BlockBeingDrawn();
  const theme = coloursOf(spec);
  const size = drawnSize(spec, piece);
  if (!size?.rows) return apology(block, spec, piece, o.room.width);
  const outline = outlineOf(size.rows, size.plan);
  const shape = laid(outline, o.pxPerCm, piece.hangs ?? false, o.room);
  const at = piece.sizes.indexOf(size);
  if (o.id === null) block.include(shape.box);
  else drawOutline(block, shape, spec, o.id);

  const taken = drawMarks(block, shape, marks, theme);
  const side: { label: string; position: MeasurePosition & { on: 'side' } }[] = [];
  for (const measure of measures) {
    const position = measure.at[at];
    if (!position || measure.values[at] === null) continue;
    const label = o.text(measure);
    if (position.on === 'side') side.push({ label, position });
    else across(block, shape, position, label, taken, theme.ink, theme.leaf);
  }
  sideLines(block, shape, side, taken, theme);
  const top = block.extent;
  const words = [...labelLines(piece.name, Math.max(190, shape.box.width), type.name, 3)];
  const under = `${piece.worked === 'round' ? 'in the round, drawn flat' : 'flat'}, worked ${piece.hangs ? 'downwards' : 'upwards'}${shape.broken ? ', shortened' : ''}`;
  const below = labelLines(under, Math.max(190, shape.box.width), type.words - 1);
  const height = words.length * type.name * 1.3 + below.length * (type.words - 1) * 1.3 + 8;
  const y = writeLines(block, words, { x: 0, y: top.y - height, size: type.name }, { 'font-weight': 600 });
  writeLines(block, below, { x: 0, y, size: type.words - 1 }, { class: 'soft-text', fill: theme.soft });
  return block.done();
}

function apology(block: BlockBeingDrawn, spec: SchematicSpec, piece: SchematicPiece, room: number): Block {
  const width = Math.min(240, room);
  const theme = coloursOf(spec);
  const y = writeLines(
    block,
    labelLines(piece.name, width, type.name, 3),
    { x: 0, y: 0, size: type.name },
    { 'font-weight': 600 },
  );
  const missing = missingOf(spec).filter((one) => one.piece === piece.id);
  for (const { sizes, why } of missing) {
    writeLines(
      block,
      labelLines(`Not drawn in ${sizes.join(', ')}: ${why}`, width, type.words, 12),
      { x: 0, y, size: type.words },
      {
        class: 'trouble-text',
        fill: theme.trouble,
      },
    );
    break;
  }
  return block.done();
}

/** A width on its line: below the start, above the end, across where it changes, or at a step. */
function across(
  block: BlockBeingDrawn,
  { outline, scale, box, hangs }: Laid,
  position: MeasurePosition,
  label: string,
  taken: Box[],
  ink: string,
  behind: string,
): void {
  const width = textWidth(label, type.words) + 4;
  const height = type.line;
  const write = (wish: Wish, halo = false): void => {
    const [to] = placed([wish], taken);
    taken.push(to!);
    if (halo) block.add(element('rect', { class: 'leaf', ...to!, fill: behind, 'fill-opacity': 0.85 }));
    block.write(to!, label, { class: 'figure ink-text' });
  };
  if (position.on === 'start' || position.on === 'end') {
    const row = position.on === 'start' ? 0 : outline.rows.length - 1;
    const [a, b] = [scale.x(outline.left[row]!), scale.x(outline.right[row]!)];
    const above = (position.on === 'end') !== hangs;
    const y = above ? box.y - 15 : box.y + box.height + 15;
    line(block, a, y, b, y, ink);
    write({
      x: (a + b) / 2 - width / 2,
      y: above ? y - height - 2 : y + 4,
      width,
      height,
      along: 'y',
      only: above ? -1 : 1,
    });
    return;
  }
  if (position.on === 'across') {
    const [a, b] = [scale.x(outline.left[position.row]!), scale.x(outline.right[position.row]!)];
    const y = scale.y(outline.edges[position.row + 1]!);
    line(block, a, y, b, y, ink);
    const inside = { x: (a + b) / 2 - width / 2, y: y + 2, width, height };
    const clear = { ...inside, x: inside.x - 4, width: width + 8 };
    const free = width + 16 <= Math.abs(b - a) && y + 2 + height < box.y + box.height;
    if (free && !taken.some((other) => overlap(clear, other))) {
      write({ ...inside, along: 'y' }, true);
      return;
    }
    // Where it has no room in the piece it stands beside it, at the end of a line that leads there.
    const neighbour = placed(
      [{ x: box.x + box.width + 22, y: y - height / 2, width, height, along: 'y' }],
      taken,
    )[0]!;
    taken.push(neighbour);
    const leads = `M${px(Math.max(a, b) + 4)} ${px(y)}L${px(box.x + box.width + 12)} ${px(neighbour.y + height / 2)}h7`;
    block.add(
      element('path', { class: 'dimension lead', d: leads, fill: 'none', stroke: ink, 'stroke-width': 0.75 }),
    );
    block.write(neighbour, label, { class: 'figure ink-text' }, 'start');
    return;
  }
  if (position.on !== 'step') return;
  stepLines(outline, scale, position, hangs).forEach(({ x1, x2, y, away }, i) => {
    line(block, x1, y, x2, y, ink);
    if (i > 0) return;
    const beyond = Math.sign((x1 + x2) / 2) || 1;
    const centre = (x1 + x2) / 2;
    // A label wider than its step stands away from the piece, not over it.
    const x =
      Math.abs(x2 - x1) >= width
        ? centre - width / 2
        : beyond > 0
          ? Math.min(x1, x2) + 3
          : Math.max(x1, x2) - width - 3;
    write({ x, y: away < 0 ? y - height - 2 : y + 2, width, height, along: 'y', only: away < 0 ? -1 : 1 });
  });
}

/** Where stitches left or added are measured: a line beside the step, on the side where the piece is not. */
function stepLines(
  outline: Laid['outline'],
  scale: Laid['scale'],
  { stretch, end }: Extract<MeasurePosition, { on: 'step' }>,
  hangs: boolean,
): { x1: number; x2: number; y: number; away: number }[] {
  return outline.steps
    .filter((step) => step.stretch === stretch && (end === 'both' || step.end === end))
    .map(({ row, from, to, kind }) => {
      const away = (kind === 'add') === hangs ? -1 : 1;
      return { x1: scale.x(from), x2: scale.x(to), y: scale.y(outline.edges[row]!) + 7 * away, away };
    });
}

function line(block: BlockBeingDrawn, x1: number, y1: number, x2: number, y2: number, ink: string): void {
  const [x, y] = [Math.min(x1, x2), Math.min(y1, y2)];
  block.include({ x: x - 4, y: y - 4, width: Math.abs(x2 - x1) + 8, height: Math.abs(y2 - y1) + 8 });
  block.add(dimension(x1, y1, x2, y2, ink));
}

/** The lengths, in tiers beside the piece: its parts nearest, then depths, then all of it. */
function sideLines(
  block: BlockBeingDrawn,
  { outline, scale, box }: Laid,
  lines: readonly { label: string; position: MeasurePosition & { on: 'side' } }[],
  taken: readonly Box[],
  theme: { ink: string; tenth: string },
): void {
  const levels = new Set<number>();
  // Clear of what is written below and above, where that is wider than the piece.
  const near = Math.min(box.x, ...taken.map((one) => one.x + 4)) - 18;
  let x = near;
  const tiers = [...new Set(lines.map(({ position }) => position.tier))].sort((a, b) => a - b);
  for (const tier of tiers) {
    const here = lines.filter(({ position }) => position.tier === tier);
    const width = Math.max(...here.map(({ label }) => textWidth(label, type.words))) + 4;
    const wishes = here.map(({ label, position }): Wish => {
      const [a, b] = [scale.y(outline.edges[position.from]!), scale.y(outline.edges[position.to + 1]!)];
      line(block, x, Math.min(a, b), x, Math.max(a, b), theme.ink);
      for (const y of [a, b]) levels.add(y);
      const own = textWidth(label, type.words) + 4;
      return { x: x - 7 - own, y: (a + b) / 2 - type.line / 2, width: own, height: type.line, along: 'y' };
    });
    placed(wishes, taken).forEach((to, i) => {
      const wish = wishes[i]!;
      const off = Math.abs(to.y - wish.y);
      if (off > type.line / 2) {
        const y = wish.y + type.line / 2;
        block.add(
          element('path', {
            class: 'dimension',
            d: `M${px(x)} ${px(y)}L${px(x - 6)} ${px(to.y + type.line / 2)}`,
            fill: 'none',
            stroke: theme.ink,
          }),
        );
      }
      block.write(to, here[i]!.label, { class: 'figure ink-text' }, 'end');
    });
    x -= width + 18;
  }
  // Faint lines lead from the ticks to the piece.
  const far = box.x - 4;
  const d = [...levels].map((y) => `M${px(near)} ${px(y)}H${px(far)}`).join('');
  if (d) block.add(element('path', { class: 'tenth', d, fill: 'none', stroke: theme.tenth }));
}

/** The letters of the joins, each in a ring on its edge; gives the room they take. */
function drawMarks(
  block: BlockBeingDrawn,
  piece: Laid,
  marks: readonly Mark[],
  theme: { ink: string; accent: string; paper: string },
): Box[] {
  const wishes = marks.flatMap(({ letter, edge }) =>
    positionsOf(piece, edge).map(({ x, y, along }) => ({
      letter,
      wish: { x: x - mark, y: y - mark, width: mark * 2, height: mark * 2, along } satisfies Wish,
    })),
  );
  const there = placed(wishes.map(({ wish }) => wish));
  there.forEach((box, i) => {
    const [cx, cy] = [box.x + mark, box.y + mark];
    block.include(box);
    block.texts.push(box);
    block.add(
      element('circle', { class: 'mark', cx, cy, r: mark, fill: theme.paper, stroke: theme.accent }) +
        element(
          'text',
          {
            class: 'mark-text',
            x: cx,
            y: cy + 4,
            'text-anchor': 'middle',
            'font-size': 12,
            fill: theme.accent,
          },
          wishes[i]!.letter,
        ),
    );
  });
  return there;
}

interface LabelPosition {
  readonly x: number;
  readonly y: number;
  readonly along: 'x' | 'y';
}

function positionsOf({ outline, scale }: Laid, edge: JoinEdge): LabelPosition[] {
  const { rows, edges, left, right } = outline;
  const last = rows.length - 1;
  const onRow = (row: number, y: number, part: number): LabelPosition => ({
    x: scale.x(left[row]!) + (scale.x(right[row]!) - scale.x(left[row]!)) * part,
    y: scale.y(y),
    along: 'x',
  });
  if (edge.edge === 'start') return [onRow(0, 0, 0.25)];
  if (edge.edge === 'end') return [onRow(last, edges[last + 1]!, 0.25)];
  if (edge.edge === 'left') {
    return outline.steps
      .filter(({ stretch }) => stretch === edge.stretch)
      .map(({ row, from, to }) => ({
        x: scale.x((from + to) / 2),
        y: scale.y(edges[row]!),
        along: 'x',
      }));
  }
  const inside = (row: { stretch: number }): boolean =>
    edge.stretch === undefined || row.stretch === edge.stretch;
  const first = rows.findIndex(inside);
  const end = rows.findLastIndex(inside);
  if (first < 0) return [];
  if (edge.edge === 'row') return [onRow(end, edges[end + 1]!, 0.25)];
  const wanted = sidesOf(outline, edge, first, end);
  const y = (edges[first]! + edges[end + 1]!) / 2;
  const middle = rows.findIndex((_row, i) => edges[i + 1]! >= y);
  return wanted.map((one) => ({
    x: scale.x(one === 'left' ? left[middle]! : right[middle]!),
    y: scale.y(y),
    along: 'y',
  }));
}
