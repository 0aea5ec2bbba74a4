import type { SideStatement } from '../verify';
import type { PieceMeant } from './piece-meant';
import type { Mismatch } from './mismatch';

/** Holes that are chained, and the stitches worked into them on the row after, against how they are meant. */
export function holesSay(
  says: readonly SideStatement[],
  { rows, chains, stretches }: PieceMeant,
  inOwnWords: (line: number) => boolean,
  ownParagraph: boolean,
): Mismatch[] {
  const holes = says.flatMap((message) => (message.kind === 'holes' ? [message] : []));
  const spaces = says.flatMap((message) => (message.kind === 'spaces' ? [message] : []));
  const wrongHoles = holes.flatMap(({ line, row, chains: stated }): Mismatch[] => {
    const at = rows[row - 1]?.stretch;
    const meant = at === undefined ? undefined : chains[at];
    if (meant === undefined || inOwnWords(line)) return [];
    if (stated.some((many) => many !== meant)) {
      return [
        {
          line,
          problem: `A hole of row ${row} is ${stated.join(' and ')} ch, and in the notebook ${meant}.`,
        },
      ];
    }
    const worked = spaces.some((one) => one.row === row + 1);
    if (worked || ownParagraph || rows[row]?.stretch !== at) return [];
    return [{ line, problem: `It does not say what is worked into the holes of row ${row}.` }];
  });
  const wrongSpaces = spaces.flatMap(({ line, row, each, stitch }, at): Mismatch[] => {
    const wrong = (problem: string): Mismatch[] => [{ line, problem }];
    if (at > 0 && spaces[at - 1]!.row === row) return wrong('What is worked into the holes is here twice.');
    const over = holes.find((one) => one.row === row - 1);
    const stretch = rows[row - 2]?.stretch;
    if (!over || stretch === undefined) {
      return each === null ? [] : wrong(`Row ${row - 1} has no holes to work into.`);
    }
    if (over.chains.some((many) => many !== each)) {
      return wrong(`It works ${each ?? 'no'} stitches into a hole over ${over.chains.join(' and ')}.`);
    }
    const meant = stretches[stretch]!.stitch.RS;
    return stitch === meant
      ? []
      : wrong(`The holes are worked in ${stitch}, and in the notebook in ${meant}.`);
  });
  return [...wrongHoles, ...wrongSpaces];
}
