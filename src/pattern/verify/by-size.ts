/** A line for some sizes only. */
export interface OwnLine {
  /** The sizes it is for, by their places. */
  readonly sizeIndices: readonly number[];
  readonly text: string;
}

const bare = (text: string): string => text.replace(/[\u2066-\u2069\u200e\u200f]/gu, '');

/**
 * A line that begins with the sizes it is for, read by their labels.
 *
 * @example ownLine('Sizes S (L): sc 6', ['S', 'M', 'L']) // { sizeIndices: [0, 2], text: 'sc 6' }
 */
export function ownLine(line: string, sizes: readonly string[]): OwnLine | undefined {
  const head = /^sizes?\s+/iu.exec(bare(line));
  if (!head) return undefined;
  let text = bare(line).slice(head[0].length);
  const labels = sizes.map((label) => bare(label));
  const sizeIndices: number[] = [];
  const accept = (): boolean => {
    // The longest label that stands here: "XS" is not the "X" of another size.
    let found = -1;
    labels.forEach((label, sizeIndex) => {
      if (sizeIndex <= (sizeIndices.at(-1) ?? -1) || label === '' || !text.startsWith(label)) return;
      if (found < 0 || label.length > labels[found]!.length) found = sizeIndex;
    });
    if (found < 0) return false;
    text = text.slice(labels[found]!.length);
    sizeIndices.push(found);
    return true;
  };
  if (!accept()) return undefined;
  const more = /^\s*\(/u.exec(text);
  if (more) {
    text = text.slice(more[0].length);
    for (;;) {
      if (!accept()) return undefined;
      const then = /^\s*(,|\))\s*/u.exec(text);
      if (!then) return undefined;
      text = text.slice(then[0].length);
      if (then[1] === ')') break;
    }
  } else {
    // Without brackets: "Sizes M, L: …".
    for (let then = /^\s*(?:,|and)\s+/u.exec(text); then; then = /^\s*(?:,|and)\s+/u.exec(text)) {
      text = text.slice(then[0].length);
      if (!accept()) return undefined;
    }
  }
  const colon = /^\s*(?:only\s*)?:\s*/u.exec(text);
  return colon ? { sizeIndices, text: text.slice(colon[0].length) } : undefined;
}
