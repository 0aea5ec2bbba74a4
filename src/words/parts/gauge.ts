import { allCells, writeGauge, type Swatch } from '../../notebook';
import { swatchNamed, type Gathered } from '../gathered';
import type { PatternPart, Sentence } from '../pattern-document';
import { theirs, type Sentences } from '../sentence';
import { counted } from '../size-list';
import type { PatternSource } from '../source';

/** The swatches that the pieces are worked to, in the order of the notebook. */
export function swatchesUsed(source: PatternSource, { pieces }: Gathered): Swatch[] {
  const used = new Set(
    pieces.flatMap(({ cell }) =>
      cell.stretches.flatMap(({ fabric }) => swatchNamed(source, fabric)?.id ?? []),
    ),
  );
  return allCells(source.notebook).filter(
    (cell): cell is Swatch => cell.kind === 'swatch' && used.has(cell.id),
  );
}

/** The gauge of each fabric, over what the notebook counts gauges over. */
export function gaugePart(source: PatternSource, found: Gathered, sentences: Sentences): PatternPart {
  const { settings } = source.notebook;
  const size = found.sizes[0]?.id ?? source.notebook.sizes[0]!.id;
  const lines = swatchesUsed(source, found).flatMap((swatch): Sentence[] => {
    const [sts, rows] = (['sts', 'rows'] as const).map((key) => source.number(size, swatch.id, key));
    if (sts === undefined || rows === undefined) return [];
    const worked = swatch.worked.trim();
    const write = (perCm: number): string => writeGauge(perCm, settings.gaugeOver, settings);
    const unit = (perCm: number, noun: string): string =>
      write(perCm) === '1' ? counted([1], noun) : `${write(perCm)} ${noun}s`;
    return [
      sentences.paragraph(
        `gauge ${swatch.id}`,
        worked === ''
          ? '{fabric}: {stitches} and {rows} to {over}.'
          : '{fabric}: {stitches} and {rows} to {over} ({worked}).',
        {
          fabric: theirs(swatch.label),
          stitches: unit(sts, 'st'),
          rows: unit(rows, 'row'),
          over: settings.gaugeOver,
          ...(worked === '' ? {} : { worked: theirs(worked) }),
        },
      ),
    ];
  });
  return {
    key: 'gauge',
    kind: 'gauge',
    heading: sentences.say('Gauge'),
    blocks: [{ kind: 'list', key: 'gauge list', items: lines }],
  };
}
