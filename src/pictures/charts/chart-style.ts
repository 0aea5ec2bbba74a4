import type { Theme } from './theme';
import { wrapped } from './wrapped';

/** A sheet of so many px, drawn `ratio` times as fine: for paper. */
export interface FixedSheet {
  readonly width: number;
  readonly height: number;
  readonly ratio: number;
  /** CSS font family of what is written on it. */
  readonly family: string;
}

/** The size in px of the ticks of a canvas on the page: three quarters of its text. */
export function tickSize(canvas: HTMLCanvasElement): number {
  return Math.max(11, Math.round(parseFloat(getComputedStyle(canvas).fontSize) * 0.75) || 12);
}

export function familyOf(canvas: HTMLCanvasElement): string {
  return getComputedStyle(canvas).fontFamily || 'system-ui, sans-serif';
}

/** How every picture says what it is pointed at. */
export function tooltipStyle(theme: Theme, font: { family: string; size: number }) {
  return {
    animation: false as const,
    displayColors: false,
    backgroundColor: theme.leaf,
    borderColor: theme.edge,
    borderWidth: 1,
    cornerRadius: 2,
    caretSize: 0,
    caretPadding: 12,
    padding: 8,
    titleColor: theme.soft,
    titleFont: { ...font, weight: 'normal' as const },
    titleMarginBottom: 3,
    bodyColor: theme.ink,
    bodyFont: font,
  };
}

/** Lines of a tooltip, broken where they would not fit on the canvas. */
export function broken(
  lines: readonly string[],
  { ctx, width }: { ctx: CanvasRenderingContext2D; width: number },
  font: { family: string; size: number },
): string[] {
  ctx.save();
  ctx.font = `${font.size}px ${font.family}`;
  const fitting = lines.flatMap((line) =>
    wrapped(line, Math.min(360, width - 32), (text) => ctx.measureText(text).width),
  );
  ctx.restore();
  return fitting;
}
