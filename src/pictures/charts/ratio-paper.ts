import type { Plugin } from 'chart.js';
import type { Drawing, Laid } from './drawing';
import { rulings, type Area, type Ruling } from './rulings';
import { themes } from './theme';

/** What a plugin draws on. */
export interface Sheet {
  readonly drawing: Drawing;
  readonly laid: Laid;
  /** CSS font of the ticks, and its size in px. */
  readonly font: string;
  readonly fontSize: number;
}

/** The sheet for a canvas of a size: asked for again each time, since spec and size change. */
export type SheetFor = (canvas: { width: number; height: number }) => Sheet;

/**
 * Paper behind a plot, ruled at the swatch's own ratio of stitch to row: a square on the screen is a stitch in the
 * hand. Every stretch is ruled in its own fabric, and has its label at its foot where there is room.
 */
export function ratioPaper(sheetFor: SheetFor): Plugin<'line'> {
  return {
    id: 'ratioPaper',
    beforeDraw({ ctx, chartArea, width, height }) {
      const sheet = sheetFor({ width, height });
      const { drawing, laid, font, fontSize } = sheet;
      const theme = themes[drawing.spec.theme];
      const area = areaOf(chartArea, laid);
      ctx.save();
      ctx.fillStyle = theme.paper;
      ctx.fillRect(0, 0, width, height);
      const lines = drawing.ruled
        ? rulings(drawing.ruled, drawing.spec.which, area, laid.frame.stretched === 1)
        : [];
      for (const weight of ['fine', 'tenth', 'change'] as const) {
        ctx.strokeStyle = { fine: theme.rule, tenth: theme.tenth, change: theme.edge }[weight];
        ctx.lineWidth = 1;
        strokeAll(
          ctx,
          lines.filter((line) => line.weight === weight),
        );
      }
      ctx.strokeStyle = theme.tenth;
      ctx.strokeRect(crisp(area.left), crisp(area.top), area.right - area.left, area.bottom - area.top);
      writeCaptions(ctx, sheet, width, height);
      ctx.font = font;
      ctx.fillStyle = theme.soft;
      ctx.strokeStyle = theme.paper;
      labelStretches(ctx, drawing, area, fontSize);
      ctx.restore();
    },
  };
}

/** The plot's part of the canvas, with its axes. */
export function areaOf(
  chartArea: { left: number; right: number; top: number; bottom: number },
  { frame }: Laid,
): Area {
  const { left, right, top, bottom } = chartArea;
  const { x, y, pxAlong, pxAcross } = frame;
  return {
    left,
    right,
    top,
    bottom,
    x,
    y,
    xAt: (along) => left + (along - x[0]) * pxAlong,
    yAt: (across) => bottom - (across - y[0]) * pxAcross,
  };
}

/** A line of 1 px lies on one row of pixels, not half on each of two. */
function crisp(px: number): number {
  return Math.round(px - 0.5) + 0.5;
}

function strokeAll(ctx: CanvasRenderingContext2D, lines: readonly Ruling[]): void {
  ctx.beginPath();
  for (const { x1, y1, x2, y2 } of lines) {
    const upright = x1 === x2;
    ctx.moveTo(upright ? crisp(x1) : x1, upright ? y1 : crisp(y1));
    ctx.lineTo(upright ? crisp(x2) : x2, upright ? y2 : crisp(y2));
  }
  ctx.stroke();
}

function writeCaptions(
  ctx: CanvasRenderingContext2D,
  { drawing, laid, font, fontSize }: Sheet,
  width: number,
  height: number,
): void {
  const { captions, frame } = laid;
  const { insets } = frame;
  ctx.font = font;
  ctx.fillStyle = themes[drawing.spec.theme].soft;
  ctx.textBaseline = 'middle';
  const above = fontSize * 0.8;
  ctx.textAlign = 'left';
  ctx.fillText(captions.left, 2, above);
  ctx.textAlign = 'center';
  ctx.fillText(captions.top, (insets.left + width - insets.right) / 2, above);
  ctx.textAlign = 'right';
  ctx.fillText(captions.right, width - 2, above);
  // With text set large on a narrow screen a caption is condensed rather than cut off.
  ctx.fillText(captions.bottom, width - insets.right, height - fontSize * 0.8, width - insets.right - 2);
}

function labelStretches(ctx: CanvasRenderingContext2D, drawing: Drawing, area: Area, fontSize: number): void {
  const { ruled, spec } = drawing;
  if (!ruled) return;
  const { rows, edges } = ruled;
  ctx.textAlign = 'left';
  ctx.textBaseline = 'alphabetic';
  ctx.lineWidth = 3;
  ctx.lineJoin = 'round';
  for (let first = 0; first < rows.length; first++) {
    const { stretch } = rows[first]!;
    let last = first;
    while (rows[last + 1]?.stretch === stretch) last++;
    const label = spec.stretches?.[stretch]?.label;
    const left = area.xAt(edges[first]!) + 5;
    const room = (last + 1 === rows.length ? area.right : area.xAt(edges[last + 1]!)) - left - 4;
    if (label && ctx.measureText(label).width <= room) {
      const y = area.bottom - fontSize * 0.6;
      ctx.strokeText(label, left, y);
      ctx.fillText(label, left, y);
    }
    first = last;
  }
}
