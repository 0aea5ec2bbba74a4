/** What comes of a value in a size: a number, whether something holds, or nothing where it cannot be worked. */
export type Outcome = number | boolean | undefined;

/** What a person wishes of a result. `within` is how far off still counts as met, in the unit of the result. */
export type Wish =
  | { readonly wish: 'value' | 'nearest'; readonly value: number; readonly within: number }
  | { readonly wish: 'holds' };

/** Whether an outcome is what was wished. What cannot be worked is not. */
export function meets(wish: Wish, outcome: Outcome): boolean {
  if (wish.wish === 'holds') return outcome === true;
  return typeof outcome === 'number' && Math.abs(outcome - wish.value) <= wish.within + edge(wish.value);
}

/** On which side of the wished value an outcome is; 0 where it meets it, or there is nothing to compare. */
export function sideOf(wish: Wish, outcome: Outcome): -1 | 0 | 1 {
  if (wish.wish === 'holds' || typeof outcome !== 'number' || meets(wish, outcome)) return 0;
  return outcome < wish.value ? -1 : 1;
}

/** What arithmetic on fractions leaves behind is no difference. */
export function edge(value: number): number {
  return 1e-9 * Math.max(1, Math.abs(value));
}
