import type { LogicalLine } from './lines';
import type { Phrase } from './phrase';
import type { ImportDiagnostic } from './types';

/** A number less than 0 where a piece begins, or where stitches or rows are counted. */
const signed =
  /\b(?:(cast[- ]on|co|ch|chain|pick up(?: and knit)?)|bind off|cast off|bo|work|dec(?:rease)?|inc(?:rease)?)\s+[-−–](?=⟦(\d+)⟧)/iu;

/**
 * The sentences of a line, where none counts less than nothing; where one does, a diagnostic says so. A piece that begins on
 * so many begins all the same, on a count that is not known; any other such line is kept as it stands.
 *
 * @param line its places are those of the sentences
 */
export function withoutSigns(
  phrases: readonly Phrase[],
  line: Pick<LogicalLine, 'range'>,
): { phrases: readonly Phrase[]; diagnostics: ImportDiagnostic[]; kept: boolean } {
  const diagnostics: ImportDiagnostic[] = [];
  let kept = false;
  const read = phrases.map((phrase) => {
    const found = signed.exec(phrase.text);
    const list = found && phrase.lists[Number(found[2])];
    if (!list) return phrase;
    const begins = found[1] !== undefined;
    kept ||= !begins;
    diagnostics.push({
      range: line.range(list.from - 1, list.to),
      kind: 'unread',
      message: `${begins ? 'Stitches to begin on' : 'Stitches and rows'} are not less than 0: take the sign away, or write a dash alone for a size that has none${begins ? '' : '; the line is kept as it stands'}.`,
    });
    return {
      ...phrase,
      text:
        phrase.text.slice(0, found.index) +
        found[0].slice(0, -1) +
        phrase.text.slice(found.index + found[0].length),
      lists: phrase.lists.map((one) => (one === list ? { ...one, values: one.values.map(() => null) } : one)),
    };
  });
  return { phrases: read, diagnostics, kept };
}
