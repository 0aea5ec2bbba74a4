/**
 * A text in lines no wider than so many px; a single word that is wider stands alone.
 *
 * @example
 * wrapped('a bb ccc', 4, (text) => text.length) // ['a bb', 'ccc']
 */
export function wrapped(text: string, width: number, measure: (text: string) => number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const longer = line ? `${line} ${word}` : word;
    if (line && measure(longer) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line ? [...lines, line] : lines;
}
