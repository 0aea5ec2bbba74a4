import { type Cell, swatch, value } from '../../notebook';
import { gaugeFor, type StatedGauge } from '../read';
import type { Adapting } from './adapting';
import type { GarmentPart } from './parts';
import { isEdge } from './shape-of';
import { shortName } from './cell-collector';

/** A fabric of the pattern, as it was swatched for the pattern and as it is swatched now. */
export interface Fabric {
  readonly printed: string;
  readonly mine: string;
}

export interface Fabrics {
  /** The fabric that the widths are measured in. */
  readonly main: Fabric;
  for(words: string): Fabric;
}

/** What one's own swatch comes to, where that is known already. */
export interface OwnSwatch {
  readonly stitches: number;
  readonly rows: number;
  readonly worked: string;
  readonly weighed?: readonly [width: number, length: number, grams: number];
  /** A ball of its yarn: grams, and cm of yarn. */
  readonly ball?: readonly [grams: number, length: number];
}

/** Two swatches for each gauge that the pattern states: the pattern's, and one's own, which begins as a copy of it. */
export function fabricsOf(adapting: Adapting, own?: OwnSwatch): Fabrics {
  const { pattern, collector, sections } = adapting;
  const stated: readonly (StatedGauge | undefined)[] =
    pattern.gauges.length > 0 ? pattern.gauges : [undefined];
  const made = stated.map((gauge, at): Fabric => {
    const of = stated.length > 1 ? gauge?.fabric || `fabric ${at + 1}` : '';
    const tail = of === '' ? '' : `, ${of}`;
    const name = of === '' ? '' : `_${shortName(of)}`;
    const stitch = stitchOf(gauge?.fabric ?? '');
    const printed = collector.put(sections.swatches, {
      ...counted(`The pattern’s fabric${tail}`, `pattern_gauge${name}`, gauge),
      ...stitch,
      note: gauge
        ? `As the pattern states it, over ${gauge.over === 'another length' ? `${gauge.overCm} cm` : gauge.over}.`
        : 'The pattern states no gauge that could be read: give it here.',
    } as Cell);
    const mine = collector.put(sections.swatches, {
      ...(own && at === 0
        ? swatch('My fabric', own, { name: 'my_gauge' })
        : counted(`My fabric${tail}`, `my_gauge${name}`, gauge)),
      ...stitch,
      ...(own?.weighed && at === 0
        ? {}
        : { weighed: { width: { value: null }, length: { value: null }, grams: { value: null } } }),
      worked: own && at === 0 ? own.worked : '',
      note:
        own && at === 0 ? 'Your own swatch.' : 'Your own swatch: type over the pattern’s, used until you do.',
    } as Cell);
    return { printed: printed.name, mine: mine.name };
  });
  const found = (words: string): number => {
    const gauge = gaugeFor(pattern.gauges, words);
    return Math.max(
      0,
      pattern.gauges.findIndex((one) => one === gauge),
    );
  };
  return { main: made[0]!, for: (words) => made[words === '' ? 0 : found(words)]! };
}

function counted(label: string, name: string, gauge: StatedGauge | undefined): Cell {
  const over = gauge?.overCm ?? 10;
  const reading = (perCm: number | undefined) => ({
    count: value_(perCm === undefined ? null : Number((perCm * over).toPrecision(12))),
    over: value(over),
  });
  return {
    kind: 'swatch',
    id: name,
    label,
    name,
    worked: '',
    stitches: [reading(gauge?.stitches)],
    rows: [reading(gauge?.rows)],
  };
}

const value_ = (number: number | null) => ({ value: number });

function stitchOf(fabric: string): { stitch?: 'stockinette' | 'sc' | 'garter' } {
  if (/stockinette|stocking|st st\b/iu.test(fabric)) return { stitch: 'stockinette' };
  if (/garter/iu.test(fabric)) return { stitch: 'garter' };
  return /single crochet|\bsc\b/iu.test(fabric) ? { stitch: 'sc' } : {};
}

/** The fabric whose width counts for a piece: that of its first stretch which is no edge. */
export function fabricOf({ shapes }: GarmentPart, fabrics: Fabrics): Fabric {
  const main = shapes.find((shape) => !isEdge(shape)) ?? shapes[0];
  return fabrics.for(main?.fabric ?? '');
}
