import { bracketed } from '../../format';
import type { PatternBlock, PatternDocument, PatternTable } from '../pattern-document';
import { proofWords } from '../proof-words';
import type { Proof } from '../proof';

/** What may stand with a pattern when it leaves the notebook. */
export interface Leaving {
  /** Stated under the pattern. */
  readonly proof?: Proof;
}

/**
 * A pattern as plain text: headings underlined, a line for each sentence, tables in columns.
 */
export function plainText(document: PatternDocument, { proof }: Leaving = {}): string {
  const lines = [document.title, underline(document.title, '=')];
  if (document.sizes.length > 0) {
    lines.push('', `Sizes: ${bracketed(document.sizes.map(({ label }) => label))}`);
  }
  for (const part of document.parts) {
    lines.push('', part.heading, underline(part.heading, '-'));
    for (const block of part.blocks) lines.push(...blockLines(block));
  }
  if (proof) lines.push('', proofWords(proof, document));
  return `${lines.join('\n')}\n`;
}

function blockLines(block: PatternBlock): string[] {
  switch (block.kind) {
    case 'line':
    case 'paragraph':
    case 'caution':
      return [block.text];
    case 'heading':
      return ['', block.text];
    case 'list':
      return block.items.map(({ text }) => `- ${text}`);
    case 'table':
      return tableLines(block);
    case 'picture slot':
      return [];
  }
}

function tableLines({ caption, head, rows, words }: PatternTable): string[] {
  const all = [head, ...rows];
  const widths = head.map((_label, column) => Math.max(...all.map((row) => lengthOf(row[column] ?? ''))));
  const padded = all.map((row) =>
    row
      .map((text, column) => {
        const space = ' '.repeat(widths[column]! - lengthOf(text));
        return column === 0 || words ? text + space : space + text;
      })
      .join('  ')
      .trimEnd(),
  );
  return ['', `${caption}:`, ...padded];
}

/** Characters as they stand side by side; marks that are not seen take no room. */
function lengthOf(text: string): number {
  return [...text.replace(/[\p{M}\u2066-\u2069]/gu, '')].length;
}

const underline = (text: string, mark: string): string =>
  mark.repeat(Math.min(Math.max(lengthOf(text), 1), 60));
