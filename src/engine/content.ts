import { CraftError, chartPoint, sentence, type Message } from '../craft';
import { type Entry, type Size, wrongValue } from '../notebook';
import { own } from './own-functions';
import type { Content, Reason } from './engine';
import { packedMessage } from './pack-message';
import type { PackedMessage } from './packed-message';
import { isProblem, type Slot } from './slot';
import {
  circular,
  emptyValue,
  followsNoChart,
  quarantinedSentence,
  stillCalculating,
  unknownToChart,
  quarantinedValueSentence,
} from './sentences';
import { misfit } from './units/derive';

/** What is wrong with a slot whatever the size; undefined where nothing is. */
export function problemOf(slot: Slot, slots: readonly (Slot | undefined)[]): Message | undefined {
  const { formula, quarantined: held, plan } = slot;
  if (held === 'later') return stillCalculating;
  if (held) return formula ? quarantinedSentence : quarantinedValueSentence;
  if (!formula) return undefined;
  if (isProblem(formula.link)) return sentence(formula.link.problem);
  if (formula.cycle) return circular(formula.cycle, (row) => slots[row]!.plan.name);
  if (formula.derivation === 'unknown') return undefined;
  if (isProblem(formula.derivation)) return formula.derivation.problem;
  return plan.unit === 'any' ? undefined : misfit(formula.derivation, plan.unit);
}

/**
 * What goes into the row of a slot in one size.
 *
 * @param problem what is wrong with the slot whatever the size
 */
export function contentOf(slot: Slot, size: Size, problem: PackedMessage | undefined): Content {
  const fixed = slot.fixed?.values.get(size.id);
  if (fixed !== undefined) return fixed;
  if (problem !== undefined) return { reason: problem };
  const { formula, plan } = slot;
  if (formula && !isProblem(formula.link)) return formulaContent(slot, formula.link.text);
  const value = valueOf(plan.entry, plan.label, size);
  if (typeof value !== 'number') return value;
  const wrong = wrongValue(plan, value);
  if (wrong !== undefined) return reasonOf(wrong);
  return plan.constraint?.whole ? Math.round(value) : value;
}

function formulaContent({ plan: { constraint } }: Slot, text: string): string {
  if (!constraint) return `=${text}`;
  const limit = (value: number | undefined): string => (value === undefined ? '""' : String(value));
  return `=${own.checked}(${text};${constraint.whole ? 1 : 0};${limit(constraint.above)};${limit(constraint.least)})`;
}

function valueOf(entry: Entry, label: string, size: Size): number | Reason {
  const empty = reasonOf(emptyValue(label));
  if ('value' in entry) return entry.value ?? empty;
  if ('each' in entry) return entry.each[size.id] ?? empty;
  if (!('chart' in entry)) return empty;
  const own = entry.own?.[size.id];
  if (own !== undefined) return own;
  if (!size.chart) return reasonOf(followsNoChart);
  try {
    return chartPoint(size.chart.name, size.chart.size, entry.chart, entry.point);
  } catch (error) {
    return reasonOf(error instanceof CraftError ? error : unknownToChart);
  }
}

function reasonOf(message: Message): Reason {
  return { reason: packedMessage(message) };
}
