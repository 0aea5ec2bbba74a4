/*
 * What abbreviations stand for, typed a second time and not taken over from what writes them: a slip in one list does
 * not stand in the other. After the Craft Yarn Council's published lists of crochet and knitting abbreviations and of
 * the differences of US and UK terms; typed from memory.
 */

const everywhere: Readonly<Record<string, string>> = {
  dec: 'decrease',
  inc: 'increase',
  rep: 'repeat',
  RS: 'right side',
  WS: 'wrong side',
  st: 'stitch',
  sts: 'stitches',
};

const together = (stitch: string): string => `${stitch} 2 stitches together`;

const crochetStitches = {
  US: [
    ['sc', 'single crochet'],
    ['hdc', 'half double crochet'],
    ['dc', 'double crochet'],
    ['tr', 'treble crochet'],
  ],
  UK: [
    ['dc', 'double crochet'],
    ['htr', 'half treble'],
    ['tr', 'treble'],
    ['dtr', 'double treble'],
  ],
} as const;

const knitting: Readonly<Record<string, string>> = {
  k: 'knit',
  p: 'purl',
  k2tog: together('knit'),
  p2tog: together('purl'),
  yo: 'yarn over',
  m1: 'make 1: lift the strand between two stitches and knit it through the back',
  m1p: 'make 1 purlwise: lift the strand between two stitches and purl it through the back',
};

/**
 * What each abbreviation that a text uses stands for, in a craft and its terms.
 *
 * @example glossaryOf(['Row 1 (RS): dc in each ch across'], 'crochet', 'UK').get('dc') // 'double crochet'
 */
export function glossaryOf(
  texts: readonly string[],
  craft: 'crochet' | 'knitting',
  terms: 'US' | 'UK',
): Map<string, string> {
  const known = new Map(Object.entries(everywhere));
  if (craft === 'knitting') for (const [short, long] of Object.entries(knitting)) known.set(short, long);
  else {
    known.set('ch', 'chain');
    known.set(terms === 'US' ? 'sl st' : 'ss', 'slip stitch');
    for (const [short, long] of crochetStitches[terms]) {
      known.set(short, long);
      known.set(`${short}2tog`, together(long));
    }
  }
  const text = texts.join('\n');
  return new Map([...known].filter(([short]) => uses(text, short)));
}

function uses(text: string, short: string): boolean {
  // A single letter is a stitch where a number or a word follows it: "k6", "k to end".
  const after = short.length === 1 ? String.raw`(?=[\d–\s])` : String.raw`(?![\p{L}\p{N}])`;
  const flags = /^\p{Lu}+$/u.test(short) ? 'u' : 'iu';
  return new RegExp(String.raw`(?<![\p{L}\p{N}])${short}${after}`, flags).test(text);
}
