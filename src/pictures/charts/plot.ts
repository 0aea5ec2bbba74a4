import {
  Chart,
  Interaction,
  LineController,
  LineElement,
  LinearScale,
  PointElement,
  Tooltip,
  type ChartData,
  type ChartOptions,
  type ChartType,
  type InteractionItem,
  type InteractionModeFunction,
  type Plugin,
  type Scale,
  type ScaleOptions,
  type TooltipPositionerFunction,
} from 'chart.js';
import { broken, familyOf, tickSize, tooltipStyle, type FixedSheet } from './chart-style';
import { drawingOf, arrange, plottedOf, type Drawing, type Laid } from './drawing';
import { ratioPaper, type SheetFor } from './ratio-paper';
import { readingInWords, readingOf } from './reading';
import { acrossOf, rowAt } from './series';
import { sizeMarks, type Pointed } from './size-marks';
import { themes } from './theme';
import type { Tick } from './ticks';
import type { Plot, PlotSpec } from './types';

declare module 'chart.js' {
  interface InteractionModeMap {
    pieceRow: InteractionModeFunction;
  }
  interface TooltipPositionerMap {
    pieceRow: TooltipPositionerFunction<ChartType>;
  }
}

/** What a chart has under the pointer. Chart.js keeps its ways of pointing in one place for all charts. */
const pointing = new WeakMap<
  Chart,
  { find(x: number, y: number): InteractionItem[]; pointOf(): Point | false }
>();
type Point = { x: number; y: number };

Interaction.modes.pieceRow = (chart, event) => {
  const { x, y } = event as unknown as Point;
  return pointing.get(chart)?.find(x, y) ?? [];
};
Tooltip.positioners.pieceRow = function () {
  return pointing.get(this.chart)?.pointOf() ?? false;
};
Chart.register(LineController, LineElement, PointElement, LinearScale, Tooltip);

/**
 * Draws a plot on a canvas, which fills the element it stands in (that element has a position and a size of its own;
 * `heightFor` gives a good height), or on a sheet of a fixed size. Nothing moves by itself, so there is no motion to
 * reduce. Ticks take the canvas's font and three quarters of its size.
 *
 * @example
 * const plot = drawPlot(canvas, spec);
 * plot.update({ ...spec, highlighted: 'm' });
 * plot.close();
 */
export function drawPlot(canvas: HTMLCanvasElement, spec: PlotSpec, sheet?: FixedSheet): Plot {
  let drawing = drawingOf(spec);
  let pointed: Pointed | null = null;
  let closed = false;
  let latest: { drawing: Drawing; width: number; height: number; font: number; laid: Laid } | undefined;

  if (sheet) Object.assign(canvas, { width: sheet.width, height: sheet.height });
  const fontSize = () => (sheet ? 12 : tickSize(canvas));
  const fontFamily = () => sheet?.family ?? familyOf(canvas);

  /** Chart.js asks for the layout several times while it lays out four axes; it is the same each time. */
  const laidOut = (width: number, height: number): Laid => {
    const font = fontSize();
    const stale =
      !latest ||
      latest.drawing !== drawing ||
      latest.width !== width ||
      latest.height !== height ||
      latest.font !== font;
    if (stale) latest = { drawing, width, height, font, laid: arrange(drawing, width, height, font) };
    return latest!.laid;
  };

  const axis = (
    position: 'left' | 'top' | 'right' | 'bottom',
    ticksOf: (laid: Laid) => readonly Tick[],
  ): ScaleOptions<'linear'> => {
    const theme = themes[drawing.spec.theme];
    const lies = position === 'top' || position === 'bottom';
    const laidFor = (scale: Scale) => laidOut(scale.chart.width, scale.chart.height);
    return {
      type: 'linear',
      axis: lies ? 'x' : 'y',
      position,
      bounds: 'data',
      grid: { drawOnChartArea: false, tickLength: 4, color: theme.edge },
      border: { display: false },
      ticks: {
        color: theme.soft,
        font: { family: fontFamily(), size: fontSize() },
        padding: 2,
        autoSkip: false,
        minRotation: 0,
        maxRotation: 0,
        callback: (_value, i, ticks) => ticks[i]?.label as string,
      },
      afterDataLimits(scale) {
        [scale.min, scale.max] = laidFor(scale).frame[lies ? 'x' : 'y'];
      },
      afterBuildTicks(scale) {
        scale.ticks = ticksOf(laidFor(scale)).map((tick) => ({ ...tick }));
      },
      afterFit(scale) {
        const { insets } = laidFor(scale).frame;
        if (lies) {
          scale.height = insets[position];
          scale.paddingLeft = scale.paddingRight = 0;
        } else {
          scale.width = insets[position];
          scale.paddingTop = scale.paddingBottom = 0;
        }
      },
    };
  };

  /** What the options depend on; all else they ask for when they need it. */
  const check = () => [drawing.spec.theme, fontSize(), fontFamily()].join(' ');

  const options = (): ChartOptions<'line'> => {
    const theme = themes[drawing.spec.theme];
    const font = { family: fontFamily(), size: fontSize() };
    return {
      animation: false,
      ...(sheet ? { responsive: false, devicePixelRatio: sheet.ratio } : { responsive: true }),
      maintainAspectRatio: false,
      layout: { padding: 0, autoPadding: false },
      hover: { mode: 'pieceRow' },
      interaction: { mode: 'pieceRow' },
      elements: { point: { radius: 0, hoverRadius: 0, hitRadius: 0 }, line: { tension: 0 } },
      scales: {
        x: axis('bottom', (laid) => laid.bottom),
        y: axis('left', (laid) => laid.left),
        rows: axis('top', (laid) => laid.top),
        stitches: axis('right', (laid) => laid.right),
      },
      plugins: {
        tooltip: {
          ...tooltipStyle(theme, font),
          mode: 'pieceRow',
          position: 'pieceRow',
          // Above or below the row, so that the row itself stays in sight on a narrow screen too.
          xAlign: 'center',
          yAlign: () => (isLow() ? 'bottom' : 'top'),
          callbacks: {
            title: () => reading()?.heading ?? '',
            label: ({ chart }) => broken(reading()?.lines ?? [], chart, font),
          },
        },
      },
    };
  };

  const data = (): ChartData<'line', { x: number; y: number }[]> => ({
    datasets: drawing.lines.map(({ size, kind, points }, index) => {
      const theme = themes[drawing.spec.theme];
      const strong = size.id === drawing.spec.highlighted;
      const borderWidth = { worked: strong ? 2.75 : 1.5, straight: 1, before: 1.25, 'what-if': 1.75 }[kind];
      const dash = 'dash' in size ? size.dash : kind === 'straight' ? [] : size.style.dash;
      return {
        label: size.label,
        // Chart.js puts the first of its lines on top.
        order: -index,
        data: points as { x: number; y: number }[],
        parsing: false,
        normalized: true,
        xAxisID: 'x',
        yAxisID: 'y',
        clip: 4,
        // What was before stays under what is, and is quieter: grey.
        borderColor: kind === 'straight' ? theme.soft : kind === 'before' ? theme.edge : size.style.colour,
        // A thick line needs longer dashes to look the same.
        borderDash: dash.map((px) => (px * (borderWidth + 1.5)) / 3),
        borderWidth,
        borderJoinStyle: 'miter',
      };
    }),
  });

  const reading = () => {
    const size = pointed && drawing.drawn[pointed.size];
    return size ? readingOf(drawing.spec, size, pointed!.row) : null;
  };

  const pointOf = ({ size: index, row }: Pointed): Point | false => {
    const size = drawing.drawn[index];
    const scales = chart.scales;
    if (!size?.rows[row] || !scales.x || !scales.y) return false;
    return {
      x: scales.x.getPixelForValue((size.edges[row]! + size.edges[row + 1]!) / 2),
      y: scales.y.getPixelForValue(acrossOf(size.rows[row]!, drawing.spec.which)),
    };
  };

  const isLow = () => {
    const point = pointed && pointOf(pointed);
    return point ? point.y > (chart.chartArea.top + chart.chartArea.bottom) / 2 : false;
  };

  /** The tooltip hangs on one element of the chart; which one is all the same, its place and words are our own. */
  const handle = (): InteractionItem[] => {
    const element = chart.getDatasetMeta(0).data[0];
    return element ? [{ element, datasetIndex: 0, index: 0 }] : [];
  };

  const sheetFor: SheetFor = ({ width, height }) => ({
    drawing,
    laid: laidOut(width, height),
    fontSize: fontSize(),
    font: `${fontSize()}px ${fontFamily()}`,
  });

  const leaving: Plugin<'line'> = {
    id: 'leaving',
    beforeEvent(_chart, { event }) {
      if (event.type === 'mouseout') pointed = null;
    },
  };

  let styleOf = check();
  const chart = new Chart<'line', { x: number; y: number }[]>(canvas, {
    type: 'line',
    data: data(),
    options: options(),
    plugins: [ratioPaper(sheetFor), sizeMarks(sheetFor, () => pointed), leaving],
  });

  pointing.set(chart as Chart, {
    find(x, y) {
      pointed = nearest(x, y);
      return pointed ? handle() : [];
    },
    pointOf: () => (pointed ? pointOf(pointed) : false),
  });

  /** The size whose line is nearest above or below; the highlighted one is a little nearer than it looks. */
  function nearest(x: number, y: number): Pointed | null {
    const { left, right, top, bottom } = chart.chartArea;
    if (x < left || x > right || y < top || y > bottom || !chart.scales.x) return null;
    const along = chart.scales.x.getValueForPixel(x) ?? 0;
    let best: Pointed | null = null;
    let least = Infinity;
    drawing.drawn.forEach((size, index) => {
      const here = { size: index, row: rowAt(size.edges, along) };
      const point = pointOf(here);
      if (!point) return;
      const beyond = Math.max(0, x - endPosition(size.edges));
      const distance = Math.hypot(point.y - y, beyond) - (size.id === drawing.spec.highlighted ? 6 : 0);
      if (distance < least) [best, least] = [here, distance];
    });
    return best;
  }

  function endPosition(edges: Float64Array): number {
    return chart.scales.x!.getPixelForValue(edges[edges.length - 1]!);
  }

  return {
    update(next) {
      if (closed) return;
      drawing = drawingOf(next);
      pointed = null;
      chart.tooltip?.setActiveElements([], { x: 0, y: 0 });
      chart.data = data();
      // Chart.js takes long over new options.
      if (check() !== styleOf) {
        styleOf = check();
        chart.options = options();
      }
      chart.update('none');
    },
    pointAt(row, id = drawing.ruled?.id) {
      if (closed) return null;
      const words = row === null || id === undefined ? null : readingInWords(drawing.spec, id, row);
      pointed =
        words === null ? null : { size: drawing.drawn.findIndex((size) => size.id === id), row: row! - 1 };
      const point = pointed && pointOf(pointed);
      chart.tooltip?.setActiveElements(point ? handle() : [], point || { x: 0, y: 0 });
      chart.draw();
      return words;
    },
    data() {
      const size = pointed && drawing.drawn[pointed.size];
      return {
        ...plottedOf(drawing, laidOut(chart.width, chart.height)),
        pointed: size ? { id: size.id, row: pointed!.row + 1 } : null,
      };
    },
    close() {
      if (closed) return;
      closed = true;
      pointing.delete(chart as Chart);
      chart.destroy();
    },
  };
}
