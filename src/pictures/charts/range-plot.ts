import {
  Chart,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
  type ChartData,
  type ChartOptions,
  type Plugin,
} from 'chart.js';
import type { FixedSheet } from './chart-style';
import { sizeStyle } from './palette';
import { rangeMarks } from './range-marks';
import { drawMark } from './size-marks';
import { themes, type ThemeName } from './theme';

Chart.register(LineController, LineElement, PointElement, LinearScale);

/** One size of a result over a range; a value for each step, null where there is none. */
export interface RangedSize {
  readonly id: string;
  readonly label: string;
  /** Its place among the notebook's sizes, from 0: the same colour and line style as everywhere. */
  readonly sizeIndex: number;
  readonly values: readonly (number | null)[];
  /** Where the count is a whole number of repeats with nothing to round. */
  readonly whole: readonly { readonly at: number; readonly value: number }[];
}

/** A result over a range of an input, all in the units that are shown. */
export interface RangeSpec {
  readonly steps: readonly number[];
  readonly sizes: readonly RangedSize[];
  /** Whether it goes in steps, as counts do: it is drawn as a stair then, and never otherwise than worked. */
  readonly stairs: boolean;
  /** "Ease, cm" and "Back stitches". */
  readonly captions: readonly [along: string, up: string];
  /** Where the input stands now; null where that is not one value. */
  readonly now: number | null;
  readonly highlighted: string | null;
  readonly decimal: '.' | ',';
  readonly theme: ThemeName;
}

export interface RangePlot {
  update(spec: RangeSpec): void;
  /** Marks a step; null marks none. */
  pointAt(step: number | null): void;
  /** What was drawn. */
  data(): RangeSpec;
  close(): void;
}

/** What a range tells of the pointer: the step it is nearest to, and the value that a click takes. */
export interface RangePointing {
  pointed(step: number | null): void;
  taken(value: number, size: string | null): void;
}

const near = 9;

/** What stands about the mark of a size where its repeats are whole: an SVG path. */
export const wholeRing = 'M7 0A7 7 0 1 1 -7 0A7 7 0 1 1 7 0Z';

/** Draws a result over a range, a line to a size, on a canvas that fills the element it stands in or on a sheet of a fixed size. */
export function drawRange(
  canvas: HTMLCanvasElement,
  spec: RangeSpec,
  on: RangePointing,
  sheet?: FixedSheet,
): RangePlot {
  if (sheet) Object.assign(canvas, { width: sheet.width, height: sheet.height });
  let drawn = spec;
  let step: number | null = null;

  const fontFamily = (): string => sheet?.family ?? getComputedStyle(canvas).fontFamily;
  const fontSize = (): number => (sheet ? 12 : canvas.clientWidth < 480 ? 11 : 13);
  const number = (value: number): string => String(Number(value.toPrecision(10))).replace('.', drawn.decimal);

  const data = (): ChartData<'line', { x: number; y: number | null }[]> => {
    const lines = drawn.sizes.map((size) => {
      const style = sizeStyle(size.sizeIndex, drawn.theme);
      const strong = size.id === drawn.highlighted;
      return {
        label: size.label,
        data: drawn.steps.map((x, at) => ({ x, y: size.values[at] ?? null })),
        stepped: drawn.stairs ? ('middle' as const) : (false as const),
        borderColor: style.colour,
        borderDash: [...style.dash],
        borderWidth: strong ? 2.75 : 1.5,
        pointRadius: drawn.steps.length === 1 ? 3 : 0,
        order: strong ? 1 : 2,
      };
    });
    return { datasets: lines };
  };

  const options = (): ChartOptions<'line'> => {
    const theme = themes[drawn.theme];
    const font = { family: fontFamily(), size: fontSize() };
    const axis = (text: string) => ({
      type: 'linear' as const,
      grid: { color: theme.rule, tickColor: theme.edge },
      border: { color: theme.edge },
      title: { display: true, text, color: theme.soft, font },
      ticks: {
        color: theme.soft,
        font,
        maxRotation: 0,
        callback: (value: number | string) => number(Number(value)),
      },
    });
    const [first, last] = [drawn.steps[0] ?? 0, drawn.steps.at(-1) ?? 1];
    const alone = first === last ? 1 : 0;
    return {
      animation: false,
      ...(sheet ? { responsive: false, devicePixelRatio: sheet.ratio } : { responsive: true }),
      maintainAspectRatio: false,
      elements: { line: { tension: 0 } },
      events: [],
      scales: {
        x: { ...axis(drawn.captions[0]), min: first - alone, max: last + alone },
        y: { ...axis(drawn.captions[1]), grace: '4%' },
      },
    };
  };

  /** Each size's mark along its line; and within a ring where its repeats are whole. */
  const marks: Plugin<'line'> = {
    id: 'sizeMarks',
    afterDatasetsDraw({ ctx, chartArea, scales }) {
      const theme = themes[drawn.theme];
      const [along, up] = [scales['x']!, scales['y']!];
      const ends = [chartArea.left, chartArea.right] as const;
      ctx.save();
      for (const { sizeIndex, values, whole } of drawn.sizes) {
        const { colour, mark, filled } = sizeStyle(sizeIndex, drawn.theme);
        const put = (x: number, value: number, large: number): void => {
          ctx.fillStyle = filled ? colour : theme.paper;
          drawMark(ctx, mark, x, up.getPixelForValue(value), large);
        };
        const line = { steps: drawn.steps, values, stairs: drawn.stairs };
        ctx.strokeStyle = colour;
        for (const { x, value } of rangeMarks(line, sizeIndex, ends, (x) => along.getValueForPixel(x)!))
          put(x, value, 0.8);
        for (const { at, value } of whole) {
          const x = along.getPixelForValue(at);
          ctx.fillStyle = theme.paper;
          drawMark(ctx, wholeRing, x, up.getPixelForValue(value), 1);
          put(x, value, 0.7);
        }
      }
      ctx.restore();
    },
  };

  /** Where the input stands, and the step that is pointed at. */
  const lines: Plugin<'line'> = {
    id: 'standing',
    afterDatasetsDraw({ ctx, chartArea, scales }) {
      const theme = themes[drawn.theme];
      const line = (value: number, colour: string, dash: number[]): void => {
        const x = scales['x']!.getPixelForValue(value);
        if (x < chartArea.left - 1 || x > chartArea.right + 1) return;
        ctx.save();
        ctx.strokeStyle = colour;
        ctx.setLineDash(dash);
        ctx.beginPath();
        ctx.moveTo(x, chartArea.top);
        ctx.lineTo(x, chartArea.bottom);
        ctx.stroke();
        ctx.restore();
      };
      if (drawn.now !== null) line(drawn.now, theme.edge, [4, 3]);
      const pointed = step === null ? undefined : drawn.steps[step];
      if (pointed !== undefined) line(pointed, theme.accent, []);
    },
  };

  const chart = new Chart<'line', { x: number; y: number | null }[]>(canvas, {
    type: 'line',
    data: data(),
    options: options(),
    plugins: [marks, lines],
  });

  function stepAt(x: number): number | null {
    const { left, right } = chart.chartArea;
    if (x < left - near || x > right + near || drawn.steps.length === 0) return null;
    const value = chart.scales['x']!.getValueForPixel(x)!;
    let best = 0;
    for (const [at, one] of drawn.steps.entries()) {
      if (Math.abs(one - value) < Math.abs(drawn.steps[best]! - value)) best = at;
    }
    return best;
  }

  function markAt(x: number, y: number): { at: number; size: string } | null {
    let found: { at: number; size: string } | null = null;
    let least = near;
    for (const size of drawn.sizes) {
      for (const { at, value } of size.whole) {
        const away = Math.hypot(
          chart.scales['x']!.getPixelForValue(at) - x,
          chart.scales['y']!.getPixelForValue(value) - y,
        );
        if (away <= least) [found, least] = [{ at, size: size.id }, away];
      }
    }
    return found;
  }

  function onMove(event: PointerEvent): void {
    const at = stepAt(event.offsetX);
    if (at !== step) on.pointed(at);
  }

  function onLeave(): void {
    on.pointed(null);
  }

  function onClick(event: MouseEvent): void {
    const mark = markAt(event.offsetX, event.offsetY);
    if (mark) {
      on.taken(mark.at, mark.size);
      return;
    }
    const at = stepAt(event.offsetX);
    if (at !== null) on.taken(drawn.steps[at]!, null);
  }

  canvas.addEventListener('pointermove', onMove);
  canvas.addEventListener('pointerleave', onLeave);
  canvas.addEventListener('click', onClick);

  return {
    update(next) {
      drawn = next;
      chart.data = data();
      chart.options = options();
      chart.update('none');
    },
    pointAt(to) {
      step = to;
      chart.draw();
    },
    data: () => drawn,
    close() {
      canvas.removeEventListener('pointermove', onMove);
      canvas.removeEventListener('pointerleave', onLeave);
      canvas.removeEventListener('click', onClick);
      chart.destroy();
    },
  };
}
