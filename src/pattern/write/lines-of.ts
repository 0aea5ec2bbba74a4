import type { PatternPart, Sentence } from '../pattern-document';

/** The instruction lines of a part, in the order in which they are followed. */
export function linesOf(part: PatternPart): Sentence[] {
  return part.blocks.flatMap((block) => {
    if (block.kind === 'line') return [block];
    return block.kind === 'list' ? block.items.filter((item) => item.kind === 'line') : [];
  });
}
