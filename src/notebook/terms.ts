import type { Settings } from './document';

type Terms = Record<Settings['terms'], string>;
type Words = Record<Settings['craft'], Terms>;

const both = (words: Terms): Words => ({ crochet: words, knitting: words });
const by = (crochet: string, knitting: string): Words => ({
  crochet: { US: crochet, UK: crochet },
  knitting: { US: knitting, UK: knitting },
});

/** The page's own words that differ by craft, or between the US and the UK: common practice of the trade. */
const words = {
  gauge: both({ US: 'gauge', UK: 'tension' }),
  skip: both({ US: 'skip', UK: 'miss' }),
  'cast on': by('chain', 'cast on'),
  'bind off': {
    crochet: { US: 'fasten off', UK: 'fasten off' },
    knitting: { US: 'bind off', UK: 'cast off' },
  },
  'bound off': {
    crochet: { US: 'fastened off', UK: 'fastened off' },
    knitting: { US: 'bound off', UK: 'cast off' },
  },
  'hook or needles': by('hook', 'needles'),
} satisfies Record<string, Words>;

export type PageWord = keyof typeof words;

/**
 * A word of the page as the notebook's craft and terms have it.
 *
 * @example pageWord({ craft: 'knitting', terms: 'UK' }, 'bound off') // 'cast off'
 */
export function pageWord({ craft, terms }: Pick<Settings, 'craft' | 'terms'>, word: PageWord): string {
  return words[word][craft][terms];
}
