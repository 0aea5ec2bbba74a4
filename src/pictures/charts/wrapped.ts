/**
 * A text in lines no wider than so many px: broken between words, and a word that is wider anywhere.
 *
 * @param measure how wide a text is, in px
 * @example wrapped('a bb ccc', 4, (text) => text.length) // ['a bb', 'ccc']
 * @example wrapped('Sleeve', 4, (text) => text.length)   // ['Slee', 've']
 */
export function wrapped(text: string, width: number, measure: (text: string) => number): string[] {
  const lines: string[] = [];
  let line = '';
  // A space that does not break holds words together.
  for (const word of text.split(/[ \t\r\n]+/).filter(Boolean)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (measure(longer) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const sign of word) {
      if (line !== '' && measure(line + sign) > width) {
        lines.push(line);
        line = '';
      }
      line += sign;
    }
  }
  return line === '' ? lines : [...lines, line];
}
