import { sizeStyle } from './palette';
import type { ThemeName } from './theme';
import type { LegendEntry, WorkedSize } from './types';

/**
 * What the page writes beside a picture: each size with its colour, line and mark, whether it is drawn or not.
 *
 * @example
 * legendFor([{ id: 'm', label: 'M', rows: null, trouble: 'The cuff is missing.' }], 'light', null)[0]?.trouble
 * // 'The cuff is missing.'
 */
export function legendFor(
  sizes: readonly WorkedSize[],
  theme: ThemeName,
  highlighted: string | null,
): LegendEntry[] {
  return sizes.map(({ id, label, rows, trouble }, place) => ({
    id,
    label,
    ...sizeStyle(place, theme),
    highlighted: id === highlighted,
    trouble: drawable(rows) ? null : (trouble ?? 'This size has no rows yet.'),
  }));
}

function drawable(rows: WorkedSize['rows']): boolean {
  return rows !== null && rows.length > 0;
}
