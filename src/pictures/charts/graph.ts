import {
  Chart,
  LineController,
  LineElement,
  LinearScale,
  PointElement,
  Tooltip,
  type ChartData,
  type ChartOptions,
  type Plugin,
} from 'chart.js';
import { broken, familyOf, tickSize, tooltipStyle, type FixedSheet } from './chart-style';
import type { Graph, GraphSpec } from './graph-spec';
import { figure } from './in-words';
import { drawLetter, drawMark } from './size-marks';
import { themes } from './theme';

Chart.register(LineController, LineElement, PointElement, LinearScale, Tooltip);

type Corner = { x: number; y: number };

/**
 * Draws a graph on a canvas, which fills the element it stands in, or on a sheet of a fixed size. Unlike a plot it lies
 * on no ratio paper: along it stand sizes, or the numbers of rows.
 *
 * @example
 * const graph = drawGraph(canvas, graphOf(grading));
 * graph.pointAt(2);
 * graph.close();
 */
export function drawGraph(canvas: HTMLCanvasElement, first: GraphSpec, sheet?: FixedSheet): Graph {
  let spec = first;
  let closed = false;
  if (sheet) Object.assign(canvas, { width: sheet.width, height: sheet.height });
  const fontSize = () => (sheet ? 12 : tickSize(canvas));
  const family = () => sheet?.family ?? familyOf(canvas);

  const data = (): ChartData<'line', Corner[]> => ({
    datasets: spec.lines.map((line, index) => ({
      label: line.label,
      order: -index,
      data: spec.along.map(({ value }, i) => ({ x: value, y: line.values[i] ?? NaN })),
      parsing: false,
      normalized: true,
      clip: 8,
      borderColor: line.colour,
      borderDash: [...line.dash],
      borderWidth: 1.75,
      ...(line.stepped ? { stepped: 'before' as const } : {}),
    })),
  });

  const options = (): ChartOptions<'line'> => {
    const theme = themes[spec.theme];
    const font = { family: family(), size: fontSize() };
    const named = new Map(spec.along.map(({ value, label }) => [value, label]));
    const values = spec.along.map(({ value }) => value);
    const [from, to] = [Math.min(...ends(values)), Math.max(...ends(values))];
    const room = spec.marks ? 0.5 : 0;
    const title = (text: string) => ({ display: true, text, color: theme.soft, font, padding: 2 });
    return {
      animation: false,
      ...(sheet ? { responsive: false, devicePixelRatio: sheet.ratio } : { responsive: true }),
      maintainAspectRatio: false,
      layout: { padding: { top: 8, right: Math.round(fontSize() * 1.6) } },
      interaction: { mode: 'index', axis: 'x', intersect: false },
      elements: { point: { radius: 0, hoverRadius: 0, hitRadius: 0 }, line: { tension: 0 } },
      scales: {
        x: {
          type: 'linear',
          min: from - room,
          max: to + room,
          grid: { color: theme.rule },
          border: { color: theme.edge },
          title: title(spec.captions.along),
          ticks: {
            color: theme.soft,
            font,
            maxRotation: 0,
            autoSkip: true,
            callback: (value) => named.get(Number(value)) ?? '',
          },
          ...(spec.marks
            ? {
                afterBuildTicks: (scale) => {
                  scale.ticks = spec.along.map(({ value, label }) => ({ value, label }));
                },
              }
            : {}),
        },
        y: {
          type: 'linear',
          grid: { color: theme.rule },
          border: { color: theme.edge },
          title: title(spec.captions.across),
          ticks: {
            color: theme.soft,
            font,
            maxTicksLimit: 9,
            callback: (value, _i, ticks) => {
              const step = Math.abs((ticks[1]?.value ?? 1) - (ticks[0]?.value ?? 0));
              return figure(Number(value), step % 1 === 0 ? 0 : 1, spec.decimal);
            },
          },
        },
      },
      plugins: {
        tooltip: {
          ...tooltipStyle(theme, font),
          // One text for all the lines at a place.
          filter: (_item, index) => index === 0,
          callbacks: {
            title: ([item]) => spec.reading(item?.dataIndex ?? 0).heading,
            label: ({ chart, dataIndex }) => broken(spec.reading(dataIndex).lines, chart, font),
          },
        },
      },
    };
  };

  const paper: Plugin<'line'> = {
    id: 'paper',
    beforeDraw({ ctx, width, height, scales, chartArea }) {
      const theme = themes[spec.theme];
      ctx.save();
      ctx.fillStyle = theme.paper;
      ctx.fillRect(0, 0, width, height);
      for (const [lower, upper] of spec.between ?? []) {
        ctx.fillStyle = theme.wash;
        ctx.globalAlpha = 0.7;
        band(ctx, lower, upper, (i) => scales.x!.getPixelForValue(spec.along[i]!.value), scales.y!);
      }
      ctx.globalAlpha = 1;
      const zero = scales.y!.getPixelForValue(0);
      if (spec.straight && zero >= chartArea.top && zero <= chartArea.bottom) {
        ctx.strokeStyle = theme.soft;
        ctx.beginPath();
        ctx.moveTo(chartArea.left, zero);
        ctx.lineTo(chartArea.right, zero);
        ctx.stroke();
      }
      ctx.restore();
    },
    afterDatasetsDraw({ ctx, scales, chartArea, tooltip }) {
      const theme = themes[spec.theme];
      const at = (i: number, value: number) => ({
        x: scales.x!.getPixelForValue(spec.along[i]!.value),
        y: scales.y!.getPixelForValue(value),
      });
      ctx.save();
      for (const line of spec.lines) {
        let last: Corner | undefined;
        line.values.forEach((value, i) => {
          if (value === null) return;
          last = at(i, value);
          const mark = spec.marks?.[i];
          if (!mark) return;
          ctx.strokeStyle = mark.colour;
          ctx.fillStyle = mark.filled ? mark.colour : theme.paper;
          drawMark(ctx, mark.mark, last.x, last.y, 0.9);
        });
        ctx.fillStyle = line.colour;
        const font = `${fontSize()}px ${family()}`;
        if (last)
          drawLetter(ctx, line.letter, Math.min(last.x + 14, chartArea.right + 8), last.y, font, theme.paper);
      }
      const pointed = tooltip?.getActiveElements()[0]?.index;
      if (pointed !== undefined && spec.along[pointed]) {
        const { x } = at(pointed, 0);
        ctx.strokeStyle = theme.ink;
        ctx.lineWidth = 1;
        ctx.setLineDash([2, 3]);
        ctx.beginPath();
        ctx.moveTo(x, chartArea.top);
        ctx.lineTo(x, chartArea.bottom);
        ctx.stroke();
      }
      ctx.restore();
    },
  };

  const chart = new Chart<'line', Corner[]>(canvas, {
    type: 'line',
    data: data(),
    options: options(),
    plugins: [paper],
  });

  return {
    update(next) {
      if (closed) return;
      spec = next;
      chart.tooltip?.setActiveElements([], { x: 0, y: 0 });
      chart.data = data();
      chart.options = options();
      chart.update('none');
    },
    pointAt(i) {
      if (closed) return null;
      if (i === null || !spec.along[i]) {
        chart.tooltip?.setActiveElements([], { x: 0, y: 0 });
        chart.draw();
        return null;
      }
      const element = chart.getDatasetMeta(0).data[i];
      chart.tooltip?.setActiveElements(element ? [{ datasetIndex: 0, index: i }] : [], {
        x: element?.x ?? 0,
        y: Number.isFinite(element?.y) ? element!.y : chart.chartArea.top,
      });
      chart.draw();
      const { heading, lines } = spec.reading(i);
      return [heading, ...lines].map((line) => `${line}.`).join(' ');
    },
    data: () => spec.lines.map(({ id, values }) => ({ id, values })),
    close() {
      if (closed) return;
      closed = true;
      chart.destroy();
    },
  };
}

/** The first and the last; both 0 of nothing. */
function ends(values: readonly number[]): [number, number] {
  return [values[0] ?? 0, values.at(-1) ?? 0];
}

/** Fills what lies between two lines, where both are there. */
function band(
  ctx: CanvasRenderingContext2D,
  lower: readonly (number | null)[],
  upper: readonly (number | null)[],
  xOf: (i: number) => number,
  y: { getPixelForValue(value: number): number },
): void {
  const both = lower.flatMap((value, i) => (value === null || (upper[i] ?? null) === null ? [] : [i]));
  if (both.length === 0) return;
  ctx.beginPath();
  both.forEach((i) => ctx.lineTo(xOf(i), y.getPixelForValue(upper[i]!)));
  [...both].reverse().forEach((i) => ctx.lineTo(xOf(i), y.getPixelForValue(lower[i]!)));
  ctx.closePath();
  ctx.fill();
}
