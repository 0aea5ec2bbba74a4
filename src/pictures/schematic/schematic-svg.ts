import { bracketed } from '../../format';
import { unitWord } from '../charts';
import { BlockBeingDrawn, type, writeLines, type Block } from './block';
import { coloursOf } from './colours';
import { joinsInWords, shownJoins } from './joins-in-words';
import { textWidth, labelLines, type Box } from './labels';
import { inRows } from './layout';
import { element, px } from './markup';
import { drawnSize, missingOf } from './missing';
import { schematicBlock, type Mark } from './schematic-block';
import { lettered, type Lettered } from './schematic-table';
import { lengthText, sizeList } from './size-figures';
import { stripsOf } from './strips';
import type { SchematicPiece, SchematicSpec } from './types';
import { wholeDrawing } from './whole-drawing';

const margin = 16;
const gap = { x: 34, y: 30 };
/** Larger than this a sleeve fills a screen; smaller, its measurements crowd it. */
const scales = { most: 7, comfortable: 2.2, legible: 1.8, least: 0.4, tallest: 520, strip: 260 };

/** A schematic with what was written on it, for whoever checks it. */
export interface Drawn {
  readonly svg: string;
  /** What has to be said once beside it. */
  readonly about: string;
  readonly texts: readonly Box[];
  readonly pxPerCm: number;
}

/**
 * The pieces of a garment to one scale, laid out as they join, their measurements on dimension lines and their joins
 * marked, as an SVG that stands by itself.
 *
 * With one size each line has its number. With all sizes it has the list of them, `54.3 (60.0, 65.7)`, where that is
 * short, and otherwise a letter with the list under the drawing. A piece that cannot be drawn says so in its place.
 *
 * @example
 * schematicSvg({ ...spec, size: 'm' }) // '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 960 …'
 */
export function schematicSvg(spec: SchematicSpec): string {
  return schematicDrawn(spec).svg;
}

export function schematicDrawn(spec: SchematicSpec): Drawn {
  const prefix = spec.prefix ?? 'schematic';
  const width = spec.width ?? 960;
  const measures = lettered(spec.pieces);
  let legend = lists(spec, measures);
  const words = joinsInWords(spec);
  const marks = new Map<string, Mark[]>();
  shownJoins(spec).forEach((join, at) => {
    for (const edge of join.edges) {
      marks.set(edge.piece, [...(marks.get(edge.piece) ?? []), { letter: words[at]!.letter, edge }]);
    }
  });
  const room = width - 2 * margin;
  const draw = (piece: SchematicPiece, pxPerCm: number, most = Infinity, tried = false): Block =>
    schematicBlock(
      spec,
      piece,
      measures.filter((measure) => measure.piece === piece.id),
      marks.get(piece.id) ?? [],
      {
        pxPerCm,
        room: { width: most, height: Number.isFinite(most) ? scales.strip : Infinity },
        id: tried ? null : `${prefix}-${spec.pieces.indexOf(piece)}`,
        text: legend.text,
      },
    );

  const ids = stripsOf(spec);
  const strips = spec.pieces.filter(({ id }) => ids.has(id));
  const main = order(spec.pieces.filter(({ id }) => !ids.has(id)));
  const scale = (): number =>
    scaleFor(spec, main.length > 0 ? main : strips, room, (piece, tried) =>
      draw(piece, tried, Infinity, true),
    );
  let pxPerCm = scale();
  if (!legend.keyed && pxPerCm < scales.legible) {
    // Numbers that leave the pieces no room give way to their letters, as on a narrow screen.
    const numbers = legend;
    legend = { keyed: true, text: ({ letter }) => letter };
    const roomier = scale();
    if (roomier > pxPerCm) pxPerCm = roomier;
    else legend = numbers;
  }
  const about = schematicAbout(spec, legend.keyed);
  const upper = inRows(
    main.map((piece) => draw(piece, pxPerCm)),
    room,
    gap,
  );
  const lower = inRows(
    strips.map((piece) => draw(piece, pxPerCm, room - widthOfLengths(piece, legend, measures))),
    room,
    gap,
  );

  const whole: string[] = [];
  const texts: Box[] = [];
  const title = titleOf(spec);
  let y = margin;
  const put = (block: Block, x: number, top: number): void => {
    whole.push(element('g', { transform: `translate(${px(x)} ${px(top)})` }, block.body));
    texts.push(...block.texts.map((box) => ({ ...box, x: box.x + x, y: box.y + top })));
  };
  const lines = (of: readonly string[], size: number, more: Record<string, string | number> = {}): void => {
    const block = new BlockBeingDrawn();
    writeLines(block, of, { x: 0, y: 0, size }, more, 'start');
    const done = block.done();
    put(done, margin, y);
    y += done.height;
  };
  if (spec.key !== false) {
    lines(labelLines(title, room, type.title), type.title, { 'font-weight': 600 });
    lines(labelLines(about, room, type.words), type.words, {
      class: 'soft-text',
      fill: coloursOf(spec).soft,
    });
    y += 14;
  }
  for (const part of [upper, lower]) {
    if (part.laid.length === 0) continue;
    for (const { block, x, y: top } of part.laid) put(block, margin + x, y + top);
    y += part.height + gap.y;
  }
  if (spec.key !== false) {
    for (const [name, entries] of keyOf(spec, measures, legend.keyed)) {
      lines(labelLines(name, room, type.words), type.words, { 'font-weight': 600 });
      for (const entry of entries)
        lines(labelLines(entry, room, type.words), type.words, { class: 'figure ink-text' });
      y += 8;
    }
    if (words.length > 0) {
      lines(['Joins'], type.words, { 'font-weight': 600 });
      for (const join of words) {
        lines(labelLines(`${join.letter}\u2002${join.label}: ${join.words}`, room, type.words), type.words);
      }
    }
  }
  // What is wider than the drawing, a very long list of sizes, makes it wider rather than being cut off.
  const widest = Math.max(
    width,
    ...[...upper.laid, ...lower.laid].map(({ block, x }) => x + block.width + 2 * margin),
  );
  const svg = wholeDrawing(spec, {
    prefix,
    title,
    about,
    width: widest,
    height: y + margin - (spec.key === false ? gap.y : 0),
    body: whole.join(''),
  });
  return { svg, about, texts, pxPerCm };
}

/** A sleeve beside the body: the first at its left, the others at its right. */
function order(pieces: readonly SchematicPiece[]): SchematicPiece[] {
  const sides = pieces.filter(({ lies }) => lies === 'beside');
  const middle = pieces.filter(({ lies }) => lies !== 'beside');
  return [...sides.slice(0, 1), ...middle, ...sides.slice(1)];
}

/** The room that the lengths take beside a strip. */
function widthOfLengths(piece: SchematicPiece, legend: LegendOptions, measures: readonly Lettered[]): number {
  const tiers = new Map<number, number>();
  for (const measure of measures) {
    const position = measure.at.find((at) => at?.on === 'side');
    if (measure.piece !== piece.id || position?.on !== 'side') continue;
    const width = textWidth(legend.text(measure), type.words) + 22;
    tiers.set(position.tier, Math.max(tiers.get(position.tier) ?? 0, width));
  }
  return [...tiers.values()].reduce((sum, width) => sum + width, 0) + 24;
}

/**
 * The largest scale at which the pieces lie in as few rows as leave them large enough to read: in one row if they can,
 * else in two, and so on to one piece in each. What is written at a piece does not grow with it, so it is tried.
 */
function scaleFor(
  spec: SchematicSpec,
  pieces: readonly SchematicPiece[],
  room: number,
  draw: (piece: SchematicPiece, pxPerCm: number) => Block,
): number {
  const heights = pieces.map((piece) =>
    (drawnSize(spec, piece)?.rows ?? []).reduce((sum, { height }) => sum + height, 0),
  );
  const tallest = Math.max(0, ...heights);
  const most = Math.min(scales.most, tallest > 0 ? scales.tallest / tallest : scales.most);
  const fits = (pxPerCm: number, rows: number): boolean => {
    const blocks = pieces.map((piece) => draw(piece, pxPerCm));
    if (blocks.some(({ width }) => width > room)) return false;
    return inRows(blocks, room, gap).rows <= rows;
  };
  let best = Math.min(scales.least, most);
  for (let rows = 1; rows <= pieces.length; rows++) {
    // Several rows together are not much higher than one: a schematic is taken in at a glance, and goes on a page.
    const here = rows === 1 || tallest === 0 ? most : Math.min(most, Math.max(416 / rows, 150) / tallest);
    let [low, high] = [0, here];
    if (fits(here, rows)) low = here;
    else {
      for (let tries = 0; tries < 7; tries++) {
        const between = (low + high) / 2;
        if (fits(between, rows)) low = between;
        else high = between;
      }
    }
    best = Math.max(best, low);
    if (low >= Math.min(most, scales.comfortable)) return low;
  }
  return best;
}

interface LegendOptions {
  /** Whether letters stand on the lines, and the numbers in a list. */
  readonly keyed: boolean;
  readonly text: (measure: Lettered) => string;
}

/** What stands on the lines. */
function lists(spec: SchematicSpec, measures: readonly Lettered[]): LegendOptions {
  const at = spec.sizes.findIndex(({ id }) => id === spec.size);
  const full = (measure: Lettered): string => {
    const values = spec.size === 'all' ? measure.values : [measure.values[at] ?? null];
    const text = sizeList(values, spec);
    if (measure.of !== 'round' || spec.size === 'all') return measure.of === 'round' ? `${text} round` : text;
    const value = measure.values[at] ?? null;
    return value === null ? text : `${text} round, ${lengthText(value / 2, spec)} flat`;
  };
  const keyed = spec.size === 'all' && measures.some((measure) => sizeList(measure.values, spec).length > 14);
  return { keyed, text: keyed ? ({ letter }) => letter : full };
}

/** The list under the drawing, piece by piece. */
function keyOf(
  spec: SchematicSpec,
  measures: readonly Lettered[],
  keyed: boolean,
): [name: string, entries: string[]][] {
  const at = spec.sizes.findIndex(({ id }) => id === spec.size);
  const entries = spec.pieces.map(({ id, name }): [string, string[]] => [
    name,
    measures
      .filter(({ piece }) => piece === id)
      .flatMap((measure) => {
        const values = spec.size === 'all' ? measure.values : [measure.values[at] ?? null];
        const flat = values.map((value) => (value === null ? null : value / 2));
        const head = keyed ? `${measure.letter}\u2002` : '';
        const lines = [`${head}${measure.label}: ${sizeList(values, spec)}`];
        if (measure.of === 'round') lines.push(`${head}${measure.label}, laid flat: ${sizeList(flat, spec)}`);
        return lines;
      }),
  ]);
  const missing = missingOf(spec).map(
    ({ name, sizes, why }) => `${name} is missing in ${sizes.join(', ')}: ${why}`,
  );
  return [...entries, ...(missing.length > 0 ? [['Not drawn', missing] as [string, string[]]] : [])].filter(
    ([, lines]) => lines.length > 0,
  );
}

/** What a schematic shows, as its title: "Saltmarsh cardigan: schematic, size M, in cm". */
export function titleOf(spec: SchematicSpec): string {
  const size = spec.sizes.find(({ id }) => id === spec.size)?.label;
  return `${spec.title}: schematic, ${size === undefined ? 'all sizes' : `size ${size}`}, in ${unitWord(spec.unit)}`;
}

/** Unit, scale, whose shapes they are, and what the letters are where letters stand on the lines. */
function schematicAbout(spec: SchematicSpec, keyed: boolean): string {
  const drawn = new Set(
    spec.pieces.flatMap((piece) => {
      const size = drawnSize(spec, piece);
      return size ? [size.label] : [];
    }),
  );
  const unit = `Measurements in ${unitWord(spec.unit)}`;
  const many = spec.size === 'all' ? ` for sizes ${bracketed(spec.sizes.map(({ label }) => label))}` : '';
  const shape =
    spec.size === 'all' && drawn.size > 0 ? ` The shapes are those of ${[...drawn].join(' and ')}.` : '';
  const letters = keyed ? '; a capital letter stands for a line of the table' : '';
  return `${unit}${many}. All pieces are to one scale, their right side facing${letters}.${shape}`;
}
