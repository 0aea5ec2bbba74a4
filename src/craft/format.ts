/** Beyond this no count, length or gauge is meant; below it every whole number is exact and no product overflows. */
export const greatest = 1e12;

/** Whether it is a number that a sentence shows in digits, rather than in words. */
export function hasDigits(x: unknown): x is number {
  return typeof x === 'number' && Math.abs(x) <= greatest && (x === 0 || Math.abs(x) >= 1e-6);
}

/** A number as it stands in a sentence: 6 digits at most, and words where it is none. */
export function formatNumber(x: unknown): string {
  if (hasDigits(x)) {
    const shown = Number.isInteger(x) ? x + 0 : Number(x.toPrecision(6));
    return String(shown).replace('-', '−');
  }
  if (typeof x === 'string') return `"${x.slice(0, 40)}"`;
  if (x === null || x === undefined) return 'missing';
  if (typeof x !== 'number' || Number.isNaN(x)) return 'not a number';
  if (!Number.isFinite(x)) return x > 0 ? 'endless' : 'endlessly negative';
  if (Math.abs(x) > greatest) {
    return x > 0 ? 'more than a million million' : 'less than minus a million million';
  }
  return x > 0 ? 'next to nothing' : 'a hair below 0';
}
