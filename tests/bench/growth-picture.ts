import type { Cost } from './growth';

interface Panel {
  readonly title: string;
  readonly along: string;
  readonly costs: readonly Cost[];
}

const width = 420;
const height = 300;
const inset = { left: 52, right: 84, top: 44, bottom: 44 };

/** How an edit's cost grows, as an SVG with a panel for each way of growing, both axes by powers of ten. */
export function growthPicture(panels: readonly Panel[]): string {
  const drawn = panels.map((panel, at) => `<g transform="translate(${at * width} 0)">${panelOf(panel)}</g>`);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${panels.length * width} ${height}" font-family="sans-serif" font-size="12">
<rect width="100%" height="100%" fill="#fff"/>
${drawn.join('\n')}
</svg>
`;
}

function panelOf({ title, along, costs }: Panel): string {
  const x = scale(
    costs.map(({ cells }) => Math.max(1, cells)),
    [inset.left, width - inset.right],
  );
  const y = scale(
    costs.flatMap(({ ours, raw }) => [ours, raw]),
    [height - inset.bottom, inset.top],
  );
  const grid = [
    ...x.powers.map(
      (n) => `<path d="M${x.at(n)} ${inset.top}V${height - inset.bottom}" stroke="#ddd"/>
<text x="${x.at(n)}" y="${height - inset.bottom + 16}" text-anchor="middle">${n}</text>`,
    ),
    ...y.powers.map(
      (n) => `<path d="M${inset.left} ${y.at(n)}H${width - inset.right}" stroke="#ddd"/>
<text x="${inset.left - 6}" y="${y.at(n) + 4}" text-anchor="end">${n}</text>`,
    ),
  ];
  const line = (which: 'ours' | 'raw', label: string, dash: string, below: number): string => {
    const points = costs.map((cost) => `${x.at(Math.max(1, cost.cells))} ${y.at(cost[which])}`);
    const end = costs.at(-1)!;
    return `<polyline points="${points.join(' ')}" fill="none" stroke="#222" stroke-width="1.6" stroke-dasharray="${dash}"/>
<text x="${x.at(Math.max(1, end.cells)) + 6}" y="${y.at(end[which]) + below}">${label}</text>`;
  };
  return `<text x="${inset.left}" y="20" font-weight="bold">${title}</text>
<text x="${inset.left}" y="36">ms</text>
<text x="${width - inset.right}" y="${height - 8}" text-anchor="end">${along}</text>
${grid.join('\n')}
${line('raw', 'HyperFormula', '5 4', 12)}
${line('ours', 'the sheet', 'none', -4)}`;
}

/** Powers of ten round the values, and where a value lies between the two ends. */
function scale(values: readonly number[], [from, to]: readonly [number, number]) {
  const low = Math.floor(Math.log10(Math.min(...values)));
  const high = Math.max(low + 1, Math.ceil(Math.log10(Math.max(...values))));
  const at = (value: number): number =>
    Math.round((from + ((Math.log10(value) - low) / (high - low)) * (to - from)) * 10) / 10;
  const powers = Array.from({ length: high - low + 1 }, (_, i) => Number((10 ** (low + i)).toPrecision(1)));
  return { at, powers };
}
