import { formatMessage } from '../../format';
import { isDimension } from '../../formulas';
import { goesInSteps, type RangeSpec } from '../../pictures';
import { trialNumber, trialResult, unpacked } from '../../engine';
import { cellRefKey, type Choosable, type Workspace, symbolFor, surroundings } from '../../workspace';
import { shownFactor } from './shown-factor';
import { unitOf } from '../what-if';
import type { Moved } from './range-sweep.svelte';

/**
 * A result over a range as it is drawn, in the units shown.
 *
 * @param at which of the chosen results; @param now the values the input stands at
 */
export function rangeShown(
  workspace: Workspace,
  moved: Moved,
  at: number,
  now: readonly number[],
): RangeSpec {
  const { results, values, whole, input } = moved;
  const { settings } = workspace;
  const choice = moved.chosen[at]!;
  const unit = unitOf(workspace, choice);
  const factor = shownFactor(unitOf(workspace, input), settings, input.part.written);
  const resultFactor = shownFactor(unit, settings, choice.part.written);
  const found = whole.get(cellRefKey(choice)) ?? [];
  const sizes = results.sizes.map((id, size) => {
    const index = workspace.sizes.findIndex((one) => one.id === id);
    return {
      id,
      label: workspace.sizes[index]?.label ?? '',
      sizeIndex: index,
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
    const symbol = symbolFor(unitOf(workspace, of), settings, of.part.written);
    return `${of.label}${symbol ? `, ${symbol}` : ''}`;
  };
  return {
    steps: values.map((value) => value * factor),
    sizes,
    stairs: (counts && !('length' in unit)) || goesInSteps(sizes.map((size) => size.values)),
    captions: [caption(input), caption(choice)],
    now: now.length === 1 ? now[0]! * factor : null,
    highlighted: workspace.selection.position?.size ?? null,
    decimal: settings.decimal,
    theme: surroundings.theme,
  };
}

/** What is to be said of a result that shows nothing, or not at every step; empty for one that moves all along. */
export function whyStill(
  workspace: Workspace,
  { results, values, chosen, input }: Moved,
  at: number,
): string {
  const { label } = chosen[at]!;
  const worked = values.slice(0, results.done);
  const numbers = results.sizes.map((_, size) =>
    worked.map((_value, trial) => trialNumber(results, trial, size, at)),
  );
  const none = (size: readonly (number | undefined)[]): boolean => size.includes(undefined);
  const size = numbers.findIndex(none);
  if (size >= 0) {
    const error = trialResult(results, numbers[size]!.indexOf(undefined), size, at);
    const why =
      typeof error === 'object' ? ` ${formatMessage(unpacked(error.message), workspace.settings)}` : '';
    return numbers.every((one) => one.every((number) => number === undefined))
      ? `No step gives ${label}.${why} Choose another range, or set right on the leaf what is missing.`
      : `Where the line is broken off, that step gives no ${label}.${why}`;
  }
  if (results.done > 1 && numbers.every((one) => one.every((number) => number === one[0]))) {
    return `${label} does not depend on ${input.label} here: it is the same at every step. Choose another result, another input, or a longer range.`;
  }
  return '';
}
