import { most, sum, Unread, type InstructionStep, type Problem } from './instruction';

const sts = (count: number): string => (count === 1 ? '1 stitch' : `${count} stitches`);

/**
 * The count after a row worked on `from` stitches, or where it does not come out even.
 *
 * @example workInstruction(readInstruction('*k4, k2tog; rep from * to end'), 60) // { count: 50 }
 * @example workInstruction(readInstruction('*k4, k2tog; rep from * to end'), 52)
 * // { problem: 'After 8 repeats 4 stitches are left, and another takes 6.' }
 */
export function workInstruction(
  parts: readonly InstructionStep[],
  from: number,
): { readonly count: number } | Problem {
  let left = from;
  let count = 0;
  try {
    for (const part of parts) {
      if (part.kind === 'work') {
        left -= part.uses;
        count += part.makes;
      } else if (part.kind === 'rest') {
        const worked = Math.max(left - part.before, 0);
        left -= worked;
        count += worked * part.makes;
      } else {
        const [uses, makes] = [sum(part.parts, 'uses'), sum(part.parts, 'makes')];
        let times: number;
        if (part.until.kind === 'times') times = part.until.times;
        else {
          if (uses === 0) return { problem: 'What is repeated uses no stitch, so it comes to no end.' };
          const over = left - part.until.stitches;
          times = Math.floor(over / uses);
          if (over < 0 || times * uses !== over) {
            const before = part.until.stitches > 0 ? ` before the last ${part.until.stitches}` : '';
            const rest = over - Math.max(times, 0) * uses;
            return {
              problem:
                over < 0
                  ? `Only ${sts(left)} are left where ${part.until.stitches} should stay.`
                  : `After ${times} ${times === 1 ? 'repeat' : 'repeats'} ${sts(rest)} ${rest === 1 ? 'is' : 'are'} left${before}, and another takes ${uses}.`,
            };
          }
        }
        left -= uses * times;
        count += makes * times;
      }
      if (left < 0) return { problem: `The row takes ${sts(from - left)}, and there are ${from}.` };
      if (count > most * 100) return { problem: 'The row makes more stitches than can be counted.' };
    }
  } catch (error) {
    if (error instanceof Unread) return { problem: error.message };
    throw error;
  }
  if (left > 0)
    return {
      problem: `${sts(left)} of ${from} ${left === 1 ? 'is' : 'are'} left over at the end of the row.`,
    };
  return { count };
}

/** The stitches that an instruction takes, where it says; undefined where it goes on to the end. */
export function stitchesTaken(parts: readonly InstructionStep[]): number | undefined {
  try {
    return sum(parts, 'uses');
  } catch (error) {
    if (error instanceof Unread) return undefined;
    throw error;
  }
}
