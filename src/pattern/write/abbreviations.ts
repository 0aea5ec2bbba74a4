import type { Terms } from './terms';

/*
 * Abbreviations and what they stand for, after the Craft Yarn Council's published lists of crochet and knitting
 * abbreviations; typed from memory. US terms, and the UK's where they differ.
 */
const both: readonly (readonly [short: string, long: string])[] = [
  ['dec', 'decrease'],
  ['inc', 'increase'],
  ['rep', 'repeat'],
  ['RS', 'right side'],
  ['st', 'stitch'],
  ['sts', 'stitches'],
  ['WS', 'wrong side'],
];

const crochet: Readonly<Record<Terms, readonly (readonly [string, string])[]>> = {
  US: [
    ['ch', 'chain'],
    ['sc', 'single crochet'],
    ['sc2tog', 'single crochet 2 stitches together'],
    ['hdc', 'half double crochet'],
    ['hdc2tog', 'half double crochet 2 stitches together'],
    ['dc', 'double crochet'],
    ['dc2tog', 'double crochet 2 stitches together'],
    ['tr', 'treble crochet'],
    ['tr2tog', 'treble crochet 2 stitches together'],
    ['sl st', 'slip stitch'],
  ],
  UK: [
    ['ch', 'chain'],
    ['dc', 'double crochet'],
    ['dc2tog', 'double crochet 2 stitches together'],
    ['htr', 'half treble'],
    ['htr2tog', 'half treble 2 stitches together'],
    ['tr', 'treble'],
    ['tr2tog', 'treble 2 stitches together'],
    ['dtr', 'double treble'],
    ['dtr2tog', 'double treble 2 stitches together'],
    ['ss', 'slip stitch'],
  ],
};

const knitting: readonly (readonly [string, string])[] = [
  ['k', 'knit'],
  ['k2tog', 'knit 2 stitches together'],
  ['m1', 'make 1: lift the strand between two stitches and knit it through the back'],
  ['m1p', 'make 1 purlwise: lift the strand between two stitches and purl it through the back'],
  ['p', 'purl'],
  ['p2tog', 'purl 2 stitches together'],
  ['yo', 'yarn over'],
];

/**
 * The abbreviations that a text uses, and only those, in the order of the alphabet.
 *
 * @example abbreviationsIn(['k6, k2tog'], 'knitting', 'US') // [['k', 'knit'], ['k2tog', 'knit 2 stitches together']]
 */
export function abbreviationsIn(
  texts: readonly string[],
  craft: 'crochet' | 'knitting',
  terms: Terms,
): (readonly [short: string, long: string])[] {
  const list = [...both, ...(craft === 'crochet' ? crochet[terms] : knitting)];
  const text = texts.join('\n');
  return list
    .filter(([short]) => {
      // k and p stand before a number: k6. Words are found in small and in capital letters, RS and WS as they are.
      const flags = short === short.toUpperCase() ? 'u' : 'iu';
      const after = short.length === 1 ? String.raw`(?=\d|[–\s])` : String.raw`(?![\p{L}\p{N}])`;
      return new RegExp(String.raw`(?<![\p{L}\p{N}])${short}${after}`, flags).test(text);
    })
    .sort(([a], [b]) => a.localeCompare(b, 'en'));
}
