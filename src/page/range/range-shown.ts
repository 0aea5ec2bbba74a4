import { isDimension } from '../../notebook';
import { goesInSteps, type RangeSpec } from '../../pictures';
import { trialNumber, trialResult } from '../../sheet';
import { placeKey, type Choosable } from '../choosable';
import type { Desk } from '../desk.svelte';
import { shownFactor, symbolFor } from '../showing';
import { toldBy } from '../told';
import { surroundings } from '../surroundings.svelte';
import { unitOf } from '../what-ifs/typed-change';
import type { Moved } from './moving.svelte';

/**
 * A result over a range as it is drawn, in the units shown.
 *
 * @param at which of the chosen results; @param now the values the input stands at
 */
export function rangeShown(desk: Desk, moved: Moved, at: number, now: readonly number[]): RangeSpec {
  const { results, values, whole, input } = moved;
  const { settings } = desk;
  const choice = moved.chosen[at]!;
  const unit = unitOf(desk, choice);
  const factor = shownFactor(unitOf(desk, input), settings, input.part.written);
  const resultFactor = shownFactor(unit, settings, choice.part.written);
  const found = whole.get(placeKey(choice)) ?? [];
  const sizes = results.sizes.map((id, size) => {
    const place = desk.sizes.findIndex((one) => one.id === id);
    return {
      id,
      label: desk.sizes[place]?.label ?? '',
      place,
      values: values.map((_value, trial) => {
        const number = trialNumber(results, trial, size, at);
        return number === undefined ? null : number * resultFactor;
      }),
      whole: found
        .filter((one) => one.size === id)
        .map((one) => ({ at: one.value * factor, value: one.count * resultFactor })),
    };
  });
  const counts = isDimension(unit) && ('stitch' in unit || 'row' in unit);
  const caption = (of: Choosable): string => {
    const symbol = symbolFor(unitOf(desk, of), settings, of.part.written);
    return `${of.label}${symbol ? `, ${symbol}` : ''}`;
  };
  return {
    steps: values.map((value) => value * factor),
    sizes,
    stairs: (counts && !('length' in unit)) || goesInSteps(sizes.map((size) => size.values)),
    captions: [caption(input), caption(choice)],
    now: now.length === 1 ? now[0]! * factor : null,
    highlighted: desk.spot?.size ?? null,
    decimal: settings.decimal,
    theme: surroundings.theme,
  };
}

/** What is to be said of a result that shows nothing; empty for one that moves. */
export function whyStill(desk: Desk, { results, values, chosen, input }: Moved, at: number): string {
  const numbers = results.sizes.map((_, size) =>
    values.map((_value, trial) => trialNumber(results, trial, size, at)),
  );
  if (numbers.every((size) => size.every((number) => number === undefined))) {
    const trouble = trialResult(results, 0, 0, at);
    return typeof trouble === 'object' ? `There is no such result: ${toldBy(desk, trouble.message)}` : '';
  }
  if (results.done > 1 && numbers.every((size) => size.every((number) => number === size[0]))) {
    return `${chosen[at]!.label} does not depend on ${input.label} here: it is the same at every step. Choose another result, another input, or a longer range.`;
  }
  return '';
}
