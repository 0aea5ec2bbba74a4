/** A line for some sizes only. */
export interface OwnLine {
  /** The sizes it is for, by their places. */
  readonly places: readonly number[];
  readonly text: string;
}

const bare = (text: string): string => text.replace(/[\u2066-\u2069\u200e\u200f]/gu, '');

/**
 * A line that begins with the sizes it is for, read by their labels.
 *
 * @example ownLine('Sizes S (L): sc 6', ['S', 'M', 'L']) // { places: [0, 2], text: 'sc 6' }
 */
export function ownLine(line: string, sizes: readonly string[]): OwnLine | undefined {
  const head = /^sizes?\s+/iu.exec(bare(line));
  if (!head) return undefined;
  let text = bare(line).slice(head[0].length);
  const labels = sizes.map((label) => bare(label));
  const places: number[] = [];
  const take = (): boolean => {
    // The longest label that stands here: "XS" is not the "X" of another size.
    let found = -1;
    labels.forEach((label, place) => {
      if (place <= (places.at(-1) ?? -1) || label === '' || !text.startsWith(label)) return;
      if (found < 0 || label.length > labels[found]!.length) found = place;
    });
    if (found < 0) return false;
    text = text.slice(labels[found]!.length);
    places.push(found);
    return true;
  };
  if (!take()) return undefined;
  const more = /^\s*\(/u.exec(text);
  if (more) {
    text = text.slice(more[0].length);
    for (;;) {
      if (!take()) return undefined;
      const then = /^\s*(,|\))\s*/u.exec(text);
      if (!then) return undefined;
      text = text.slice(then[0].length);
      if (then[1] === ')') break;
    }
  } else {
    // Without brackets: "Sizes M, L: …".
    for (let then = /^\s*(?:,|and)\s+/u.exec(text); then; then = /^\s*(?:,|and)\s+/u.exec(text)) {
      text = text.slice(then[0].length);
      if (!take()) return undefined;
    }
  }
  const colon = /^\s*(?:only\s*)?:\s*/u.exec(text);
  return colon ? { places, text: text.slice(colon[0].length) } : undefined;
}
