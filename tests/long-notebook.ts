import { usualSettings, writeFile, type Notebook, type Size } from '../src/notebook';
import { each, f, formula, measure, piece, swatch, value } from '../src/notebook/cell-builders';

const sizes: readonly Size[] = Array.from({ length: 9 }, (_, i) => ({
  id: `s${i + 1}`,
  label: String(i + 1),
}));

/**
 * Invented: panels in nine sizes that narrow over so many rows, whose counts all follow one swatch. `shaped` is how
 * many stitches they lose, two on a row. There are several of them, alike, to go from one to the other.
 */
export function longNotebook(rows: number, shaped: number, panels = 1): Notebook {
  return {
    title: 'Long panels',
    settings: usualSettings,
    sizes,
    sections: [
      {
        id: 'all',
        label: 'All',
        cells: [
          swatch('Body', { worked: '4 mm needles', stitches: 24, rows: 32 }, { name: 'body' }),
          measure(
            'Width',
            'length',
            each(
              sizes,
              sizes.map((_, i) => 60 + 4 * i),
            ),
          ),
          formula('Stitches', 'ROUNDCOUNT(width * body_sts; "even")', { name: 'panel_sts' }),
          ...Array.from({ length: panels }, (_, i) =>
            piece(`Panel ${i + 1}`, 'flat', 'panel_sts', [
              {
                kind: 'taper',
                name: 'taper',
                label: 'Narrowing',
                fabric: 'body',
                to: f(`panel_sts - STS(${shaped})`),
                over: value(rows),
                perRow: value(2),
                every: 1,
                before: value(0),
                after: value(0),
                order: 'longFirst',
              },
            ]),
          ),
        ],
      },
    ],
  };
}

export function longFile(rows: number, shaped: number, panels = 1): string {
  return writeFile(longNotebook(rows, shaped, panels));
}
