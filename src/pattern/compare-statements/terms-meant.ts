import { allCells } from '../../notebook';
import { joinWithAnd } from '../../format';
import { glossaryOf } from '../verify';
import { asRead, printed, type Expected } from './expected';
import type { Garment } from './garment';

const one = (name: string, facts: Expected['facts'] = {}, of = ''): Expected => ({ name, of, facts });

/** Whose terms are used, and what the abbreviations of the instructions stand for. */
export function abbreviationsMeant({ source: { notebook } }: Garment, lines: readonly string[]): Expected[] {
  const { craft, terms } = notebook.settings;
  const glossary = [...glossaryOf(lines, craft, terms)].sort(([a], [b]) => a.localeCompare(b, 'en'));
  return [
    one('terms', { terms }),
    ...glossary.map(([short, long]) => one('abbreviation', { 'stands for': long }, short)),
  ];
}

/**
 * The stitches of crochet in each terms, with their turning chain and whether it counts as a stitch: common practice.
 */
export const crochetStitches = {
  sc: { US: 'sc', UK: 'dc', chain: 1, counts: false },
  hdc: { US: 'hdc', UK: 'htr', chain: 2, counts: false },
  dc: { US: 'dc', UK: 'tr', chain: 3, counts: true },
  tr: { US: 'tr', UK: 'dtr', chain: 4, counts: true },
} as const;

/** How the instructions are to be read. */
export function notesMeant({ source, sizes, swatches }: Garment, lines: readonly string[]): Expected[] {
  const { craft, terms } = source.notebook.settings;
  const text = lines.join('\n');
  const stitches = craft === 'crochet' ? [...new Set(swatches.map(({ stitch }) => stitch ?? 'sc'))] : [];
  return [
    ...(sizes.length > 1 ? [one('note on sizes')] : []),
    one('note on counts'),
    one('note on working even'),
    ...(/\bdec\b/iu.test(text) ? [one('note on decreases')] : []),
    ...(/\binc\b/iu.test(text)
      ? [one('note on increases', { how: craft === 'crochet' ? 'work 2 sts in 1' : 'make 1 st' })]
      : []),
    ...(/\b(?:pick up|along the edge|round the armhole)\b/iu.test(text) ? [one('note on edges')] : []),
    ...stitches.flatMap((stitch) => {
      if (!(stitch in crochetStitches)) return [];
      const known = crochetStitches[stitch as keyof typeof crochetStitches];
      const name = known[terms];
      return [
        one('turning chain', { chain: printed([known.chain]), 'counts as': known.counts ? name : '' }, name),
      ];
    }),
  ];
}

/** The cautions that concern the notebook. */
export function cautionsMeant({ source: { notebook }, sizes }: Garment): Expected[] {
  const cells = allCells(notebook);
  const notions = cells.some(({ kind }) => kind === 'notions');
  const young = sizes.filter(({ chart }) => chart && ['child', 'baby'].includes(chart.name));
  return [
    ...(notions && young.length > 0
      ? [one('caution for children’s sizes', { sizes: joinWithAnd(young.map(({ label }) => asRead(label))) })]
      : []),
    ...(notions && young.length === 0 && sizes.some(({ chart }) => !chart)
      ? [one('caution for a child')]
      : []),
    ...(cells.some(({ kind }) => kind === 'yarn') ? [one('caution about amounts')] : []),
    ...(sizes.some(({ chart }) => chart) ? [one('caution about charts')] : []),
  ];
}
