import type { StatedGauge } from '../read';
import { f, formula, value } from '../../notebook';
import { statedCell, type Adapting } from './adapting';
import type { Fabric, OwnSwatch } from './fabrics';
import { furtherNumbers } from './numbers';
import type { MadePart } from './making';

/** Yarn by area and swatch weight against the amount that the pattern states, and the weights each gauge lies in. */
export function putYarn(
  adapting: Adapting,
  made: readonly MadePart[],
  fabric: Fabric,
  ball?: OwnSwatch['ball'],
): void {
  const { pattern, collector, sections } = adapting;
  const areas = (side: 'printed' | 'mine'): string =>
    made
      .filter(({ part }) => part.shapes.length > 0)
      .map((one) => `${one.part.piece.make > 1 ? `${one.part.piece.make} * ` : ''}${one[side].name}_area`)
      .join(' + ');
  if (areas('mine') === '') return;
  const printedArea = collector.put(
    sections.yarn,
    formula('Area, as printed', areas('printed'), { name: 'printed_area' }),
  );
  const myArea = collector.put(
    sections.yarn,
    formula('Area, fitted again', areas('mine'), { name: 'my_area' }),
  );
  furtherNumbers(adapting, 'Yarn', 'area', printedArea, myArea);
  const yarn = collector.put(sections.yarn, {
    kind: 'yarn',
    id: 'my_yarn',
    label: 'My yarn',
    name: 'my_yarn',
    uses: [{ area: f(myArea.name), fabric: fabric.mine }],
    reserve: value(0.1),
    ballGrams: value(ball?.[0] ?? 50),
    ballLength: { value: ball?.[1] ?? null },
    note: 'From the weight of my whole swatch; its length in metres follows when the band of the ball is told. An estimate, with a tenth in reserve.',
  });
  if (pattern.yarn) {
    const stated = statedCell(adapting, {
      values: pattern.yarn.grams,
      unit: 'mass',
      size: 'bust',
      label: 'Yarn the pattern asks for',
      name: 'printed_yarn',
    });
    furtherNumbers(adapting, 'Yarn', 'yarn', stated, yarn);
    collector.put(
      sections.yarn,
      formula('The pattern’s yarn for the area of its pieces', `${stated.name} / ${printedArea.name}`, {
        name: 'printed_weight',
        note: 'Compare it with the weight by area of my swatch: a heavier fabric takes more yarn for the same garment. The pattern’s amount holds its reserve.',
      }),
    );
    collector.put(
      sections.yarn,
      formula('My yarn, more than the pattern’s', `${yarn.name} - ${stated.name}`, { name: 'my_yarn_more' }),
    );
  }
  const kind = yardstickOf(pattern.gauges[0]);
  if (!kind) return;
  for (const [side, label] of [
    ['printed', 'The pattern’s gauge'],
    ['mine', 'My gauge'],
  ] as const) {
    collector.put(
      sections.yarn,
      formula(`${label} is usual for`, `YARNWEIGHT(${fabric[side]}_sts; "${kind}")`, {
        name: `${side}_yarn_weight`,
        note: `${side === 'printed' && pattern.yarn?.weight ? `The pattern asks for ${pattern.yarn.weight}. ` : ''}Published ranges for ${kind}: Craft Yarn Council, Standard Yarn Weight System. They are a hint; the swatch decides.`,
      }),
    );
  }
}

/** The published ranges are for two fabrics; for any other they say nothing. */
function yardstickOf(gauge: StatedGauge | undefined): 'stockinette' | 'single crochet' | undefined {
  if (!gauge) return undefined;
  if (/stockinette|stocking|st st\b/iu.test(gauge.fabric)) return 'stockinette';
  return /single crochet|\bsc\b/iu.test(gauge.fabric) ? 'single crochet' : undefined;
}
