import type { PatternDocument } from '../../words';

const lines = (document: PatternDocument): string =>
  document.parts
    .flatMap((part) => [
      part.heading,
      ...part.blocks.flatMap((block) =>
        block.kind === 'list' ? block.items.map(({ text }) => text) : 'text' in block ? [block.text] : [],
      ),
    ])
    .join('\n');

export const asText = (document: PatternDocument, _proven: boolean): string => lines(document);
export const asMarkdown = asText;
export const asHtml = (document: PatternDocument, _pictures: object, proven: boolean): string =>
  asText(document, proven);
