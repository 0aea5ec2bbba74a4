import type { Working } from './working';

/**
 * A working as one line of text, each step going on from the one before.
 *
 * @example inText(working)
 * // '102 cm × 14 sts / 10 cm = 142.8 sts → nearest multiple of 8 + 3 = 139 sts → 139 sts ÷ (14 sts / 10 cm) = 99.3 cm'
 */
export function inText({ lines }: Pick<Working, 'lines'>): string {
  let before = '';
  const texts: string[] = [];
  for (const { from, says, answer } of lines.flatMap(({ steps }) => steps)) {
    const text = `${says.map(({ text }) => text).join('')} = ${answer}`;
    texts.push(from !== undefined && from.text !== before ? `${from.text} → ${text}` : text);
    before = answer;
  }
  return texts.join(' → ');
}
