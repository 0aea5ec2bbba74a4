import { capital } from '../../format';
import { unitWord, sizeStyle, type SizeStyle } from '../charts';
import {
  BlockBeingDrawn,
  drawOutline,
  laid,
  reachOf,
  type,
  writeLines,
  type Block,
  type Laid,
} from './block';
import { coloursOf } from './colours';
import { edgeMarks } from './edge-marks';
import { labelLines, type Box } from './labels';
import { inRows } from './layout';
import { element, px } from './markup';
import { drawnSize, isDrawable, missingOf } from './missing';
import { outlineOf, type Outline } from './outline';
import { outlinePath } from './outline-path';
import type { Drawn } from './schematic-svg';
import { lengthText } from './size-figures';
import type { PlannedSize, SchematicPiece, SchematicSpec } from './types';
import { wholeDrawing } from './whole-drawing';

const margin = 16;
const gap = { x: 40, y: 34 };

/**
 * Every piece as wide as its rows, row upon row at their true heights, on paper ruled in each fabric: an SVG that
 * stands by itself. One size shows its shaping rows: a tick at an edge that is shaped, a broken line where a row is
 * shaped across. All sizes are drawn over each other from one foot, each in its own colour and line.
 *
 * @example
 * silhouetteDrawn({ ...spec, size: 'm' }).svg // '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 960 …'
 */
export function silhouetteDrawn(spec: SchematicSpec): Drawn {
  const prefix = spec.prefix ?? 'silhouettes';
  const width = spec.width ?? 960;
  const room = width - 2 * margin;
  const theme = coloursOf(spec);
  const outlines = new Map(spec.pieces.map((piece) => [piece, outlinesOf(spec, piece)]));
  const pxPerCm = scaleFor([...outlines.values()], room);
  const blocks = inRows(
    spec.pieces.map((piece, at) =>
      silhouetteBlock(spec, piece, outlines.get(piece)!, pxPerCm, room, `${prefix}-${at}`),
    ),
    room,
    gap,
  );
  const whole: string[] = [];
  const texts: Box[] = [];
  let y = margin;
  const put = (block: Block, x: number, top: number): void => {
    whole.push(element('g', { transform: `translate(${px(x)} ${px(top)})` }, block.body));
    texts.push(...block.texts.map((box) => ({ ...box, x: box.x + x, y: box.y + top })));
  };
  const title = silhouetteTitle(spec);
  const about = silhouetteAbout(spec);
  if (spec.key !== false) {
    const head = new BlockBeingDrawn();
    const next = writeLines(
      head,
      labelLines(title, room, type.title),
      { x: 0, y: 0, size: type.title },
      { 'font-weight': 600 },
      'start',
    );
    writeLines(
      head,
      labelLines(about, room, type.words),
      { x: 0, y: next, size: type.words },
      { class: 'soft-text', fill: theme.soft },
      'start',
    );
    const done = head.done();
    put(done, margin, y);
    y += done.height + 14;
  }
  for (const { block, x, y: top } of blocks.laid) put(block, margin + x, y + top);
  y += blocks.height;
  if (spec.key !== false && spec.size === 'all') {
    const key = keyOfSizes(spec, room);
    put(key, margin, y + 18);
    y += key.height + 18;
  }
  const missing = missingOf(spec);
  if (spec.key !== false && missing.length > 0) {
    const words = missing.flatMap(({ name, sizes, why }) =>
      labelLines(`${name} is not drawn in ${sizes.join(', ')}: ${why}`, room, type.words),
    );
    const block = new BlockBeingDrawn();
    writeLines(
      block,
      words,
      { x: 0, y: 0, size: type.words },
      { class: 'trouble-text', fill: theme.trouble },
      'start',
    );
    const done = block.done();
    put(done, margin, y + 12);
    y += done.height + 12;
  }
  const svg = wholeDrawing(spec, { prefix, title, about, width, height: y + margin, body: whole.join('') });
  return { svg, about, texts, pxPerCm };
}

interface SizeOutline {
  readonly size: PlannedSize;
  /** The size's place in the notebook, which gives it its colour. */
  readonly sizeIndex: number;
  readonly outline: Outline;
}

function outlinesOf(spec: SchematicSpec, piece: SchematicPiece): SizeOutline[] {
  return piece.sizes.flatMap((size, sizeIndex) => {
    if (!isDrawable(size) || (spec.size !== 'all' && size.id !== spec.size)) return [];
    return [{ size, sizeIndex, outline: outlineOf(size.rows!, size.plan) }];
  });
}

/** A piece wider than the drawing is cut in its middle, so the scale goes by the others. */
function scaleFor(outlines: readonly (readonly SizeOutline[])[], room: number): number {
  const reach = outlines.flatMap((sizes) => {
    const all = sizes.map(({ outline }) => outline);
    if (all.length === 0) return [];
    const width = Math.max(...all.map((one) => reachOf(one).right - reachOf(one).left));
    return [{ width, height: Math.max(...all.map((one) => one.edges.at(-1)!)) }];
  });
  const shapes = reach.filter(({ width, height }) => width < height * 8);
  const wide = shapes.length > 0 ? shapes : reach;
  if (wide.length === 0) return 1;
  const widest = Math.max(...wide.map(({ width }) => width));
  const tallest = Math.max(...wide.map(({ height }) => height));
  const all = wide.reduce((sum, { width }) => sum + Math.max(width, 1), 0);
  const sideBySide = (room - gap.x * (wide.length - 1)) / all;
  const least = Math.min((room - 12) / widest, 4);
  return Math.min(
    7,
    Math.max(520 / tallest, Math.min(0.05, least)),
    sideBySide >= 2.2 ? sideBySide : Math.max(sideBySide, least),
  );
}

function silhouetteBlock(
  spec: SchematicSpec,
  piece: SchematicPiece,
  sizes: readonly SizeOutline[],
  pxPerCm: number,
  room: number,
  id: string,
): Block {
  const block = new BlockBeingDrawn();
  const theme = coloursOf(spec);
  const main = sizes.find(({ size }) => size === drawnSize(spec, piece));
  let foot = 0;
  let width = 160;
  if (main) {
    const hangs = piece.hangs ?? false;
    const shape = laid(main.outline, pxPerCm, hangs, { width: room - 12, height: Infinity });
    width = Math.max(width, Math.min(room - 12, shape.box.width));
    foot = shape.box.height;
    if (spec.size === 'all') {
      // The largest is on the paper, and all stand on the foot of the tallest.
      drawOutline(block, shape, spec, id, { stroke: 'none', class: undefined });
      let marks = '';
      for (const one of sizes) {
        const style = sizeStyle(one.sizeIndex, spec.theme);
        const own = laid(one.outline, pxPerCm, hangs, { width: room - 12, height: Infinity });
        const down = hangs ? 0 : shape.box.height - own.box.height;
        block.include({ ...own.box, y: own.box.y + down });
        foot = Math.max(foot, own.box.y + own.box.height + down);
        width = Math.max(width, Math.min(room - 12, own.box.width));
        block.add(
          element('path', {
            class: 'size-line',
            'data-size': one.size.id,
            d: outlinePath(one.outline, { x: own.scale.x, y: (cm) => own.scale.y(cm) + down }),
            fill: 'none',
            'stroke-width': 1.5,
            ...strokeOf(style),
          }),
        );
        for (const { x, y } of edgeMarks(one.outline, one.sizeIndex, pxPerCm))
          marks += sizeMark(style, own.scale.x(x), own.scale.y(y) + down, theme.paper, 0.8);
      }
      // No outline goes over the mark of another.
      block.add(marks);
    } else {
      drawOutline(block, shape, spec, id, { 'data-size': main.size.id });
      drawShaping(block, shape, theme.ink);
    }
  }
  let y = foot + 10;
  const centre = { x: 0, size: type.words };
  y = writeLines(
    block,
    labelLines(piece.name, width, type.name, 3),
    { ...centre, y, size: type.name },
    { 'font-weight': 600 },
  );
  const words = main ? figuresOf(spec, main) : ['not drawn'];
  for (const line of words) {
    y = writeLines(
      block,
      labelLines(line, width, type.words),
      { ...centre, y },
      { class: 'soft-text', fill: theme.soft },
    );
  }
  return block.done();
}

/** A tick at every edge that is shaped, a broken line where a row is shaped across; none where they would run together. */
function drawShaping(block: BlockBeingDrawn, { outline, scale, pxPerCm }: Laid, ink: string): void {
  const { left, right, edges } = outline;
  let ticks = '';
  let lines = '';
  let last = -Infinity;
  for (const shaped of outline.shaped) {
    const middle = (edges[shaped.row]! + edges[shaped.row + 1]!) / 2;
    if ((middle - last) * pxPerCm < 1.5) continue;
    last = middle;
    const y = px(scale.y(middle));
    const [a, b] = [scale.x(left[shaped.row]!), scale.x(right[shaped.row]!)];
    const out = Math.sign(b - a) || 1;
    if (shaped.left) ticks += `M${px(a - 2 * out)} ${y}h${px(-5 * out)}`;
    if (shaped.right) ticks += `M${px(b + 2 * out)} ${y}h${px(5 * out)}`;
    if (shaped.across) lines += `M${px(a)} ${y}H${px(b)}`;
  }
  const { x, y, width, height } = block.extent;
  if (ticks) {
    block.include({ x: x - 8, y, width: width + 16, height });
    block.add(element('path', { class: 'shaping', d: ticks, fill: 'none', stroke: ink, 'stroke-width': 1 }));
  }
  if (lines) {
    block.add(
      element('path', {
        class: 'shaping',
        d: lines,
        fill: 'none',
        stroke: ink,
        'stroke-width': 1,
        'stroke-dasharray': '5 3',
      }),
    );
  }
}

/** What is said under a piece: rows, length, and width at the start and the end; in the round and as it lies flat. */
function figuresOf(spec: SchematicSpec, { size, outline }: SizeOutline): string[] {
  const { rows } = outline;
  const round = outline.drawn === 0.5;
  const count = `${rows.length} ${round ? 'round' : 'row'}${rows.length === 1 ? '' : 's'}`;
  const length = `${lengthText(outline.edges.at(-1)!, spec)} ${spec.unit} long`;
  const from = rows[0]!.width;
  const to = rows.at(-1)!.width;
  const list = (times: number): string => {
    const [a, b] = [lengthText(from * times, spec), lengthText(to * times, spec)];
    return a === b ? a : `${a} to ${b}`;
  };
  const wide = round ? `${list(1)} ${spec.unit} round, ${list(0.5)} flat` : `${list(1)} ${spec.unit} wide`;
  const of = spec.size === 'all' ? [`size ${size.label}:`] : [];
  return [...of, `${count}, ${length}`, wide];
}

function keyOfSizes(spec: SchematicSpec, room: number): Block {
  const block = new BlockBeingDrawn();
  let x = 0;
  let y = 0;
  spec.sizes.forEach(({ label }, sizeIndex) => {
    const style = sizeStyle(sizeIndex, spec.theme);
    const [words = ''] = labelLines(label, Math.min(160, room - 50), type.words, 1);
    const width = 60 + words.length * 8;
    if (x > 0 && x + width > room) {
      x = 0;
      y += 20;
    }
    block.add(
      element('path', {
        d: `M${px(x)} ${px(y + 9)}h34`,
        'stroke-width': 2,
        ...strokeOf(style),
      }),
    );
    block.add(sizeMark(style, x + 17, y + 9, coloursOf(spec).paper, 1));
    block.include({ x, y, width, height: 18 });
    writeLines(block, [words], { x: x + 40, y, size: type.words }, {}, 'start');
    x += width + 6;
  });
  return block.done();
}

/** The line of a size, as attributes. */
function strokeOf({ colour, dash }: SizeStyle) {
  return { stroke: colour, 'stroke-dasharray': dash.length > 0 ? dash.join(' ') : undefined };
}

/** The mark of a size, which tells its line without colour. */
function sizeMark(style: SizeStyle, x: number, y: number, paper: string, large: number): string {
  return element('path', {
    class: style.filled ? 'size-mark' : 'size-mark paper',
    d: style.mark,
    transform: `translate(${px(x)} ${px(y)}) scale(${large})`,
    fill: style.filled ? style.colour : paper,
    stroke: style.colour,
    'stroke-width': 1.5,
  });
}

/** "Saltmarsh cardigan: width by row, size M". */
export function silhouetteTitle(spec: SchematicSpec): string {
  const size = spec.sizes.find(({ id }) => id === spec.size)?.label;
  return `${spec.title}: width by row, ${size === undefined ? 'all sizes' : `size ${size}`}`;
}

/** What has to be said once beside the silhouettes. */
function silhouetteAbout(spec: SchematicSpec): string {
  const one =
    spec.size === 'all' ? '' : ' Ticks mark rows shaped at an edge, broken lines rows shaped across.';
  const fabric =
    spec.size === 'all'
      ? 'Paper ruled by the size named under each piece'
      : 'Paper ruled in stitches and rows';
  return `${capital(fabric)}; every row as wide and as high as it is worked, right side facing, lengths in ${unitWord(spec.unit)}.${one}`;
}
