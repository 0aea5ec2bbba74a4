import type { Plugin } from 'chart.js';
import { markPositionsIn } from './mark-positions';
import { areaOf, type SheetFor } from './ratio-paper';
import type { Area } from './rulings';
import { acrossOf, rowAt, type DrawnSize } from './series';
import { themes } from './theme';
import type { Which } from './types';

/** A row of a size that is pointed at: the place of the size among those drawn, and the index of the row. */
export interface Pointed {
  readonly size: number;
  readonly row: number;
}

/**
 * What is drawn upon the lines: each size's mark every so often, so that lines are told apart without colour; in a
 * taper the difference between the steps and the straight line, and a tick at every shaping row; a ring round the row
 * pointed at.
 */
export function sizeMarks(sheetFor: SheetFor, pointed: () => Pointed | null): Plugin<'line'> {
  return {
    id: 'sizeMarks',
    beforeDatasetsDraw({ ctx, chartArea, width, height }) {
      const { drawing, laid } = sheetFor({ width, height });
      const area = areaOf(chartArea, laid);
      ctx.save();
      ctx.globalAlpha = 0.2;
      for (const { size, taper } of drawing.tapers) {
        const { first, last, from } = taper;
        const gauge = size.rows[first]!.fabric.stitches;
        ctx.fillStyle = size.style.colour;
        ctx.beginPath();
        ctx.moveTo(area.xAt(size.edges[first]!), area.yAt(from / gauge));
        for (let i = first; i <= last; i++) {
          const y = area.yAt(size.rows[i]!.width);
          ctx.lineTo(area.xAt(size.edges[i]!), y);
          ctx.lineTo(area.xAt(size.edges[i + 1]!), y);
        }
        ctx.closePath();
        ctx.fill();
      }
      ctx.restore();
    },
    afterDatasetsDraw({ ctx, chartArea, width, height }) {
      const { drawing, laid, font } = sheetFor({ width, height });
      const { spec, drawn, tapers } = drawing;
      const theme = themes[spec.theme];
      const area = areaOf(chartArea, laid);
      ctx.save();
      ctx.lineWidth = 1.5;
      for (const { size, taper } of tapers) {
        ctx.strokeStyle = size.style.colour;
        const away = taper.step < 0 ? -1 : 1;
        ctx.beginPath();
        for (const i of taper.shaped) {
          const x = area.xAt((size.edges[i]! + size.edges[i + 1]!) / 2);
          // On the outer side of the step, where neither the steps nor the straight line are.
          const y = area.yAt(
            size.rows[i]!.width - (away * Math.abs(taper.step)) / size.rows[i]!.fabric.stitches,
          );
          ctx.moveTo(x, y + 7 * away);
          ctx.lineTo(x, y + away);
        }
        ctx.stroke();
      }
      const last = [...drawn].sort(
        (a, b) => Number(a.id === spec.highlighted) - Number(b.id === spec.highlighted),
      );
      for (const size of last) {
        const large = size.id === spec.highlighted ? 1 : 0.8;
        ctx.strokeStyle = size.style.colour;
        ctx.fillStyle = size.style.filled ? size.style.colour : theme.paper;
        for (const { x, y } of markPositions(size, spec.which, area))
          drawMark(ctx, size.style.mark, x, y, large);
      }
      for (const size of drawing.overlaid) {
        ctx.fillStyle = size.style.colour;
        for (const { x, y } of size.letter
          ? markPositions(
              { ...size, sizeIndex: size.sizeIndex + letterPosition(size.letter) },
              spec.which,
              area,
            )
          : [])
          drawLetter(ctx, size.letter, x, y, font, theme.paper);
      }
      const at = pointed();
      const size = at && drawn[at.size];
      if (size) ring(ctx, size, at.row, spec.which, area, theme.ink);
      ctx.restore();
    },
  };
}

/** How far after the marks of their size the letters stand: those of two lines of one size are never one upon the other. */
function letterPosition(letter: string): number {
  return 4 + 3 * (letter.charCodeAt(0) - 'A'.charCodeAt(0));
}

/** Where the marks of a size stand, in px. */
function markPositions(size: DrawnSize, which: Which, area: Area) {
  const left = area.xAt(0);
  const right = area.xAt(size.edges[size.rows.length]!);
  return markPositionsIn(left, right, size.sizeIndex).map((x) => {
    const row = size.rows[rowAt(size.edges, ((x - left) / (right - left)) * size.edges[size.rows.length]!)]!;
    return { x, y: area.yAt(acrossOf(row, which)) };
  });
}

export function drawMark(
  ctx: CanvasRenderingContext2D,
  mark: string,
  x: number,
  y: number,
  large: number,
): void {
  ctx.save();
  ctx.translate(x, y);
  ctx.scale(large, large);
  const path = new Path2D(mark);
  ctx.lineWidth = 1.5;
  ctx.fill(path);
  ctx.stroke(path);
  ctx.restore();
}

/** The letter of an overlay, on its line. */
export function drawLetter(
  ctx: CanvasRenderingContext2D,
  letter: string,
  x: number,
  y: number,
  font: string,
  paper: string,
): void {
  ctx.save();
  ctx.font = `bold ${font}`;
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  ctx.lineWidth = 4;
  ctx.lineJoin = 'round';
  ctx.strokeStyle = paper;
  ctx.strokeText(letter, x, y);
  ctx.fillText(letter, x, y);
  ctx.restore();
}

function ring(
  ctx: CanvasRenderingContext2D,
  size: DrawnSize,
  row: number,
  which: Which,
  area: Area,
  ink: string,
): void {
  const worked = size.rows[row]!;
  const x = area.xAt((size.edges[row]! + size.edges[row + 1]!) / 2);
  const y = area.yAt(acrossOf(worked, which));
  ctx.strokeStyle = ink;
  ctx.lineWidth = 1.5;
  ctx.beginPath();
  ctx.arc(x, y, 7, 0, 2 * Math.PI);
  ctx.stroke();
}
