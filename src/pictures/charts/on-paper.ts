import type { FixedSheet } from './chart-style';
import { drawLetter, drawMark } from './size-marks';
import { themes } from './theme';
import { wrapped } from './wrapped';

/** What a picture is printed at: fine enough for paper, as wide as A4 and Letter leave between their margins. */
export const print = { dpi: 300, widthCm: 17 };

/** The px a printed picture is laid out in; everything in it is drawn `ratio` times as fine. */
export const layoutWidth = 640;
/** What it is printed on: the paper of the page would be a tint. */
const white = '#ffffff';
const ratio = ((print.widthCm / 2.54) * print.dpi) / layoutWidth;

/** One entry of the legend of a picture on paper. */
export interface PrintedEntry {
  readonly label: string;
  readonly colour: string;
  readonly dash: readonly number[];
  readonly mark?: string;
  readonly filled?: boolean;
  readonly letter?: string;
}

/** A picture as it goes to paper: in the light theme, whatever the page is in. */
export interface PrintedPicture {
  readonly title: string;
  /** What is said under the title: a sentence each. */
  readonly sentences: readonly string[];
  readonly legend: readonly PrintedEntry[];
  /** In px of the layout. */
  readonly height: number;
  /** Draws the picture on a sheet of its own. */
  draw(canvas: HTMLCanvasElement, sheet: FixedSheet): { close(): void };
}

/**
 * Draws a picture for paper on a canvas that is on no page: `print.dpi` over `print.widthCm`, 2008 px wide. `whole` is
 * with its title and legend, for an image that stands by itself; otherwise the picture alone.
 */
export function onPaper(picture: PrintedPicture, family: string, whole: boolean): HTMLCanvasElement {
  const drawn = document.createElement('canvas');
  const made = picture.draw(drawn, { width: layoutWidth, height: picture.height, ratio, family });
  const canvas = document.createElement('canvas');
  const ctx = canvas.getContext('2d')!;
  const font = (size: number, weight = 400) => `${weight} ${size}px ${family}`;
  const lines = (text: string, size: number, weight?: number) => {
    ctx.font = font(size, weight);
    return wrapped(text, layoutWidth - 16, (part) => ctx.measureText(part).width);
  };
  const title = whole ? lines(picture.title, 18, 600) : [];
  const message = whole ? picture.sentences.flatMap((sentence) => lines(sentence, 12)) : [];
  ctx.font = font(12);
  const entries = whole ? legendPositions(picture.legend, (text) => ctx.measureText(text).width) : [];
  const above = whole ? title.length * 22 + message.length * 16 + 14 : 0;
  const below = entries.length === 0 ? 0 : entries.at(-1)!.y + 24;

  canvas.width = Math.round(layoutWidth * ratio);
  canvas.height = Math.round((above + picture.height + below) * ratio);
  ctx.scale(ratio, ratio);
  const theme = themes.light;
  ctx.fillStyle = white;
  ctx.fillRect(0, 0, layoutWidth, above + picture.height + below);
  ctx.textBaseline = 'alphabetic';
  let y = 4;
  ctx.fillStyle = theme.ink;
  ctx.font = font(18, 600);
  for (const line of title) ctx.fillText(line, 8, (y += 22) - 4);
  ctx.fillStyle = theme.soft;
  ctx.font = font(12);
  for (const line of message) ctx.fillText(line, 8, (y += 16) - 3);
  ctx.drawImage(drawn, 0, above, layoutWidth, picture.height);
  for (const { entry, x, y: down } of entries)
    drawEntry(ctx, entry, x + 8, above + picture.height + down + 12, font(12));
  made.close();
  return canvas;
}

const sample = 34;

/** Where the entries of a legend stand, row under row, in px. */
export function legendPositions(
  legend: readonly PrintedEntry[],
  measure: (text: string) => number,
): { entry: PrintedEntry; x: number; y: number }[] {
  let x = 0;
  let y = 0;
  return legend.map((entry) => {
    const width = sample + 6 + measure(entry.label) + 16;
    if (x > 0 && x + width > layoutWidth - 16) [x, y] = [0, y + 18];
    const slot = { entry, x, y };
    x += width;
    return slot;
  });
}

function drawEntry(
  ctx: CanvasRenderingContext2D,
  entry: PrintedEntry,
  x: number,
  y: number,
  font: string,
): void {
  const theme = themes.light;
  ctx.save();
  ctx.strokeStyle = entry.colour;
  ctx.lineWidth = 2;
  ctx.setLineDash([...entry.dash]);
  ctx.beginPath();
  ctx.moveTo(x, y);
  ctx.lineTo(x + sample, y);
  ctx.stroke();
  ctx.setLineDash([]);
  ctx.fillStyle = entry.filled ? entry.colour : white;
  if (entry.mark) drawMark(ctx, entry.mark, x + sample / 2, y, 1);
  ctx.fillStyle = entry.colour;
  if (entry.letter) drawLetter(ctx, entry.letter, x + sample / 2, y, font, white);
  ctx.fillStyle = theme.ink;
  ctx.font = font;
  ctx.textBaseline = 'middle';
  ctx.fillText(entry.label, x + sample + 6, y);
  ctx.restore();
}
