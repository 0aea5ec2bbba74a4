import { capital } from '../../format';

/** Whose terms a text is in. */
export type Terms = 'US' | 'UK';

/*
 * US terms and the UK terms for the same thing, after the Craft Yarn Council's published list of differences; typed
 * from memory. The abbreviations of crochet stitches move up by one, so that the same letters mean another stitch.
 */
const pairs: readonly (readonly [us: string, uk: string])[] = [
  ['single crochet', 'double crochet'],
  ['half double crochet', 'half treble'],
  ['double crochet', 'treble'],
  ['treble', 'double treble'],
  ['sl st', 'ss'],
  ['sc', 'dc'],
  ['hdc', 'htr'],
  ['dc', 'tr'],
  ['tr', 'dtr'],
  ['sc2tog', 'dc2tog'],
  ['hdc2tog', 'htr2tog'],
  ['dc2tog', 'tr2tog'],
  ['tr2tog', 'dtr2tog'],
  ['FPdc', 'RtrF'],
  ['BPdc', 'RtrB'],
  ['skip', 'miss'],
  ['skipped', 'missed'],
  ['skipping', 'missing'],
  ['gauge', 'tension'],
  ['bind off', 'cast off'],
  ['bound off', 'cast off'],
  ['stockinette', 'stocking stitch'],
];

/** Each pair as it stands within a sentence and at its beginning. */
function withCapitals(list: readonly (readonly [string, string])[]): [string, string][] {
  return list.flatMap(([from, to]): [string, string][] =>
    from === capital(from)
      ? [[from, to]]
      : [
          [from, to],
          [capital(from), capital(to)],
        ],
  );
}

function translator(list: readonly (readonly [string, string])[]): (text: string) => string {
  // Where two terms become one, the way back is to the first of them.
  const table = new Map(withCapitals(list).toReversed());
  // Longest first, so that "half double crochet" is one term and not a word before another.
  const terms = [...table.keys()].sort((a, b) => b.length - a.length);
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}])(?:${terms.join('|')})(?![\\p{L}\\p{N}])`, 'gu');
  return (text) => text.replace(pattern, (term) => table.get(term)!);
}

const toUk = translator(pairs);
const toUs = translator(pairs.map(([us, uk]) => [uk, us] as const));

/**
 * A text written in US terms, in UK terms. All terms change at once in one pass, so that sc becomes dc while dc
 * becomes tr, and nothing changes twice.
 *
 * @example inUk('sc 6, dc in next st') // 'dc 6, tr in next st'
 */
export function inUk(text: string): string {
  return toUk(text);
}

/**
 * A text from one person's terms in another's.
 *
 * @example inTerms('dc 6', 'UK', 'US') // 'sc 6'
 */
export function inTerms(text: string, from: Terms, to: Terms): string {
  if (from === to) return text;
  return to === 'UK' ? toUk(text) : toUs(text);
}
