/** The id under which a sentence of the pattern can be gone to. */
export function anchorOf(key: string): string {
  return `sentence-${key.replace(/[^\p{L}\p{N}_-]+/gu, '-')}`;
}

/** Goes to a sentence of the pattern. */
export function goToSentence(key: string): void {
  const sentence = document.getElementById(anchorOf(key));
  sentence?.scrollIntoView({ block: 'center' });
  sentence?.focus({ preventScroll: true });
}
