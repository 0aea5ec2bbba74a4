import { allCells, type Settings, type Swatch } from '../../../notebook';
import { writeGauge } from '../../../format';
import { swatchNamed, type Gathered } from '../gathered';
import type { PatternPart, Sentence } from '../../pattern-document';
import { theirs, type Sentences } from '../sentence';
import { counted } from '../size-list';
import type { PatternSource } from '../../source';
import { workedWith } from '../worked-with';

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

/** cm. */
const fourInches = 10.16;

/** A gauge as it is printed. */
export interface PrintedGauge {
  /** "14", "14.5" */
  readonly text: string;
  /** Whether it was rounded to the nearest half, so that the gauge over 10 cm is to stand beside it. */
  readonly isRounded: boolean;
}

/**
 * A gauge as the trade prints it. Over 10 cm, and where it was counted over 4 in, it is what was counted. Over 4 in from
 * another length it is rounded to the nearest half stitch or row (a quarter goes up), and the pattern says the exact
 * gauge over 10 cm beside it: nobody counts two tenths of a stitch. Common practice; the half is our own choice.
 *
 * @param perCm stitches or rows per cm
 * @param overInches whether the swatch was counted over 4 in
 * @example printedGauge(1.4, { gaugeOver: '4 in', decimal: '.' }, false) // { text: '14', isRounded: true }
 * @example printedGauge(15 / 10.16, { gaugeOver: '4 in', decimal: '.' }, true) // { text: '15', isRounded: false }
 */
export function printedGauge(
  perCm: number,
  { gaugeOver, decimal }: Pick<Settings, 'gaugeOver' | 'decimal'>,
  overInches: boolean,
): PrintedGauge {
  if (gaugeOver === '10 cm') return { text: writeGauge(perCm, gaugeOver, { decimal }), isRounded: false };
  const over4 = perCm * fourInches;
  const half = Math.round(over4 * 2) / 2;
  if (overInches || half === 0 || Math.abs(over4 - half) < 1e-9)
    return { text: writeGauge(perCm, gaugeOver, { decimal, decimals: 2 }), isRounded: false };
  return { text: writeGauge(half / fourInches, gaugeOver, { decimal }), isRounded: true };
}

/** Whether all readings of a swatch, of its stitches or of its rows, were counted over 4 in. */
function countedOver4In(source: PatternSource, size: string, swatch: Swatch, of: 'sts' | 'rows'): boolean {
  return swatch[of === 'sts' ? 'stitches' : 'rows'].every((_reading, at) => {
    const over = source.number(size, swatch.id, `${of}.${at}.over`);
    return over !== undefined && Math.abs(over - fourInches) < 1e-6;
  });
}

/** The gauge of each fabric, over what the notebook counts gauges over. */
export function gaugePart(source: PatternSource, found: Gathered, sentences: Sentences): PatternPart {
  const { settings } = source.notebook;
  const size = found.sizes[0]?.id ?? source.notebook.sizes[0]!.id;
  const lines = swatchesUsed(source, found).flatMap((swatch): Sentence[] => {
    const [sts, rows] = (['sts', 'rows'] as const).map((key) => source.number(size, swatch.id, key));
    if (sts === undefined || rows === undefined) return [];
    const worked = workedWith(swatch, settings.craft);
    const unit = (text: string, noun: string): string =>
      text === '1' ? counted([1], noun) : `${text} ${noun}s`;
    const [stitches, down] = [
      printedGauge(sts, settings, countedOver4In(source, size, swatch, 'sts')),
      printedGauge(rows, settings, countedOver4In(source, size, swatch, 'rows')),
    ] as const;
    const over10 = (perCm: number): string => writeGauge(perCm, '10 cm', { ...settings, decimals: 2 });
    const exactly =
      stitches.isRounded || down.isRounded
        ? `, exactly ${unit(over10(sts), 'st')} and ${unit(over10(rows), 'row')} to 10 cm`
        : '';
    return [
      sentences.paragraph(
        `gauge ${swatch.id}`,
        worked === ''
          ? '{fabric}: {stitches} and {rows} to {over}.'
          : '{fabric}: {stitches} and {rows} to {over} ({worked}).',
        {
          fabric: theirs(swatch.label),
          stitches: unit(stitches.text, 'st'),
          rows: unit(down.text, 'row'),
          over: `${settings.gaugeOver}${exactly}`,
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
