import { numberAt } from './number';
import type { LogicalLine } from './lines';
import type { ImportDiagnostic, StatedGauge } from './types';

/** Finer than any fabric: stitches or rows to a cm. */
const finest = 100;

const length =
  /(\d+(?:[.,]\d+)?)(?:\s*(?:x|×|by)\s*\d+(?:[.,]\d+)?)?\s*(cm\b|centimet(?:re|er)s?\b|inch(?:es)?\b|in\b|["″”])/giu;

/**
 * The gauge a line states: "22 sts and 30 rows = 10 cm in stockinette stitch". Undefined where it states none.
 *
 * 4 in and 10 cm are often printed as if they were the same: the one that is named first is taken, and the doubt says so.
 */
export function gaugeIn(
  line: LogicalLine,
  decimal: '.' | ',',
): { gauge?: StatedGauge; diagnostics: ImportDiagnostic[] } | undefined {
  const { text } = line;
  const counted = (what: string): number | undefined => {
    const found = new RegExp(`([\\d½¼¾.,/ ]*[\\d½¼¾])\\s*(?:${what})\\b`, 'iu').exec(text);
    const from = found ? found[1]!.length - found[1]!.trimStart().length : 0;
    return found ? numberAt(found[1]!, from, decimal)?.value : undefined;
  };
  const stitches = counted('sts?|stitch(?:es)?|sc|hdc|dc|tr|htr');
  const rows = counted('rows?|rounds?|rnds?');
  const lengths = [...text.matchAll(length)].filter((found) => {
    // A needle of 4 mm is no length here, and a row of a stitch pattern neither.
    return Number(found[1]!.replace(',', '.')) > 0;
  });
  const [first] = lengths;
  if ((stitches === undefined && rows === undefined) || !first) return undefined;
  const labelled = /gauge|tension|swatch/iu.test(text);
  if (
    !labelled &&
    !/(?:=|\bto\b|\bover\b|\bper\b|\bequals?\b|\bmake\b|\bmeasures?\b)\s*(?:a\s+)?(?:\d)/iu.test(text)
  )
    return undefined;
  const inInches = !/^c/iu.test(first[2]!);
  const over = Number(first[1]!.replace(',', '.'));
  const overCm = inInches ? over * 2.54 : over;
  const range = line.range(text.length - text.trimStart().length, text.length);
  const none = [stitches, rows].some((many) => many === 0);
  if (none || [stitches, rows].some((many) => many !== undefined && many / overCm > finest)) {
    return {
      diagnostics: [
        {
          range,
          kind: 'unread',
          message: none
            ? 'A gauge is more than 0: correct the stitches or the rows of this line.'
            : `A gauge is at most ${finest} stitches or rows to 1 cm: correct the stitches or the rows of this line.`,
        },
      ],
    };
  }
  const diagnostics: ImportDiagnostic[] = [];
  const other = lengths.find((one) => /^c/iu.test(one[2]!) === inInches);
  if (other) {
    const both = `${first[0]} and ${other[0]}`;
    const otherCm = Number(other[1]!.replace(',', '.')) * (inInches ? 1 : 2.54);
    const off = Math.abs(otherCm / overCm - 1);
    diagnostics.push({
      range: line.range(other.index, other.index + other[0].length),
      kind: off > 0.02 ? 'contradiction' : 'to know',
      message:
        off > 0.02
          ? `${both} are not the same length, so the gauge is one of two: it is read over ${first[0].trim()}. Delete the one that is wrong.`
          : `${both} are printed as if they were the same, but 4 in are 10.16 cm. The gauge is read over ${first[0].trim()}; delete that one if the other was counted, and every width changes by 1.6 %.`,
    });
  }
  const label = /^\s*([^:]{2,40}):/u.exec(text)?.[1] ?? '';
  const worked =
    /\b(?:in|over)\s+((?!\d|in\b|the round\b|order\b|each\b)[\p{L}][\p{L}\s\-,]*?)(?=\s+(?:on|with|using|after|before)\b|\s*[,.;()]|\s*\d|$)/iu.exec(
      text,
    )?.[1] ?? '';
  const fabric = /gauge|tension|swatch/iu.test(label) ? worked : label.trim() || worked;
  return {
    gauge: {
      stitches: stitches === undefined ? undefined : stitches / overCm,
      rows: rows === undefined ? undefined : rows / overCm,
      over: inInches ? (over === 4 ? '4 in' : 'another length') : over === 10 ? '10 cm' : 'another length',
      overCm,
      fabric: fabric.trim(),
      range,
    },
    diagnostics,
  };
}
