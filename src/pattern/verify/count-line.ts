import { readInstruction } from './instruction';
import { longestLine } from './tokens';
import { stitchesTaken, workInstruction } from './work-instruction';

/** A pasted line, counted. */
export interface CountedLine {
  /** The stitches it begins on: as it says, as told, or as many as it takes. */
  readonly from: number;
  readonly count: number;
  /** Where the line states a count of its own, that count. */
  readonly stated?: number;
}

/**
 * Counts one instruction line as it was pasted.
 *
 * @param line "from 60: *k4, k2tog; rep from * to end", with or without "from"; a count at its end is compared
 * @param from the stitches before the row, where the line does not say
 * @example countLine('from 60: *k4, k2tog; rep from * to end') // { from: 60, count: 50 }
 * @example countLine('*k4, k2tog; rep from * to end', 52)
 * // { problem: 'After 8 repeats 4 stitches are left, and another takes 6.' }
 */
export function countLine(line: string, from?: number): CountedLine | { readonly problem: string } {
  if (line.length > longestLine)
    return { problem: `A line of more than ${longestLine} characters is not read.` };
  let text = line.trim().replace(/^[-•]\s+/u, '');
  const begins = /^from\s+(\d+)\s*(?:sts?|stitches)?\s*[:,]\s*/iu.exec(text);
  if (begins) text = text.slice(begins[0].length);
  text = text.replace(/^(?:(?:next\s+)?(?:rows?|rounds?|rnds?)\b[^:]{0,30}:)\s*/iu, '');
  const ends = /\s*(?:[[(=–—-]\s*)(\d+)\s*(?:sts?|stitches)?(?:\s+(?:remain|left))?\s*[\])]?\s*\.?$/iu.exec(
    text,
  );
  const before = text.slice(0, ends?.index);
  // After “to last” a number says how far, and is no count.
  const stated = ends && !/(?:x|last|to)$/iu.test(before) ? Number(ends[1]) : undefined;
  if (stated !== undefined) text = before;
  const parts = readInstruction(text);
  if ('problem' in parts) return parts;
  const start = begins ? Number(begins[1]) : (from ?? stitchesTaken(parts));
  if (start === undefined)
    return { problem: 'Say how many stitches there are before it, as in “from 60: …”.' };
  if (!Number.isSafeInteger(start) || start > 10_000_000)
    return { problem: 'That is more stitches than can be counted.' };
  const counted = workInstruction(parts, start);
  if ('problem' in counted) return counted;
  if (stated !== undefined && stated !== counted.count) {
    return { problem: `It says ${stated} stitches, and following it gives ${counted.count}.` };
  }
  return { from: start, count: counted.count, ...(stated !== undefined ? { stated } : {}) };
}
