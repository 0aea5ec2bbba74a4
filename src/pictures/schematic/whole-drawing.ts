import { coloursOf } from './colours';
import { element, escaped, px } from './markup';
import type { SchematicSpec } from './types';

/** The typefaces of the page where they are at hand, else whatever the reader has. */
const typefaces = "'Alegreya Sans', 'Gill Sans', Candara, Calibri, sans-serif";

/**
 * A drawing as one SVG: its title and what it shows for a screen reader, paper, and what is drawn on it. No style, no
 * script: colours are attributes, and a page may give the classes (`paper`, `leaf`, `ink-text`, `soft-text`, `outline`,
 * `dimension`, `ruling`, `tenth`, `mark`, `shaping`) its own.
 */
export function wholeDrawing(
  spec: SchematicSpec,
  o: { prefix: string; title: string; about: string; width: number; height: number; body: string },
): string {
  const theme = coloursOf(spec);
  const { prefix, width } = o;
  const height = Math.ceil(o.height);
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${px(width)} ${px(height)}`,
      width,
      height,
      role: 'img',
      'aria-labelledby': `${prefix}-title`,
      'aria-describedby': `${prefix}-about`,
      'font-family': typefaces,
      'font-size': 13,
      fill: theme.ink,
    },
    element('title', { id: `${prefix}-title` }, escaped(o.title)) +
      element('desc', { id: `${prefix}-about` }, escaped(o.about)) +
      element('rect', { class: 'paper', width, height, fill: theme.paper }) +
      o.body,
  );
}
