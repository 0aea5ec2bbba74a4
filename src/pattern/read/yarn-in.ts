import { yarnWeights } from '../../craft';
import type { LogicalLine } from './lines';
import { sizeListsIn } from './size-list-at';
import { wrongNumber } from './measure-in';
import type { ImportDiagnostic, StatedYarn } from './types';

/** The yarn a line asks for: grams by size, or balls of so many grams. Undefined where it asks for none. */
export function yarnIn(
  line: LogicalLine,
  sizes: number,
  decimal: '.' | ',',
): { yarn?: StatedYarn; diagnostics: ImportDiagnostic[] } | undefined {
  const { text } = line;
  if (!/\b(?:yarn|wool|balls?|skeins?|hanks?|weight|materials?)\b/iu.test(text)) return undefined;
  const lists = sizeListsIn(text, decimal);
  const after = (pattern: RegExp) => lists.find(({ to }) => pattern.test(text.slice(to)));
  const one = after(/^\s*-?\s*(?:g|grams?)\b(?!\s*(?:each|per))/iu);
  const balls = after(/^\s*(?:x|×)?\s*(?:\d+\s*-?\s*(?:g|grams?)\s*)?(?:balls?|skeins?|hanks?)\b/iu);
  const each = /(\d+(?:[.,]\d+)?)\s*-?\s*(?:g|grams?)\b/iu.exec(text);
  const list = balls && each ? balls : one;
  if (!list) return undefined;
  const range = line.range(list.from, list.to);
  const wrong = wrongNumber(list, sizes);
  if (wrong) return { diagnostics: [{ range, message: wrong, kind: 'unread' }] };
  const times = balls && each ? Number(each[1]!.replace(',', '.')) : 1;
  const grams = Array.from({ length: sizes }, (_size, at) => {
    const value = list.values[list.values.length === 1 ? 0 : at]!;
    return value === null ? null : value * times;
  });
  const names = yarnWeights.map(({ name }) => name).sort((a, b) => b.length - a.length);
  const weight = names.find((name) => new RegExp(`\\b${name}\\b`, 'iu').test(text)) ?? '';
  return { yarn: { grams, weight, range }, diagnostics: [] };
}
