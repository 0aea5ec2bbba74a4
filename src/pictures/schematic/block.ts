import { coloursOf } from './colours';
import { textWidth, type Box } from './labels';
import { element, escaped, px, type Attributes } from './markup';
import { outlinePath, type Scale } from './outline-path';
import type { Outline } from './outline';
import { ruledPaper } from './ruled-paper';
import type { SchematicSpec } from './types';

/** Sizes of type and lines of a drawing, px. */
export const type = { words: 13, name: 15.5, title: 18, line: 17 } as const;

/** One piece with all that is written at it, in px from its own corner. */
export interface Block {
  readonly width: number;
  readonly height: number;
  readonly body: string;
  /** Where its texts stand, for whoever checks that none lies on another. */
  readonly texts: readonly Box[];
}

/** Collects what is drawn at one piece and how much room it takes. */
export class BlockBeingDrawn {
  readonly #parts: string[] = [];
  readonly texts: Box[] = [];
  #left = Infinity;
  #top = Infinity;
  #right = -Infinity;
  #bottom = -Infinity;

  include({ x, y, width, height }: Box): void {
    this.#left = Math.min(this.#left, x);
    this.#top = Math.min(this.#top, y);
    this.#right = Math.max(this.#right, x + width);
    this.#bottom = Math.max(this.#bottom, y + height);
  }

  get extent(): Box {
    const [x, y] = [this.#left, this.#top];
    return { x, y, width: this.#right - x, height: this.#bottom - y };
  }

  add(markup: string): void {
    this.#parts.push(markup);
  }

  /** A text that takes the room of its box; `anchor` says at which end of the box it is held. */
  write(box: Box, words: string, more: Attributes = {}, anchor: 'start' | 'middle' | 'end' = 'middle'): void {
    this.include(box);
    this.texts.push(box);
    const x = { start: box.x, middle: box.x + box.width / 2, end: box.x + box.width }[anchor];
    this.add(
      element(
        'text',
        {
          class: 'ink-text',
          x,
          y: box.y + box.height * 0.77,
          'text-anchor': anchor === 'start' ? undefined : anchor,
          ...more,
        },
        escaped(words),
      ),
    );
  }

  done(): Block {
    if (this.#parts.length === 0) return { width: 0, height: 0, body: '', texts: [] };
    const { x, y, width, height } = this.extent;
    return {
      width,
      height,
      body: element('g', { transform: `translate(${px(-x)} ${px(-y)})` }, this.#parts.join('')),
      texts: this.texts.map((box) => ({ ...box, x: box.x - x, y: box.y - y })),
    };
  }
}

/** An outline on the drawing: its scale, and the room it takes. */
export interface Laid {
  readonly outline: Outline;
  readonly scale: Scale;
  readonly pxPerCm: number;
  readonly box: Box;
  /** Whether its start is at the top. */
  readonly hangs: boolean;
  /** Which way its middle is cut out, where it has no room to scale: across the rows, or along them. */
  readonly broken: 'across' | 'along' | null;
}

/** The least and the largest x of an outline, in cm. */
export function reachOf({ left, right }: Pick<Outline, 'left' | 'right'>): { left: number; right: number } {
  let [least, most] = [Infinity, -Infinity];
  for (let i = 0; i < left.length; i++) {
    least = Math.min(least, left[i]!);
    most = Math.max(most, right[i]!);
  }
  return { left: least, right: most };
}

/** The room a piece has on a drawing, in px. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

/**
 * Lays an outline so that its highest point is at y = 0 and its middle at x = 0. A piece that hangs is turned round,
 * so its left edge comes to the right: it is still the right side that faces. What has no room loses its middle.
 */
export function laid(
  outline: Outline,
  pxPerCm: number,
  hangs: boolean,
  room: Room = { width: Infinity, height: Infinity },
): Laid {
  const { left, right } = reachOf(outline);
  const length = outline.edges.at(-1)!;
  const turn = hangs ? -1 : 1;
  const cut = {
    x: Math.max(0, right - left - room.width / pxPerCm),
    y: Math.max(0, length - room.height / pxPerCm),
  };
  const height = (length - cut.y) * pxPerCm;
  const x = (cm: number): number => turn * withoutMiddle(cm, cut.x) * pxPerCm;
  const y = (cm: number): number => {
    const kept = (withoutMiddle(cm - length / 2, cut.y) + (length - cut.y) / 2) * pxPerCm;
    return hangs ? kept : height - kept;
  };
  const [a, b] = [x(left), x(right)];
  const box = { x: Math.min(a, b), y: 0, width: Math.abs(b - a), height };
  const broken = cut.x > 0 ? 'across' : cut.y > 0 ? 'along' : null;
  return { outline, scale: { x, y }, pxPerCm, box, hangs, broken };
}

/** Where a place is, measured from the middle, once so much of the middle is cut out. */
function withoutMiddle(cm: number, cut: number): number {
  return cut === 0 ? cm : Math.sign(cm) * Math.max(0, Math.abs(cm) - cut / 2);
}

/** The paper and the outline of a piece; ids begin with `id`. */
export function drawOutline(
  block: BlockBeingDrawn,
  piece: Laid,
  spec: Pick<SchematicSpec, 'theme'>,
  id: string,
  line: Attributes = {},
): void {
  const theme = coloursOf(spec);
  const path = outlinePath(piece.outline, piece.scale);
  const { left, right } = reachOf(piece.outline);
  block.include(piece.box);
  block.add(element('path', { class: 'leaf', d: path, fill: theme.leaf }));
  const paper = ruledPaper(piece.outline, { left, right }, piece.scale, piece.pxPerCm);
  block.add(element('clipPath', { id }, element('path', { d: path })));
  block.add(
    element(
      'g',
      { 'clip-path': `url(#${id})`, fill: 'none', 'stroke-width': 1 },
      element('path', { class: 'ruling', d: paper.fine, stroke: theme.rule }) +
        element('path', { class: 'tenth', d: paper.tenth, stroke: theme.tenth }),
    ),
  );
  block.add(
    element('path', {
      class: 'outline',
      d: path,
      fill: 'none',
      stroke: theme.ink,
      'stroke-width': 1.6,
      'stroke-linejoin': 'round',
      ...line,
    }),
  );
  if (piece.broken) drawBreak(block, piece, theme.paper, theme.ink);
}

/** Two slanting lines with nothing between: here the middle is left out (as in technical drawing). */
function drawBreak(block: BlockBeingDrawn, { box, broken }: Laid, paper: string, ink: string): void {
  if (broken === 'along') {
    const [left, right] = [box.x - 5, box.x + box.width + 5];
    const y = box.y + box.height / 2;
    const [upper, lower] = [
      [`${px(left)} ${px(y - 1)}`, `${px(right)} ${px(y - 7)}`],
      [`${px(left)} ${px(y + 7)}`, `${px(right)} ${px(y + 1)}`],
    ] as const;
    addBreak(
      block,
      `M${upper[0]}L${upper[1]}L${lower[1]}L${lower[0]}Z`,
      `M${upper[0]}L${upper[1]}M${lower[0]}L${lower[1]}`,
      paper,
      ink,
    );
    return;
  }
  const [top, foot] = [box.y - 5, box.y + box.height + 5];
  const x = box.x + box.width / 2;
  addBreak(
    block,
    `M${px(x - 7)} ${px(foot)}L${px(x - 1)} ${px(top)}H${px(x + 7)}L${px(x + 1)} ${px(foot)}Z`,
    `M${px(x - 7)} ${px(foot)}L${px(x - 1)} ${px(top)}M${px(x + 1)} ${px(foot)}L${px(x + 7)} ${px(top)}`,
    paper,
    ink,
  );
}

function addBreak(block: BlockBeingDrawn, gap: string, lines: string, paper: string, ink: string): void {
  block.add(element('path', { class: 'paper', d: gap, fill: paper }));
  block.add(element('path', { class: 'dimension', d: lines, fill: 'none', stroke: ink }));
}

/** A dimension line with a small tick at either end, from one point to another of the same x or y. */
export function dimension(x1: number, y1: number, x2: number, y2: number, ink: string): string {
  const tick = 3.5;
  const upright = x1 === x2;
  const d = upright
    ? `M${px(x1)} ${px(y1)}V${px(y2)}M${px(x1 - tick)} ${px(y1)}h${tick * 2}M${px(x1 - tick)} ${px(y2)}h${tick * 2}`
    : `M${px(x1)} ${px(y1)}H${px(x2)}M${px(x1)} ${px(y1 - tick)}v${tick * 2}M${px(x2)} ${px(y1 - tick)}v${tick * 2}`;
  return element('path', { class: 'dimension', d, fill: 'none', stroke: ink, 'stroke-width': 1 });
}

/** Lines of text, one under the other, as wide as they need be; gives the room below them. */
export function writeLines(
  block: BlockBeingDrawn,
  lines: readonly string[],
  at: { readonly x: number; readonly y: number; readonly size: number },
  more: Attributes = {},
  anchor: 'start' | 'middle' = 'middle',
): number {
  let { y } = at;
  const height = at.size * 1.3;
  for (const words of lines) {
    const width = textWidth(words, at.size);
    const x = anchor === 'middle' ? at.x - width / 2 : at.x;
    block.write({ x, y, width, height }, words, { 'font-size': at.size, ...more }, anchor);
    y += height;
  }
  return y;
}
