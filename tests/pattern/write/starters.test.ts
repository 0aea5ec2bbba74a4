import { describe, expect, it } from 'vitest';
import { ownColumn, type Notebook, type Settings } from '../../../src/notebook';
import { adaptedPullover, hatCrown, cardigan, singleSleeve } from '../../../src/starters';
import { patternOf, plainText, prove, sentencesOf } from '../../../src/pattern';
import { edited } from '../../notebook/edited';
import { blouseSleeve } from '../../notebooks/blouse-sleeve';
import { motifBorder } from '../../notebooks/motif-border';
import { narrowing } from '../../notebooks/narrowing';
import { underarm } from '../../notebooks/underarm';
import { vNeck } from '../../notebooks/v-neck';
import { badGrammar } from './grammar';
import { sourceOf } from './source-of';

/** Its wedges are no wider than where every round is decreased. */
const hatInThickWool = (): Notebook =>
  edited(hatCrown(), { do: 'give', cell: 'fabric', key: 'sts.0.count', size: null, value: 10 });

/** As it leaves the page: for its maker, and for none of the sizes of the pattern it adapts. */
const pulloverForItsMaker = (): Notebook => {
  const notebook = adaptedPullover();
  return { ...notebook, sizes: notebook.sizes.filter(({ id }) => id === ownColumn) };
};

/*
 * The patterns of the starters, and of test notebooks with what no starter has, word for word: read them as a person would whenever they change.
 */
const read: readonly (readonly [string, () => Notebook, Partial<Settings>])[] = [
  ['cardigan, crochet, US', cardigan, {}],
  ['cardigan, crochet, UK', cardigan, { terms: 'UK' }],
  [
    'cardigan, knitting, UK, inches',
    cardigan,
    { craft: 'knitting', terms: 'UK', length: 'in', gaugeOver: '4 in' },
  ],
  ['V-neck, crochet, US', vNeck, {}],
  ['V-neck, knitting, US', vNeck, { craft: 'knitting' }],
  ['underarm, crochet, US', underarm, {}],
  ['underarm, knitting, US', underarm, { craft: 'knitting' }],
  ['narrowing, crochet, US', narrowing, {}],
  ['narrowing, knitting, US', narrowing, { craft: 'knitting' }],
  ['motif border, crochet, US', motifBorder, {}],
  ['motif border, knitting, US', motifBorder, { craft: 'knitting' }],
  ['blouse sleeve, crochet, US', blouseSleeve, {}],
  ['sleeve, crochet, UK', singleSleeve, { terms: 'UK' }],
  ['sleeve, knitting, US', singleSleeve, { craft: 'knitting' }],
  ['hat, knitting, US', hatCrown, {}],
  ['pullover, fitted again', pulloverForItsMaker, {}],
  ['pullover, fitted again, all sizes', adaptedPullover, {}],
  ['hat in thick wool, knitting, US', hatInThickWool, {}],
];

describe.each(read)('%s', (name, make, settings) => {
  it('reads as it did', async () => {
    const notebook = make();
    const source = await sourceOf({ ...notebook, settings: { ...notebook.settings, ...settings } });
    const document = patternOf(source);
    expect(document.notes).toEqual([]);
    for (const { text } of sentencesOf(document)) expect(badGrammar(text)).toBeUndefined();
    const text = plainText(document, { proof: prove(document, source) });
    await expect(text).toMatchFileSnapshot(`./starters/${name}.txt`);
  });
});
