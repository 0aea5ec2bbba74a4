import { bracketed } from '../../format';
import type { PatternBlock, PatternDocument, PatternTable } from '../pattern-document';
import type { Leaving } from './plain-text';
import { proofWords } from '../proof-words';

/**
 * A pattern as Markdown. Whatever a label holds comes out as text: nothing in it becomes a heading, a link, a tag or
 * emphasis.
 *
 * @param pictures what stands for a picture, by the key of its slot: Markdown of the caller's own, such as an image
 */
export function markdown(
  document: PatternDocument,
  { proof, pictures = {} }: Leaving & { readonly pictures?: Readonly<Record<string, string>> } = {},
): string {
  const blocks = [`# ${escaped(document.title)}`];
  if (document.sizes.length > 0) {
    blocks.push(`**Sizes:** ${escaped(bracketed(document.sizes.map(({ label }) => label)))}`);
  }
  for (const part of document.parts) {
    blocks.push(`## ${escaped(part.heading)}`);
    for (const block of part.blocks) blocks.push(...blockOf(block, pictures));
  }
  if (proof) blocks.push(`*${escaped(proofWords(proof, document))}*`);
  return `${blocks.join('\n\n')}\n`;
}

function blockOf(block: PatternBlock, pictures: Readonly<Record<string, string>>): string[] {
  switch (block.kind) {
    case 'line':
    case 'paragraph':
      return [escaped(block.text)];
    case 'caution':
      return [`> ${escaped(block.text)}`];
    case 'heading':
      return [`### ${escaped(block.text)}`];
    case 'list':
      return block.items.length > 0 ? [block.items.map(({ text }) => `- ${escaped(text)}`).join('\n')] : [];
    case 'table':
      return [`${escaped(block.caption)}:`, table(block)];
    case 'picture slot':
      return Object.hasOwn(pictures, block.key) ? [pictures[block.key]!] : [];
  }
}

function table({ head, rows, words }: PatternTable): string {
  const line = (cells: readonly string[]): string => `| ${cells.map(escaped).join(' | ')} |`;
  const rule = `| ${head.map((_label, column) => (column === 0 || words ? ':--' : '--:')).join(' | ')} |`;
  return [line(head), rule, ...rows.map(line)].join('\n');
}

/**
 * Text as it has to stand in Markdown to come out as it is.
 *
 * @example escaped('*sc 6, sc2tog') // '\\*sc 6, sc2tog'
 */
export function escaped(text: string): string {
  return (
    text
      .replace(/\s+/gu, ' ')
      .trim()
      .replace(/[\\`*_~|<>$]/gu, '\\$&')
      .replace(/&/gu, '&amp;')
      // Links, images and definitions of them are what brackets become with something after them.
      .replace(/!\[/gu, '!\\[')
      .replace(/\](?=[([:])/gu, '\\]')
      .replace(/(https?|ftp):\/\//giu, '$1\\://')
      .replace(/\bwww\./giu, 'www\\.')
      .replace(/@/gu, '\\@')
      // Only at its beginning a line can be a heading, a list or a rule.
      .replace(/^([#+=-]|\[)/u, '\\$1')
      .replace(/^(\d{1,9})([.)])/u, '$1\\$2')
  );
}
