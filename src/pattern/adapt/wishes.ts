import { type Cell, type Size, each, formula, measure, value } from '../../notebook';
import type { MeasureOf, PerSize, StatedMeasure } from '../read';
import { statedCell, type Adapting, type SizeFor } from './adapting';
import { addLists, type Parts } from './parts';
import { putWish, type Wish } from './wish';

/** What one's own body and wishes come to, where they are known already; cm. */
export interface OwnBody {
  readonly bust?: number;
  readonly bustEase?: number;
  readonly upperArm?: number;
  readonly armEase?: number;
  readonly length?: number;
  readonly sleeveLength?: number;
}

export interface Wishes {
  readonly bust: Wish | undefined;
  readonly arm: Wish | undefined;
  readonly wrist: Wish | undefined;
  readonly length: (Wish & { readonly toUnderarm: boolean }) | undefined;
  readonly sleeve: Wish | undefined;
}

const round1 = (cm: number): number => Math.round(cm * 10) / 10;

/**
 * The cells that say which size is taken where: the pattern's own in its own columns, and in the maker's column the one
 * whose stated measurement is nearest to the wish, or the one that is chosen over it.
 */
export function wishesOf(adapting: Adapting, parts: Parts, columns: readonly Size[], own: OwnBody): Wishes {
  const { pattern, collector, sections } = adapting;
  const sizes = pattern.sizes.length;
  const middle = Math.floor((sizes - 1) / 2);
  const garment = (of: MeasureOf): StatedMeasure | undefined =>
    pattern.measures.find(
      (one) => one.of === of && one.on === 'garment' && one.values.some((cm) => cm !== null),
    );
  const toFit = (of: MeasureOf): StatedMeasure | undefined =>
    pattern.measures.find(
      (one) => one.of === of && one.on === 'body' && one.values.some((cm) => cm !== null),
    );
  const gauge = pattern.gauges[0];
  const across = (counts: PerSize | undefined): PerSize | undefined =>
    counts && gauge?.stitches
      ? counts.map((count) => (count === null ? null : count / gauge.stitches!))
      : undefined;
  const down = (rows: PerSize | undefined): PerSize | undefined =>
    rows && gauge?.rows ? rows.map((many) => (many === null ? null : many / gauge.rows!)) : undefined;

  const front = parts.all.find(
    ({ piece, base }) => !base && /^(?:(?:left|right) )?fronts?\b/iu.test(piece.label),
  );
  const bustCounts =
    parts.body && /^back\b/iu.test(parts.body.piece.label) && front
      ? addLists(
          [
            parts.body.piece.start.count,
            front.piece.start.count.map((count) => (count === null ? null : count * front.piece.make)),
          ],
          sizes,
        )
      : parts.body?.piece.start.count;
  const sleeve = parts.sleeve;
  const top =
    sleeve?.piece.start.kind === 'picked up' ? sleeve.piece.start.count : sleeve?.shapes.at(-1)?.ends;
  const allRows = (part: Parts['body']): PerSize | undefined =>
    part &&
    addLists(
      part.shapes.map(({ rows }) => rows),
      sizes,
    );

  collector.put(
    sections.wishes,
    measure(
      'Size of the pattern in this column',
      'number',
      each(
        columns,
        columns.map((_column, at) => (at < sizes ? at + 1 : 0)),
      ),
      {
        name: 'own_size',
        note: '1 is the pattern’s first size. 0 stands for a column of your own, where the sizes are taken that come nearest to your wishes.',
      },
    ),
  );

  const middleOf = (values: PerSize): number => values[middle] ?? values.find((cm) => cm !== null && cm > 0)!;
  const wish = (
    size: SizeFor,
    values: PerSize | undefined,
    label: string,
    from: StatedMeasure | undefined,
    mine: (values: PerSize) => Cell,
    alikeAs?: SizeFor,
  ): Wish | undefined =>
    putWish(adapting, { size, values, label, isStated: from !== undefined, mine, alikeAs });

  const statedBust = garment('bust');
  const bust = wish('bust', statedBust?.values ?? across(bustCounts), 'bust', statedBust, (values) => {
    const finished = middleOf(values);
    const body = toFit('bust')?.values[middle];
    const ease = own.bustEase ?? round1(body === null || body === undefined ? 10 : finished - body);
    return {
      kind: 'ease',
      id: 'my_bust',
      label: 'My finished bust',
      name: 'my_bust',
      by: 'length',
      body: value(own.bust ?? round1(finished - ease)),
      ease: value(ease),
      note:
        body === null || body === undefined
          ? 'Your own bust, and the room you want. The pattern names no body it is to fit, so 10 cm of ease stand here: type yours.'
          : `Your own bust, and the room you want. The pattern’s ease in size ${pattern.sizes[middle]!} is used until you type yours.`,
    };
  });
  const statedArm = garment('upper arm');
  const arm = wish(
    'arm',
    statedArm?.values ?? across(top),
    'upper arm',
    statedArm,
    (values) => {
      const finished = middleOf(values);
      const body = toFit('upper arm')?.values[middle];
      const ease =
        own.armEase ??
        round1(body === null || body === undefined ? Math.min(5, finished / 4) : finished - body);
      return {
        kind: 'ease',
        id: 'my_upper_arm',
        label: 'My finished upper arm',
        name: 'my_upper_arm',
        by: 'length',
        body: value(own.upperArm ?? round1(finished - ease)),
        ease: value(ease),
        note: 'Round the fullest part of your arm, and the room you want: 5 cm stand here until you say otherwise, which is our own default.',
      };
    },
    'bust',
  );
  const plain =
    (label: string, name: string, given: number | undefined) =>
    (values: PerSize): Cell =>
      measure(label, 'length', value(given ?? round1(middleOf(values))), { name });
  const statedLength = garment('length') ?? garment('length to underarm');
  const length = wish(
    'length',
    statedLength?.values ?? down(allRows(parts.body)),
    'length',
    statedLength,
    plain('My length of the body', 'my_length', own.length),
    'bust',
  );
  const statedSleeve = garment('sleeve length');
  const long = wish(
    'sleeve',
    statedSleeve?.values ?? down(allRows(sleeve)),
    'sleeve length',
    statedSleeve,
    plain('My length of the sleeve', 'my_sleeve_length', own.sleeveLength),
    arm ? 'arm' : 'bust',
  );
  const wrist = garment('wrist');
  let wristWish: Wish | undefined;
  if (wrist && sleeve) {
    const wished = collector.put(
      sections.wishes,
      plain('My finished wrist', 'my_wrist', undefined)(wrist.values),
    );
    const stated = statedCell(adapting, {
      values: wrist.values,
      unit: 'length',
      size: 'arm',
      label: 'Stated wrist',
      name: 'stated_wrist',
    });
    const wanted = collector.put(
      sections.wishes,
      formula('Wanted wrist', `IF(own_size > 0; ${stated.name}; ${wished.name})`, { name: 'wanted_wrist' }),
    );
    wristWish = { stated: stated.name, wanted: wanted.name, values: wrist.values };
  }
  return {
    bust,
    arm,
    wrist: wristWish,
    length: length && { ...length, toUnderarm: statedLength?.of === 'length to underarm' },
    sleeve: long,
  };
}
