import { bracketed } from '../../format';
import type { PatternBlock, PatternDocument, PatternTable } from '../pattern-document';
import type { Leaving } from './plain-text';
import { proofWords } from '../proof-words';

/** On paper and on a screen, with nothing from elsewhere. */
const sheet = `
:root { color-scheme: light dark; }
body { font: 1rem/1.5 Georgia, 'Times New Roman', serif; max-width: 46rem; margin: 2rem auto; padding: 0 1rem; overflow-wrap: anywhere; }
h1, h2, h3 { line-height: 1.2; }
h2 { margin-top: 2rem; border-bottom: 1px solid; }
h3 { margin-bottom: 0; font-size: 1rem; font-style: italic; }
p { margin: 0.4rem 0; }
.caution { border-left: 0.25rem solid; padding-left: 0.75rem; }
.table { overflow-x: auto; }
table { border-collapse: collapse; font-size: 0.9rem; }
caption { text-align: left; font-style: italic; }
th, td { padding: 0.15rem 0.5rem; border-bottom: 1px solid; text-align: right; vertical-align: top; }
th:first-child, td:first-child, .words :is(th, td) { text-align: left; }
th, td { overflow-wrap: normal; white-space: nowrap; }
tbody th, .words :is(th, td) { min-width: 6rem; white-space: normal; overflow-wrap: break-word; }
figure { margin: 1rem 0; overflow-x: auto; }
svg { min-width: 34rem; max-width: 100%; height: auto; }
@media print { svg { min-width: 0; } body { margin: 0; max-width: none; font-size: 10pt; } h2, h3, caption { break-after: avoid; } tr, figure, p { break-inside: avoid; } }
`;

/**
 * A pattern as a page of HTML that stands by itself: no script, and nothing fetched.
 *
 * @param pictures SVG of our own making, by the key of its slot; it is put in as it is
 */
export function html(
  document: PatternDocument,
  { proof, pictures = {} }: Leaving & { readonly pictures?: Readonly<Record<string, string>> } = {},
): string {
  const sizes =
    document.sizes.length > 0
      ? `<p><strong>Sizes:</strong> ${text(bracketed(document.sizes.map(({ label }) => label)))}</p>\n`
      : '';
  const parts = document.parts.map(
    ({ heading, blocks }) =>
      `<section>\n<h2 dir="auto">${text(heading)}</h2>\n${blocks.map((block) => blockOf(block, pictures)).join('')}</section>\n`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">
<title>${text(document.title)}</title>
<style>${sheet}</style>
</head>
<body>
<h1 dir="auto">${text(document.title)}</h1>
${sizes}${parts.join('')}${proof ? `<footer><p>${text(proofWords(proof, document))}</p></footer>\n` : ''}</body>
</html>
`;
}

function blockOf(block: PatternBlock, pictures: Readonly<Record<string, string>>): string {
  switch (block.kind) {
    case 'line':
    case 'paragraph':
      return `<p>${text(block.text)}</p>\n`;
    case 'caution':
      return `<p class="caution">${text(block.text)}</p>\n`;
    case 'heading':
      return `<h3 dir="auto">${text(block.text)}</h3>\n`;
    case 'list':
      return block.items.length > 0
        ? `<ul>\n${block.items.map((item) => `<li>${text(item.text)}</li>\n`).join('')}</ul>\n`
        : '';
    case 'table':
      return table(block);
    case 'picture slot':
      return Object.hasOwn(pictures, block.key)
        ? `<figure>${pictures[block.key]!}<figcaption>${text(block.caption)}</figcaption></figure>\n`
        : '';
  }
}

function table({ caption, head, rows, words: read }: PatternTable): string {
  const words = read ? ' class="words"' : '';
  const headed = head
    .map((cell) => (cell === '' ? '<td></td>' : `<th scope="col">${text(cell)}</th>`))
    .join('');
  const body = rows
    .map(
      ([label = '', ...cells]) =>
        `<tr><th scope="row">${text(label)}</th>${cells.map((cell) => `<td>${text(cell)}</td>`).join('')}</tr>\n`,
    )
    .join('');
  return `<div class="table"><table${words}>\n<caption>${text(caption)}</caption>\n<thead><tr>${headed}</tr></thead>\n<tbody>\n${body}</tbody>\n</table></div>\n`;
}

const marks: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text as it has to stand in HTML to come out as it is. */
function text(plain: string): string {
  return plain.replace(/[&<>"']/gu, (mark) => marks[mark]!);
}
